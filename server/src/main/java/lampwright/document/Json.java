package lampwright.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.exc.UnexpectedEndOfInputException;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
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
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
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
    try {
      JsonNode tree = MAPPER.readTree(text);
      if (tree.isMissingNode()) {
        throw new NotJson("The text is empty.");
      }
      return plain(tree);
    } catch (JacksonException notJson) {
      throw new NotJson(reason(notJson));
    }
  }

  /** Where and why, in our own words: the parser's are for programmers. */
  private static String reason(JacksonException notJson) {
    TokenStreamLocation location = notJson.getLocation();
    String where =
        location == null || location.getLineNr() < 1
            ? ""
            : "Line " + location.getLineNr() + ", column " + location.getColumnNr() + ": ";
    return where + why(notJson);
  }

  private static String why(JacksonException notJson) {
    return switch (notJson) {
      case StreamConstraintsException tooMuch ->
          "nested too deep, or a text or number that is too long.";
      case UnexpectedEndOfInputException cutOff -> "the text ends too early.";
      default ->
          notJson.getOriginalMessage().startsWith("Duplicate")
              ? "a key stands twice in the same object."
              : "this is not JSON. Maybe a comma, a quotation mark or a bracket is missing?";
    };
  }

  private static Object plain(JsonNode node) {
    if (node.isObject()) {
      Map<String, Object> object = new LinkedHashMap<>();
      node.properties().forEach(entry -> object.put(entry.getKey(), plain(entry.getValue())));
      return object;
    }
    if (node.isArray()) {
      List<Object> list = new ArrayList<>();
      node.forEach(item -> list.add(plain(item)));
      return list;
    }
    if (node.isString()) {
      return node.stringValue();
    }
    if (node.isNumber()) {
      return node.doubleValue();
    }
    return node.isBoolean() ? (Object) node.booleanValue() : JsonNull.NULL;
  }

  /** Writes plain values as compact JSON text. */
  public static String print(Object plain) {
    return MAPPER.writeValueAsString(plain);
  }
}
