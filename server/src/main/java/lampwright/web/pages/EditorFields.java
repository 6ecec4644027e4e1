package lampwright.web.pages;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import lampwright.document.Problem;
import lampwright.document.Reading;
import lampwright.language.LengthUnit;
import lampwright.language.Notation;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;

/**
 * The fields of the editor's form that need no script, to and fro: filled from a document, and read
 * over it again, so that what the form does not ask stays.
 */
final class EditorFields {

  static final String TITLE = "title";
  static final String GENRE = "genre";
  static final String INTENT = "intent";
  static final String MOODS = "moods";

  private static final String POWER = "stops_down";

  private final SetupDocument setup;
  private final Notation notation;
  private final Map<String, Object> before;

  EditorFields(SetupDocument setup, Notation notation) {
    this.setup = setup;
    this.notation = notation;
    this.before = SetupDocument.FORM.writeObject(setup);
  }

  /** How a field is typed. */
  private enum Kind {
    LINE,
    PARAGRAPH,
    NUMBER,
    LENGTH
  }

  /** A field of one object, such as {@code place}, {@code x_m} of a light. */
  private record Part(List<String> path, Kind kind) {

    static Part of(Kind kind, String... path) {
      return new Part(List.of(path), kind);
    }

    String name() {
      return path.getLast();
    }

    /** Whether a problem at a place in its object is at it. */
    boolean isAt(List<String> at) {
      int common = Math.min(path.size(), at.size());
      return path.subList(0, common).equals(at.subList(0, common));
    }
  }

  private static final List<Part> LIGHT =
      List.of(
          Part.of(Kind.LENGTH, "place", "x_m"),
          Part.of(Kind.LENGTH, "place", "y_m"),
          Part.of(Kind.LENGTH, "place", "z_m"),
          Part.of(Kind.NUMBER, POWER),
          Part.of(Kind.PARAGRAPH, "reason"));

  private static final List<Part> WORDS =
      List.of(
          Part.of(Kind.LINE, TITLE), Part.of(Kind.LINE, GENRE), Part.of(Kind.PARAGRAPH, INTENT));

  private static final List<Part> EXPOSURE =
      List.of(
          Part.of(Kind.NUMBER, "exposure", "f_number"),
          Part.of(Kind.LINE, "exposure", "time"),
          Part.of(Kind.NUMBER, "exposure", "iso"),
          Part.of(Kind.NUMBER, "exposure", "neutral_density_stops"),
          Part.of(Kind.NUMBER, "exposure", "white_balance_k"),
          Part.of(Kind.NUMBER, "ambient", "ev100"));

  private static final List<Part> OCCASION =
      List.of(
          Part.of(Kind.LINE, "occasion", "place", "name"),
          Part.of(Kind.LINE, "occasion", "date"),
          Part.of(Kind.LINE, "occasion", "time"),
          Part.of(Kind.LINE, "occasion", "weather"));

  private static final List<Part> CAMERA =
      List.of(
          Part.of(Kind.LENGTH, "camera", "place", "x_m"),
          Part.of(Kind.LENGTH, "camera", "place", "y_m"),
          Part.of(Kind.LENGTH, "camera", "place", "z_m"));

  private List<Part> ofSetup() {
    return Stream.of(
            WORDS.stream(),
            EXPOSURE.stream(),
            OCCASION.stream(),
            setup.camera().flatMap(camera -> camera.place()).isPresent()
                ? CAMERA.stream()
                : Stream.<Part>empty())
        .flatMap(parts -> parts)
        .toList();
  }

  private static String id(Part part) {
    return String.join("-", part.path());
  }

  private static String id(LightId light, Part part) {
    return "light-" + light + "-" + part.name();
  }

  /** What stands in a field before anybody has typed; empty for a field that is none. */
  String filled(String field) {
    if (field.equals(MOODS)) {
      return String.join(", ", setup.moods());
    }
    for (Part part : ofSetup()) {
      if (field.equals(id(part))) {
        return written(before, part);
      }
    }
    for (Light light : setup.lights()) {
      for (Part part : LIGHT) {
        if (field.equals(id(light.id(), part))) {
          return written(Light.FORM.writeObject(light), part);
        }
      }
    }
    return "";
  }

  private String written(Object of, Part part) {
    Object value = PlainObject.find(of, part.path()).orElse("");
    if (!(value instanceof Number number)) {
      return value.toString();
    }
    boolean inFeet = part.kind() == Kind.LENGTH && notation.lengths() == LengthUnit.FEET;
    return inFeet ? notation.tape(number.doubleValue()) : notation.rounded(number.doubleValue(), 3);
  }

  /**
   * The groups of fields: exposure, occasion, camera, then each light in build order.
   *
   * @param typed what stands in each field
   */
  List<EditorPage.Group> groups(UnaryOperator<String> typed) {
    List<EditorPage.Group> groups = new ArrayList<>();
    groups.add(group("editor.group.exposure", EXPOSURE, typed));
    groups.add(group("editor.part.occasion", OCCASION, typed));
    if (ofSetup().containsAll(CAMERA)) {
      groups.add(group("editor.group.camera", CAMERA, typed));
    }
    Map<LightId, Integer> numbers = setup.numbersInBuildOrder();
    for (Light light : setup.lightsInBuildOrder()) {
      groups.add(
          new EditorPage.Group(
              String.valueOf(
                  Objects.requireNonNull(numbers.get(light.id()), "every light has a number")),
              notation.say("editor.role." + light.role().name().toLowerCase(Locale.ROOT)),
              LIGHT.stream().map(part -> field(id(light.id(), part), part, typed)).toList()));
    }
    return groups;
  }

  private EditorPage.Group group(String heading, List<Part> parts, UnaryOperator<String> typed) {
    return new EditorPage.Group(
        "",
        notation.say(heading),
        parts.stream().map(part -> field(id(part), part, typed)).toList());
  }

  private EditorPage.Field field(String id, Part part, UnaryOperator<String> typed) {
    return new EditorPage.Field(
        id,
        part.kind() == Kind.LENGTH
            ? notation.say("editor.plain." + part.name(), notation.lengthSign())
            : notation.say("editor.plain." + part.name()),
        typed.apply(id),
        part.kind() == Kind.PARAGRAPH,
        part.kind() == Kind.NUMBER);
  }

  /** The document with what was typed over it. */
  Reading<SetupDocument> read(UnaryOperator<String> typed) {
    Map<String, Object> document = new LinkedHashMap<>(before);
    for (Part part : ofSetup()) {
      if (isTyped(id(part), typed)) {
        put(document, part, typed.apply(id(part)));
      }
    }
    document.put(
        MOODS,
        Arrays.stream(typed.apply(MOODS).split(",", -1))
            .map(String::strip)
            .filter(mood -> !mood.isEmpty())
            .toList());
    document.put("lights", setup.lights().stream().map(light -> read(light, typed)).toList());
    return SetupDocument.FORM.read(document);
  }

  private Map<String, Object> read(Light light, UnaryOperator<String> typed) {
    Map<String, Object> written = new LinkedHashMap<>(Light.FORM.writeObject(light));
    boolean turned = false;
    for (Part part : LIGHT) {
      String id = id(light.id(), part);
      if (isTyped(id, typed)) {
        put(written, part, typed.apply(id));
        turned |= part.kind() != Kind.PARAGRAPH;
      }
    }
    // As where one tells what was used: a reading holds for the place and power it was taken at.
    if (turned && written.containsKey(POWER)) {
      written.remove("reading");
    }
    return written;
  }

  /** What nobody has touched keeps all its digits. */
  private boolean isTyped(String id, UnaryOperator<String> typed) {
    return !plain(typed.apply(id)).equals(plain(filled(id)));
  }

  private static String plain(String text) {
    return text.replace("\r\n", "\n").strip();
  }

  /** Puts what was typed where it belongs; what holds nothing any more goes out. */
  private void put(Map<String, Object> object, Part part, String typed) {
    Object value = value(part.kind(), plain(typed));
    if (value.equals("") && !part.name().equals(TITLE)) {
      PlainObject.remove(object, part.path());
    } else {
      PlainObject.put(object, part.path(), value);
    }
  }

  /** What the document would hold; else the text, about which it then has something to say. */
  private Object value(Kind kind, String typed) {
    return switch (kind) {
      case LINE, PARAGRAPH -> typed;
      case LENGTH ->
          TypedLength.readMetres(typed, notation.lengths()).<Object>map(of -> of).orElse(typed);
      case NUMBER -> TypedNumber.read(typed).<Object>map(of -> of).orElse(typed);
    };
  }

  /** What is wrong, at the fields. */
  FormErrors errors(List<Problem> problems) {
    return new FormErrors(problems.stream().map(this::error).toList());
  }

  private FormErrors.FormError error(Problem problem) {
    List<String> at = List.of(problem.pointer().split("/", -1));
    if (at.size() > 3 && at.get(1).equals("lights")) {
      LightId light = setup.lights().get(Integer.parseInt(at.get(2))).id();
      return new FormErrors.FormError(
          LIGHT.stream()
              .filter(part -> part.isAt(at.subList(3, at.size())))
              .findFirst()
              .map(part -> id(light, part))
              .orElse(""),
          "Light \"" + light + "\": " + problem.message());
    }
    List<String> inSetup = at.subList(Math.min(1, at.size()), at.size());
    String field =
        inSetup.getFirst().equals(MOODS)
            ? MOODS
            : ofSetup().stream()
                .filter(part -> part.isAt(inSetup))
                .findFirst()
                .map(EditorFields::id)
                .orElse("");
    return new FormErrors.FormError(field, problem.message());
  }
}
