package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.unit.Stops;
import lampwright.setup.SetupDocument;

/** What an adaptation loses against the setup, in words, the weightiest first. */
record Losses(
    SetupDocument setup,
    ExposureSettings settings,
    Optional<Stops> ambientChange,
    Stops depthChange,
    Optional<Double> framingChange,
    List<AdaptedLight> lights) {

  /** A third of a stop is just visible side by side; common practice, no source. */
  private static final double VISIBLE_STOPS = 1.0 / 3 - 1e-9;

  private static final double NOTICED_FRAMING = 0.03;

  List<String> inWords() {
    List<String> losses = new ArrayList<>();
    for (AdaptedLight light : lights) {
      String name = "“" + light.original().light().id() + "”";
      if (light.made().isEmpty()) {
        losses.add(name + " is given up.");
      } else if (Math.abs(light.made().get().deviation().value()) >= VISIBLE_STOPS) {
        losses.add(name + " is " + brighterOrDarker(light.made().get().deviation()) + ".");
      }
    }
    ambientChange
        .filter(change -> Math.abs(change.value()) >= VISIBLE_STOPS)
        .ifPresent(change -> losses.add("The ambient is " + brighterOrDarker(change) + "."));
    if (Math.abs(depthChange.value()) >= VISIBLE_STOPS) {
      losses.add(
          "Depth of field is that of "
              + Remedies.stops(Math.abs(depthChange.value()))
              + (depthChange.value() > 0 ? " more closed." : " more open."));
    }
    double time = settings.time().stopsOver(setup.exposure().time()).value();
    if (Math.abs(time) >= VISIBLE_STOPS) {
      losses.add(
          settings.time()
              + " instead of "
              + setup.exposure().time()
              + (time > 0
                  ? ": movement in the ambient smears more."
                  : ": movement in the ambient smears less."));
    }
    framingChange
        .filter(change -> Math.abs(change) >= NOTICED_FRAMING)
        .ifPresent(change -> losses.add(framing(change)));
    return losses;
  }

  private static String brighterOrDarker(Stops change) {
    return Remedies.stops(Math.abs(change.value()))
        + (change.value() > 0 ? " brighter than in the setup" : " darker than in the setup");
  }

  private static String framing(double change) {
    return String.format(
        Locale.ROOT,
        "The lens shows %.0f %% %s on the subject.",
        Math.abs(change) * 100,
        change > 0 ? "more" : "less");
  }
}
