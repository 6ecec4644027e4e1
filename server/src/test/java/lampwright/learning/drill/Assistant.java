package lampwright.learning.drill;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Answers drills from their words alone, by the rules of the trade and without the engine: the
 * inverse square law, sums of light, mired, the hyperfocal distance.
 */
final class Assistant {

  private final WrittenDrill drill;

  Assistant(WrittenDrill drill) {
    this.drill = drill;
  }

  /** A number, or the place of an option. */
  double answer(DrillKind kind) {
    return switch (kind) {
      case STOPS_BETWEEN -> stopsBetween();
      case LIGHTS_ADD -> log2(1 + Math.pow(2, -drill.number("reads # stop less")));
      case POWER_AFTER_MOVE ->
          2 * log2(drill.number("It must go to # m") / drill.number("stands # m from"));
      case DISTANCE_FOR_RATIO ->
          drill.number("stands # m from")
              * Math.pow(
                  2, (drill.number("to be # stops") - drill.number("reads # stops under")) / 2);
      case AMBIENT_CHANGE -> ambientChange();
      case LIGHT_OF_SHADOW -> shadow();
      case LIGHT_OF_READING -> reading();
      case BLUR ->
          drill.number("passes at # m/s")
              * (drill.says("while the flash burns")
                  ? drill.seconds("burns for # s")
                  : drill.seconds("open for # s"))
              * 1000;
      case APERTURE_FOR_DEPTH -> aperture();
      case FRAMES_FROM_BATTERY ->
          drill.number("gives # flashes")
              * Math.pow(2, drill.number(", # stop"))
              / (drill.says("flashes once") ? 1 : drill.number("It flashes # times"));
      case SYNC -> drill.options().isEmpty() ? filter() : picture();
      case GEL_SHIFT -> gel();
      case SUN_DIRECTION -> drill.options().isEmpty() ? sunShadow() : sunSide();
      case UNSAFE -> unsafe();
    };
  }

  private double stopsBetween() {
    if (drill.says("The aperture")) {
      return -2 * log2(drill.number("to f/#.") / drill.number("from f/# "));
    }
    return drill.says("The shutter")
        ? log2(drill.seconds("to # s.") / drill.seconds("from # s"))
        : log2(drill.number("to #.") / drill.number("from # "));
  }

  private double ambientChange() {
    double before = drill.number("stands at # stop");
    if (drill.says("falls by")) {
      return before - drill.number("falls by # stop");
    }
    if (drill.says("rises by")) {
      return before + drill.number("rises by # stop");
    }
    if (drill.says("shutter time")) {
      return before + Math.rint(log2(drill.seconds("to # s") / drill.seconds("from # s")));
    }
    return before - Math.rint(2 * log2(drill.number("to f/#,") / drill.number("from f/# ")));
  }

  private double shadow() {
    double from = drill.number("ground toward #°") + 180;
    return least(
        option -> {
          double off = Math.abs(WrittenDrill.number(option, "stands toward #°") - from) % 360;
          return Math.min(off, 360 - off);
        });
  }

  private double reading() {
    double all = drill.squaredAperture("camera reads #");
    double left = drill.squaredAperture("it reads #:");
    return least(
        option ->
            Math.abs(log2((all - WrittenDrill.squaredAperture(option, "reads # there")) / left)));
  }

  private double aperture() {
    double atNumber = drill.number("At f/#");
    double hyperfocal = drill.number("distance is # m");
    double focus = drill.number("focused at # m");
    double near = drill.number("From # m to");
    double far = drill.number("m to # m must");
    for (int i = 0; i < drill.options().size(); i++) {
      double h = hyperfocal * atNumber / WrittenDrill.number(drill.options().get(i), "f/#");
      boolean holdsNear = h * focus / (h + focus) <= near * 1.01;
      boolean holdsFar = h <= focus || h * focus / (h - focus) >= far * 0.99;
      if (holdsNear && holdsFar) {
        return i;
      }
    }
    return -1;
  }

  private double filter() {
    return Math.rint(log2(drill.seconds("syncs down to # s") / drill.seconds("and # s, which")));
  }

  private double picture() {
    boolean isFaster =
        drill.seconds("set to # s") < drill.seconds("syncs down to # s") * (1 - 1e-9);
    String right =
        !isFaster
            ? "The whole frame gets all of it"
            : drill.says("can fire a long burst")
                ? "The whole frame gets it, but much weaker"
                : "A strip of the frame stays without it";
    return drill.options().indexOf(right);
  }

  private double gel() {
    double shift = 1e6 / drill.number("look like # K") - 1e6 / drill.number("flashes at # K");
    return drill.options().isEmpty()
        ? shift
        : least(option -> Math.abs(WrittenDrill.number(option, ", # mired") - shift));
  }

  private double sunShadow() {
    return drill.number(", # m tall") / Math.tan(Math.toRadians(drill.number("is #° high")));
  }

  private double sunSide() {
    double clockwise = drill.number("bears #°") - drill.number("looks toward #°") + 720;
    String[] quarters = {
      "Before it, toward the lens", "To camera right", "Behind it", "To camera left"
    };
    return drill.options().indexOf(quarters[(int) ((clockwise + 45) % 360 / 90)]);
  }

  private double unsafe() {
    List<Integer> causes =
        IntStream.range(0, drill.options().size())
            .filter(i -> hasCause(drill.options().get(i)))
            .boxed()
            .toList();
    return causes.size() == 1 ? causes.getFirst() : -1;
  }

  private boolean hasCause(String danger) {
    boolean isOutdoors = drill.says("Outdoors.");
    boolean isMains = drill.says("from the mains");
    return switch (danger) {
      case "Mains outdoors" -> isMains && (isOutdoors || isWet());
      case "Wet" -> isOutdoors || isWet();
      case "Stands in wind" -> isOutdoors;
      case "Heads overhead" -> drill.number("head is at # m") >= 2.2;
      case "Running subject" ->
          drill.says("The subject moves") && drill.number("moves at # m/s") >= 2;
      case "Heads near eyes" -> drill.number("lights is # m away") <= 1;
      default -> true;
    };
  }

  private boolean isWet() {
    return Stream.of("rain", "wet", "drizzle", "snow", "sleet", "spray", "dew")
        .anyMatch(drill.text().toLowerCase(Locale.ROOT)::contains);
  }

  private double least(ToDoubleFunction<String> measure) {
    return IntStream.range(0, drill.options().size())
        .boxed()
        .min(Comparator.comparingDouble(i -> measure.applyAsDouble(drill.options().get(i))))
        .orElseThrow();
  }

  private static double log2(double value) {
    return Math.log(value) / Math.log(2);
  }
}
