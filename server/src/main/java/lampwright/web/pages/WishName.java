package lampwright.web.pages;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The names in an adapted page's address that stand for one wish each: where the wish stands in the
 * document that programs send, how it is written, how people read it.
 */
enum WishName {
  PRESET("preset", "/preset", Kind.TEXT, "What matters most", "", "%s"),
  ISO("iso", "/limits/iso_at_most", Kind.NUMBER, "ISO at most", "", "ISO %s at most"),
  APERTURE("aperture", "/limits/keep_f_number", Kind.NUMBER, "Keep the aperture", "", "f/%s kept"),
  TIME("time", "/limits/keep_time", Kind.TEXT, "Keep the time", "s", "%s s kept"),
  BODY("body", "/limits/body", Kind.TEXT, "Only this body", "", "only %s"),
  LENS("lens", "/limits/lens", Kind.TEXT, "Only this lens", "", "only %s"),
  AMBIENT_WITHIN(
      "ambient_within",
      "/limits/ambient_within_stops",
      Kind.NUMBER,
      "Ambient within",
      "stops",
      "ambient within %s stops"),
  LIGHT_WITHIN(
      "light_within",
      "/limits/light_within_stops",
      Kind.NUMBER,
      "Each light within",
      "stops",
      "each light within %s stops"),
  SOFTNESS_WITHIN(
      "softness_within",
      "/limits/softness_within_doublings",
      Kind.NUMBER,
      "Size of a light within",
      "doublings",
      "sizes within %s doublings"),
  MOVE(
      "move",
      "/limits/lights_may_move",
      Kind.YES,
      "Lights may move on their line",
      "",
      "lights may move"),
  NEAREST(
      "nearest",
      "/limits/nearest_m",
      Kind.NUMBER,
      "No nearer to its target than",
      "m",
      "no nearer than %s m"),
  HEADS(
      "heads",
      "/limits/heads_per_light_at_most",
      Kind.NUMBER,
      "Heads on a light at most",
      "",
      "heads on a light: %s at most"),
  POPS(
      "pops",
      "/limits/pops_per_light_at_most",
      Kind.NUMBER,
      "Flashes for a picture at most",
      "",
      "flashes for a picture: %s at most"),
  FRAMES(
      "frames",
      "/limits/frames",
      Kind.NUMBER,
      "Frames that the batteries last for",
      "",
      "%s frames on the batteries"),
  PACE(
      "pace",
      "/limits/seconds_between_frames",
      Kind.NUMBER,
      "Every head ready again after",
      "s",
      "ready again after %s s"),
  AMBIENT(
      "ambient", "/ambient_ev100", Kind.NUMBER, "Ambient now, at ISO 100", "EV", "ambient %s EV"),
  DATE("date", "/occasion/date", Kind.TEXT, "Another day", "", "on %s"),
  CLOCK("clock", "/occasion/time", Kind.TEXT, "Another time of day", "", "at %s"),
  UTC(
      "utc",
      "/occasion/utc_offset",
      Kind.TEXT,
      "Clocks ahead of universal time",
      "",
      "clocks at %s"),
  PLACE("place", "/occasion/place/name", Kind.TEXT, "Another place", "", "at %s"),
  LATITUDE(
      "lat",
      "/occasion/place/latitude_deg",
      Kind.NUMBER,
      "Its latitude, north is plus",
      "°",
      "latitude %s°"),
  LONGITUDE(
      "lon",
      "/occasion/place/longitude_deg",
      Kind.NUMBER,
      "Its longitude, east is plus",
      "°",
      "longitude %s°"),
  WAYS("ways", "/ways", Kind.NUMBER, "Ways to compare at most", "", "%s ways at most");

  /** How a value is written. */
  enum Kind {
    TEXT,
    NUMBER,
    /** Hundredths in the address, a share in the document. */
    PERCENT,
    /** "yes", or the name is left out. */
    YES;

    static final String SAID = "yes";

    /** As the document has it; what cannot be read stays text, so that the form can say so. */
    Object toJson(String written) {
      return switch (this) {
        case TEXT -> written;
        case NUMBER -> number(written).<Object>map(BigDecimal::doubleValue).orElse(written);
        case PERCENT ->
            number(written)
                .<Object>map(percent -> percent.movePointLeft(2).doubleValue())
                .orElse(written);
        case YES -> written.equals(SAID) ? true : written;
      };
    }

    /** As an address has it. */
    String toText(Object json) {
      return switch (json) {
        case Boolean _ -> SAID;
        case Double number -> plain(BigDecimal.valueOf(number));
        case Number number -> plain(new BigDecimal(number.toString()));
        default -> json.toString();
      };
    }

    private String plain(BigDecimal number) {
      BigDecimal written = this == PERCENT ? number.movePointRight(2) : number;
      return written.signum() == 0 ? "0" : written.stripTrailingZeros().toPlainString();
    }

    /** People write 5,6 and f/5.6 too. */
    private static Optional<BigDecimal> number(String written) {
      String bare = written.strip().replaceFirst("^f/", "").replace(',', '.');
      return bare.matches("[+-]?\\d{1,12}(\\.\\d{1,20})?")
          ? Optional.of(new BigDecimal(bare))
          : Optional.empty();
    }
  }

  private final String text;
  private final String pointer;
  private final Kind kind;
  private final String label;
  private final String unit;
  private final String inShort;

  WishName(String text, String pointer, Kind kind, String label, String unit, String inShort) {
    this.text = text;
    this.pointer = pointer;
    this.kind = kind;
    this.label = label;
    this.unit = unit;
    this.inShort = inShort;
  }

  /** As it stands in the address. */
  String text() {
    return text;
  }

  /** What a form calls it. */
  String label() {
    return label;
  }

  /** What stands beside its value; may be empty. */
  String unit() {
    return unit;
  }

  /** The wish in few words, where it is listed. */
  String inShort(String value) {
    return inShort.formatted(value);
  }

  Kind kind() {
    return kind;
  }

  /** The wish's place in the document, as a JSON Pointer. */
  String pointer() {
    return pointer;
  }

  /** The fields that lead to it, from the whole document. */
  List<String> path() {
    return List.of(pointer.substring(1).split("/", -1));
  }

  static Optional<WishName> find(String text) {
    return Arrays.stream(values()).filter(name -> name.text.equals(text)).findFirst();
  }

  /** The name in the address of the wish at a place of the document. */
  static Optional<String> findAt(String pointer) {
    return Arrays.stream(values())
        .filter(name -> name.pointer.equals(pointer))
        .map(WishName::text)
        .findFirst();
  }
}
