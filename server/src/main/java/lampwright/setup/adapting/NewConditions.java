package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.Known;
import lampwright.engine.exposure.Ev100;
import lampwright.language.Said;
import lampwright.setup.Ambient;
import lampwright.setup.Occasion;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.SunComputation;
import lampwright.setup.figures.SunFigures;

/**
 * The ambient and the occasion that an adaptation is made for.
 *
 * @param ambient to shoot in; absent where it is not known
 * @param known how that is known
 * @param occasion of the adaptation
 * @param remarks what to mind about them, in words
 */
record NewConditions(
    Optional<Ev100> ambient,
    Known known,
    Optional<Occasion> occasion,
    List<Said> remarks,
    List<Said> contradictions) {

  static NewConditions of(SetupDocument setup, Wishes wishes) {
    Optional<Occasion> occasion =
        wishes.occasion().map(wished -> merged(wished, setup.occasion())).or(setup::occasion);
    if (wishes.ambient().isPresent() || wishes.occasion().isEmpty()) {
      return new NewConditions(
          wishes.ambient().or(() -> setup.ambient().map(Ambient::level)),
          wishes.ambient().isPresent()
              ? Known.SET
              : setup.ambient().map(Ambient::known).orElse(Known.SET),
          occasion,
          List.of(),
          List.of());
    }
    return predicted(setup, occasion);
  }

  /** By the clear sky's level: the setup's own reading, changed as the model changes. */
  private static NewConditions predicted(SetupDocument setup, Optional<Occasion> occasion) {
    Optional<Ev100> then = SunComputation.find(setup).flatMap(SunFigures::clearSkyLevel);
    SetupDocument there = setup.withOccasion(occasion);
    Optional<Ev100> now = SunComputation.find(there).flatMap(SunFigures::clearSkyLevel);
    if (now.isEmpty()) {
      List<Said> missing = new ArrayList<>();
      missing.add(
          Said.of(
              SunComputation.needs(there).stream().anyMatch(need -> need.startsWith("/occasion"))
                  ? "adapting.cannot.placeAndTime"
                  : "adapting.cannot.predict"));
      return new NewConditions(Optional.empty(), Known.SET, occasion, List.of(), missing);
    }
    Optional<Ev100> read = setup.ambient().map(Ambient::level);
    boolean both = read.isPresent() && then.isPresent();
    Ev100 level = both ? read.get().plus(now.get().minus(then.get())) : now.get();
    return new NewConditions(
        Optional.of(level),
        Known.ESTIMATED,
        occasion,
        List.of(
            Said.of(both ? "adapting.left.predictedByReading" : "adapting.left.predictedBySky")),
        List.of());
  }

  private static Occasion merged(Occasion wished, Optional<Occasion> own) {
    return new Occasion(
        wished.place().or(() -> own.flatMap(Occasion::place)),
        wished.date().or(() -> own.flatMap(Occasion::date)),
        wished.time().or(() -> own.flatMap(Occasion::time)),
        wished.utcOffset().or(() -> own.flatMap(Occasion::utcOffset)),
        wished.weather(),
        wished.wind());
  }
}
