package lampwright.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.exc.UnexpectedEndOfInputException;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;
import tools.jackson.databind.ser.std.StdSerializer;

/** The text of JSON: strict on the way in (bounded depth, no double keys), plain on the way out. */
public final class Json {

  /** Deeper than any document of ours; shallow enough that a hostile one cannot hurt. */
  private static final int DEEPEST = 60;

  private static final int LONGEST_TEXT = 200_000;
  private static final int LONGEST_NUMBER = 100;

  private static final String NOT_JSON =
      "this is not JSON. Maybe a comma, a quotation mark or a bracket is missing?";

  private static final JsonMapper MAPPER =
      JsonMapper.builder(
              JsonFactory.builder()
                  .streamReadConstraints(
                      StreamReadConstraints.builder()
                          .maxNestingDepth(DEEPEST)
                          .maxStringLength(LONGEST_TEXT)
                          .maxNumberLength(LONGEST_NUMBER)
                          .build())
                  .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                  .build())
          .addModule(new SimpleModule().addSerializer(JsonNull.class, new NullWriter()))
          .build();

  private Json() {}

  private static final class NullWriter extends StdSerializer<JsonNull> {

    NullWriter() {
      super(JsonNull.class);
    }

    @Override
    public void serialize(JsonNull none, JsonGenerator out, SerializationContext context) {
      out.writeNull();
    }
  }

  /** Text that is not JSON; the message says where and why, and may be shown. */
  public static final class NotJson extends RuntimeException {
    private static final long serialVersionUID = 1L;

    NotJson(String reason) {
      super(reason);
    }
  }

  /**
   * Reads JSON text into plain values, see {@link Form}.
   *
   * @throws NotJson where the text is not JSON, is nested too deep or names a key twice
   */
  public static Object parse(String text) {
    try (JsonParser in = MAPPER.createParser(text)) {
      JsonToken first = in.nextToken();
      if (first == null) {
        throw new NotJson("The text is empty.");
      }
      Object plain = plain(in, first);
      if (in.nextToken() != null) {
        throw new NotJson(where(in.currentTokenLocation()) + NOT_JSON);
      }
      return plain;
    } catch (JacksonException notJson) {
      throw new NotJson(where(notJson.getLocation()) + why(notJson));
    }
  }

  private static String where(@Nullable TokenStreamLocation location) {
    return location == null || location.getLineNr() < 1
        ? ""
        : "Line " + location.getLineNr() + ", column " + location.getColumnNr() + ": ";
  }

  /** In our own words: the parser's are for programmers. */
  private static String why(JacksonException notJson) {
    return switch (notJson) {
      case StreamConstraintsException tooMuch ->
          "nested too deep, or a text or number that is too long.";
      case UnexpectedEndOfInputException cutOff -> "the text ends too early.";
      default ->
          notJson.getOriginalMessage().startsWith("Duplicate")
              ? "a key stands twice in the same object."
              : NOT_JSON;
    };
  }

  private static Object plain(JsonParser in, JsonToken token) {
    return switch (token) {
      case START_OBJECT -> object(in);
      case START_ARRAY -> list(in);
      case VALUE_STRING -> in.getString();
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> in.getDoubleValue();
      case VALUE_TRUE -> true;
      case VALUE_FALSE -> false;
      case VALUE_NULL -> JsonNull.NULL;
      default -> throw new NotJson(where(in.currentTokenLocation()) + NOT_JSON);
    };
  }

  private static Map<String, Object> object(JsonParser in) {
    Map<String, Object> object = new LinkedHashMap<>();
    while (in.nextToken() == JsonToken.PROPERTY_NAME) {
      String name = in.currentName();
      object.put(name, plain(in, in.nextToken()));
    }
    return object;
  }

  private static List<Object> list(JsonParser in) {
    List<Object> list = new ArrayList<>();
    for (JsonToken token = in.nextToken(); token != JsonToken.END_ARRAY; token = in.nextToken()) {
      list.add(plain(in, token));
    }
    return list;
  }

  /** Writes plain values as compact JSON text. */
  public static String print(Object plain) {
    return MAPPER.writeValueAsString(plain);
  }
}
