package lampwright.web.pages;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import lampwright.wording.Wording;

/**
 * The names in an adapted page's address that stand for one wish each: where the wish stands in the
 * document that programs send, how it is written, how people read it.
 */
enum WishName {
  PRESET("preset", "/preset", Kind.TEXT, Unit.NONE),
  ISO("iso", "/limits/iso_at_most", Kind.NUMBER, Unit.NONE),
  APERTURE("aperture", "/limits/keep_f_number", Kind.NUMBER, Unit.NONE),
  TIME("time", "/limits/keep_time", Kind.TEXT, Unit.SECONDS),
  BODY("body", "/limits/body", Kind.TEXT, Unit.NONE),
  LENS("lens", "/limits/lens", Kind.TEXT, Unit.NONE),
  AMBIENT_WITHIN("ambient_within", "/limits/ambient_within_stops", Kind.NUMBER, Unit.STOPS),
  LIGHT_WITHIN("light_within", "/limits/light_within_stops", Kind.NUMBER, Unit.STOPS),
  SOFTNESS_WITHIN(
      "softness_within", "/limits/softness_within_doublings", Kind.NUMBER, Unit.DOUBLINGS),
  MOVE("move", "/limits/lights_may_move", Kind.YES, Unit.NONE),
  NEAREST("nearest", "/limits/nearest_m", Kind.NUMBER, Unit.METRES),
  HEADS("heads", "/limits/heads_per_light_at_most", Kind.NUMBER, Unit.NONE),
  POPS("pops", "/limits/pops_per_light_at_most", Kind.NUMBER, Unit.NONE),
  FRAMES("frames", "/limits/frames", Kind.NUMBER, Unit.NONE),
  PACE("pace", "/limits/seconds_between_frames", Kind.NUMBER, Unit.SECONDS),
  AMBIENT("ambient", "/ambient_ev100", Kind.NUMBER, Unit.EXPOSURE_VALUE),
  DATE("date", "/occasion/date", Kind.TEXT, Unit.NONE),
  CLOCK("clock", "/occasion/time", Kind.TEXT, Unit.NONE),
  UTC("utc", "/occasion/utc_offset", Kind.TEXT, Unit.NONE),
  PLACE("place", "/occasion/place/name", Kind.TEXT, Unit.NONE),
  LATITUDE("lat", "/occasion/place/latitude_deg", Kind.NUMBER, Unit.DEGREES),
  LONGITUDE("lon", "/occasion/place/longitude_deg", Kind.NUMBER, Unit.DEGREES),
  WAYS("ways", "/ways", Kind.NUMBER, Unit.NONE);

  /** What stands beside a value. */
  private enum Unit {
    NONE,
    SECONDS,
    STOPS,
    DOUBLINGS,
    METRES,
    EXPOSURE_VALUE,
    DEGREES
  }

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
  private final Unit unit;

  WishName(String text, String pointer, Kind kind, Unit unit) {
    this.text = text;
    this.pointer = pointer;
    this.kind = kind;
    this.unit = unit;
  }

  /** As it stands in the address. */
  String text() {
    return text;
  }

  /** What a form calls it. */
  String label(Wording words) {
    return words.say("adapting.wish." + text);
  }

  /** What stands beside its value; may be empty. */
  String unit(Wording words) {
    return switch (unit) {
      case NONE -> "";
      case SECONDS -> "s";
      case STOPS -> words.stopsUnit();
      case DOUBLINGS -> words.say("adapting.wish.doublings");
      case METRES -> "m";
      case EXPOSURE_VALUE -> words.say("adapting.wish.ev");
      case DEGREES -> "°";
    };
  }

  /** The wish in few words, where it is listed. */
  String inShort(String value, Wording words) {
    return switch (kind) {
      case YES -> words.say("adapting.wished." + text);
      case NUMBER, PERCENT -> words.say("adapting.wished." + text, words.notation().written(value));
      case TEXT -> words.say("adapting.wished." + text, value);
    };
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
