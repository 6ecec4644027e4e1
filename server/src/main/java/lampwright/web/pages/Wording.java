package lampwright.web.pages;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lampwright.engine.Source;
import lampwright.engine.Working;
import lampwright.engine.exposure.Ev100;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Millimetres;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;
import lampwright.engine.unit.WattSeconds;
import lampwright.gear.Gel;
import lampwright.gear.Head;
import lampwright.gear.Modifier;
import lampwright.setup.Role;

/** How figures and gear are put into words on pages. */
final class Wording {

  private Wording() {}

  /** Tenths of a stop, always signed, with a true minus sign: "−1.3". */
  static String signed(Stops stops) {
    double tenths = Math.rint(stops.value() * 10) / 10;
    if (tenths == 0) {
      return "0.0";
    }
    return (tenths < 0 ? "−" : "+") + String.format(Locale.ROOT, "%.1f", Math.abs(tenths));
  }

  /** One standard deviation in tenths: "±0.3"; what is smaller than a tenth shows as one. */
  static String giveOrTake(Stops deviation) {
    return String.format(Locale.ROOT, "±%.1f", Math.max(0.1, deviation.value()));
  }

  /** So many stops in words: "0.7 stop", "1.0 stop", "2.6 stops". */
  static String stops(double size) {
    String tenths = String.format(Locale.ROOT, "%.1f", size);
    return tenths + (tenths.startsWith("0.") || tenths.equals("1.0") ? " stop" : " stops");
  }

  static String metres(Metres distance) {
    return metres(distance.value());
  }

  static String metres(double value) {
    return minus(String.format(Locale.ROOT, "%.1f", value)) + " m";
  }

  static String degrees(Degrees angle) {
    return minus(String.format(Locale.ROOT, "%.0f", angle.value() + 0.0)).replace("−0", "0") + "°";
  }

  /** Pixels: whole from ten, in tenths below. */
  static String pixels(double count) {
    return String.format(Locale.ROOT, count < 9.95 ? "%.1f" : "%.0f", count);
  }

  /** A share in per cent, fine enough to tell small ones apart. */
  static String percent(double share) {
    double percent = share * 100;
    if (percent > 0 && percent < 0.005) {
      return "under 0.01";
    }
    return String.format(
        Locale.ROOT, percent < 0.1 ? "%.2f" : percent < 10 ? "%.1f" : "%.0f", percent);
  }

  /** How long something lasts, short times as photographers write them: "1/7400". */
  static String duration(Seconds time) {
    double seconds = time.value();
    return seconds < 0.3 ? "1/" + about(1 / seconds) : String.format(Locale.ROOT, "%.1f", seconds);
  }

  /** Two figures that count, for what is not known better: 7419 is "7400". */
  static String about(double value) {
    double step = 1;
    while (value / step >= 100) {
      step *= 10;
    }
    return String.format(Locale.ROOT, "%.0f", Math.rint(value / step) * step);
  }

  /** A sentence or name as it stands within a sentence. */
  static String uncapital(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
  }

  /** A length on the sensor, in the unit in which it can be read. */
  static FiguresTable.Cell onSensor(Millimetres length) {
    double micrometres = length.toMicrometres().value();
    return micrometres < 99.5
        ? FiguresTable.Cell.of(
            String.format(Locale.ROOT, micrometres < 9.95 ? "%.1f" : "%.0f", micrometres), "µm")
        : FiguresTable.Cell.of(String.format(Locale.ROOT, "%.2f", length.value()), "mm");
  }

  /** A sentence or name with a capital to begin with. */
  static String capital(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  private static String minus(String number) {
    return number.replace("-", "−");
  }

  /** "Rim", as a light's heading. */
  static String role(Role role) {
    return sentence(role.name());
  }

  static String sentence(String constant) {
    String words = constant.toLowerCase(Locale.ROOT).replace('_', ' ');
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** Head, modifier and gels: "2 × 400 W·s battery head, box 0.9 × 1.2 m, half warm gel". */
  static String gear(int heads, Head head, Optional<Modifier> modifier, List<Gel> gels) {
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
  static String power(Head head, Optional<Stops> stopsDown) {
    return stopsDown.map(down -> head.scale().show(down, head.energy())).orElse("not known");
  }

  /** Energy with its unit: 860 W·s, 1.16 kJ. */
  static Figure energy(WattSeconds energy, String name) {
    return energy.value() < 1_000
        ? Figure.of(String.format(Locale.ROOT, "%.0f", energy.value()), "W·s", name)
        : Figure.of(String.format(Locale.ROOT, "%.2f", energy.value() / 1_000), "kJ", name);
  }

  /** How soon a head can fire again; less than a tenth of a second is not waited for. */
  static String readyAgain(Seconds recycle) {
    String tenths = String.format(Locale.ROOT, "%.1f", recycle.value());
    return tenths.equals("0.0") ? "Ready again at once." : "Ready again in " + tenths + " s.";
  }

  /** A level of light as meters show it, in tenths: "7.1". */
  static String level(Ev100 level) {
    return minus(String.format(Locale.ROOT, "%.1f", level.value() + 0.0)).replace("−0.0", "0.0");
  }

  static Known known(lampwright.engine.Known known) {
    return Known.valueOf(known.name());
  }

  /** The steps to a figure, rounded for reading. */
  static WorkingStep working(Working working) {
    return new WorkingStep(
        working.quantity(),
        number(working.value()),
        working.unit(),
        working.formula(),
        working.source() == Source.GIVEN ? known(working.known()).word() : working.source().title(),
        working.parts().stream().map(Wording::working).toList());
  }

  /** Four figures that count. */
  static String number(double value) {
    if (value == 0) {
      return "0";
    }
    if (value == Math.rint(value) && Math.abs(value) < 1e6) {
      return minus(String.format(Locale.ROOT, "%.0f", value));
    }
    double size = Math.abs(value);
    int decimals = size >= 1_000 ? 0 : size >= 100 ? 1 : size >= 10 ? 2 : size >= 0.1 ? 3 : 5;
    return minus(String.format(Locale.ROOT, "%." + decimals + "f", value));
  }
}
