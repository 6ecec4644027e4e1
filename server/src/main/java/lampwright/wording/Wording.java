package lampwright.wording;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lampwright.engine.Known;
import lampwright.engine.exposure.Ev100;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.unit.BaseTwo;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Millimetres;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;
import lampwright.engine.unit.WattSeconds;
import lampwright.gear.Gel;
import lampwright.gear.Head;
import lampwright.gear.Modifier;
import lampwright.language.Language;
import lampwright.language.LengthUnit;
import lampwright.language.Notation;
import lampwright.language.Said;
import lampwright.language.StopFraction;
import lampwright.setup.Light;
import lampwright.setup.Role;
import lampwright.setup.Target;

/**
 * How figures and gear are put into words for one person.
 *
 * @param notation the person's language and units
 */
public record Wording(Notation notation) {

  /** A phrase of the person's language; see {@link Notation#say}. */
  public String say(String key, Object... parts) {
    return notation.say(key, parts);
  }

  /** A phrase for so many; see {@link Notation#count}. */
  public String count(String key, long count, Object... parts) {
    return notation.count(key, count, parts);
  }

  /** A sentence that is decided elsewhere, in the person's language and units. */
  public String say(Said said) {
    return new Spoken(this).of(said);
  }

  /** Such sentences, each by itself. */
  public List<String> say(List<Said> said) {
    return said.stream().map(this::say).toList();
  }

  /** A difference in stops, always signed, with a true minus sign: "−1.3", "−1⅓". */
  public String signed(Stops stops) {
    return notation.signed(stops);
  }

  /** One standard deviation: "±0.3", "±⅓"; what is smaller than the fraction shows as one. */
  public String giveOrTake(Stops deviation) {
    double least = notation.stops() == StopFraction.TENTHS ? 0.1 : 1.0 / 3;
    return "±" + notation.size(Math.max(least, deviation.value()));
  }

  /** So many stops in words: "0.7 stop", "1.0 stop", "2.6 stops". */
  public String stops(double size) {
    return notation.count("wording.stops", isOne(size) ? 1 : 2, notation.size(size));
  }

  /** Asks whether it is written as one stop or less. */
  private boolean isOne(double size) {
    return size < (notation.stops() == StopFraction.TENTHS ? 1.05 : 1 + 1.0 / 6);
  }

  /**
   * What a dial's turn does to the picture, "+0.7 stop"; empty where it does nothing that shows.
   */
  public String change(Stops stops) {
    String signed = signed(stops);
    return isNothing(stops)
        ? ""
        : notation.count("wording.stops", isOne(Math.abs(stops.value())) ? 1 : 2, signed);
  }

  /** Whether a difference is too small to be written. */
  public boolean isNothing(Stops difference) {
    return !signed(difference).startsWith("+") && !signed(difference).startsWith("−");
  }

  /** The unit of a figure in stops, to stand beside it. */
  public String stopsUnit() {
    return say("wording.unit.stops");
  }

  /** A length in words, to a tenth of a metre or an inch: "3.4 m", "11′ 2″". */
  public String length(Metres length) {
    return length(length.value());
  }

  /** The same of a length with a direction. */
  public String length(double lengthM) {
    return notation.lengths() == LengthUnit.METRES
        ? fixed(lengthM, 1) + " m"
        : notation.length(lengthM);
  }

  /** A length as a figure with its unit beside it, metres with so many decimals. */
  public Figure length(Metres length, int decimals, String name) {
    return notation.lengths() == LengthUnit.METRES
        ? Figure.of(fixed(length.value(), decimals), "m", name)
        : Figure.of(notation.tape(length), "", name);
  }

  /** Whole degrees: "−12°". */
  public String degrees(Degrees angle) {
    return fixed(angle.value(), 0) + "°";
  }

  /** Pixels: whole from ten, in tenths below. */
  public String pixels(double count) {
    return fixed(count, count < 9.95 ? 1 : 0);
  }

  /** A share in per cent, fine enough to tell small ones apart. */
  public String percent(double share) {
    double percent = share * 100;
    if (percent > 0 && percent < 0.005) {
      return say("wording.under", fixed(0.01, 2));
    }
    return fixed(percent, percent < 0.1 ? 2 : percent < 10 ? 1 : 0);
  }

  /** How long something lasts, short times as photographers write them: "1/7400". */
  public String duration(Seconds time) {
    double seconds = time.value();
    return seconds < 0.3 ? "1/" + about(1 / seconds) : fixed(seconds, 1);
  }

  /** Two figures that count, for what is not known better: 7419 is "7400". */
  public String about(double value) {
    double step = 1;
    while (value / step >= 100) {
      step *= 10;
    }
    return fixed(Math.rint(value / step) * step, 0);
  }

  /** A length on the sensor, in the unit in which it can be read. */
  public Figure onSensor(Millimetres length) {
    double micrometres = length.toMicrometres().value();
    return micrometres < 99.5
        ? Figure.of(fixed(micrometres, micrometres < 9.95 ? 1 : 0), "µm", "")
        : Figure.of(fixed(length.value(), 2), "mm", "");
  }

  /** A number with so many decimals, a true minus sign and the language's mark. */
  public String fixed(double value, int decimals) {
    return notation.fixed(value, decimals);
  }

  /** A light's role: "Rim". */
  public String role(Role role) {
    return say("wording.role." + key(role));
  }

  /** A light's name in sentences: its number on the plan, and its role, "3 Rim". */
  public String light(int number, Light light) {
    return number + " " + role(light.role());
  }

  /** How a figure is known, in a quiet word: "metered". */
  public String known(Known known) {
    return say("wording.known." + key(known));
  }

  /** What it means that a figure is known so. */
  public String knownMeaning(Known known) {
    return say("wording.knownMeaning." + key(known));
  }

  /** Where a reading was taken, to stand after it: "at the face". */
  public String where(Target target) {
    return where(target.where());
  }

  /** The same of a place as English says it: it needs an article or none, which a target knows. */
  String where(String where) {
    return isEnglish() ? where : say("wording.atTarget", where.replaceFirst("^at (the )?", ""));
  }

  /** Head, modifier and gels: "2 × 400 W·s battery head, box 0.9 × 1.2 m, half warm gel". */
  public String gear(int heads, Head head, Optional<Modifier> modifier, List<Gel> gels) {
    StringBuilder words = new StringBuilder();
    if (heads > 1) {
      words.append(heads).append(" × ");
    }
    words.append(head.name());
    modifier.ifPresent(m -> words.append(", ").append(m.name()));
    gels.forEach(gel -> words.append(", ").append(gel.name()));
    return words.toString();
  }

  /** A light's power as its head shows it. */
  public String power(Head head, Optional<Stops> stopsDown) {
    return stopsDown
        .map(down -> notation.written(head.scale().show(down, head.energy())))
        .orElseGet(this::notKnown);
  }

  /** What stands where a figure cannot be said. */
  public String notKnown() {
    return say("wording.notKnown");
  }

  /** Energy with its unit: 860 W·s, 1.16 kJ. */
  public Figure energy(WattSeconds energy, String name) {
    return energy.value() < 1_000
        ? Figure.of(fixed(energy.value(), 0), "W·s", name)
        : Figure.of(fixed(energy.value() / 1_000, 2), "kJ", name);
  }

  /** How soon a head can fire again; less than a tenth of a second is not waited for. */
  public String readyAgain(Seconds recycle) {
    return recycle.value() < 0.05
        ? say("wording.readyAtOnce")
        : say("wording.readyIn", fixed(recycle.value(), 1));
  }

  /** A level of light as meters show it: "7.1", "7⅓". */
  public String level(Ev100 level) {
    return signed(new Stops(level.value())).replace("+", "");
  }

  /** An aperture as it is marked: "f/5.6". */
  public String aperture(FNumber fNumber) {
    return notation.written(fNumber.toString());
  }

  /** An aperture as a meter shows it, full stop and what is over: "f/5.6 + 0.7", "f/5.6 + ⅔". */
  public String reading(FNumber fNumber) {
    if (notation.stops() == StopFraction.TENTHS) {
      return notation.written(fNumber.tenthsText());
    }
    int thirds = (int) Math.floor(2 * 3 * BaseTwo.log(fNumber.value()) + 0.5);
    int full = Math.floorDiv(thirds, 3);
    int over = thirds - 3 * full;
    String mark = aperture(new FNumber(BaseTwo.power(full / 2.0)));
    return over == 0 ? mark : mark + " + " + notation.size(over / 3.0);
  }

  /** A shutter time without its unit: "1/125". */
  public String time(ShutterTime time) {
    return notation.written(time.toString().replace(" s", ""));
  }

  /** The number of an ISO setting: "100". */
  public String iso(Iso iso) {
    return iso.toString().replace("ISO", "").strip();
  }

  /** Four figures that count. */
  public String number(double value) {
    if (value == 0) {
      return "0";
    }
    if (value == Math.rint(value) && Math.abs(value) < 1e6) {
      return fixed(value, 0);
    }
    double size = Math.abs(value);
    return fixed(value, size >= 1_000 ? 0 : size >= 100 ? 1 : size >= 10 ? 2 : size >= 0.1 ? 3 : 5);
  }

  /** "a", "a and b", "a, b and c". */
  public String listed(List<String> words) {
    if (words.size() < 2) {
      return String.join("", words);
    }
    return say(
        "wording.and", String.join(", ", words.subList(0, words.size() - 1)), words.getLast());
  }

  /** Whether it is in English, as the sentences of the engine are. */
  public boolean isEnglish() {
    return notation.language() == Language.ENGLISH;
  }

  /** A heading as it stands within a sentence; in German its nouns keep their capitals. */
  public String inSentence(String heading) {
    return isEnglish() ? uncapital(heading) : heading;
  }

  /** A sentence or name of the engine as it stands within a sentence. */
  public static String uncapital(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
  }

  /** A sentence or name with a capital to begin with. */
  public static String capital(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** A constant's name as phrases' keys end in it: "toward_light". */
  public static String key(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }
}
