package lampwright.setup.signature;

import static lampwright.document.Field.optional;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.ObjectForm;
import lampwright.language.Said;
import lampwright.setup.SetupDocument;
import lampwright.setup.Subject;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.MovementFigures;

/**
 * How what moves comes out; of several subjects the one that comes out least sharp.
 *
 * @param moving absent where nothing moves
 */
public record Freezing(Optional<MovingSubject> moving) implements Part {

  /** How it comes out, the sharpest first. */
  public enum Kind {
    NOTHING_MOVES,
    /** Within {@link MovingSubject#FROZEN_CIRCLES}. */
    FROZEN,
    /** Within {@link MovingSubject#SLIGHTLY_SOFT_CIRCLES}. */
    SLIGHTLY_SOFT,
    BLURRED;

    /** "slightly soft". */
    public String words() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  private static final Field<Freezing, Optional<MovingSubject>> MOVING =
      optional("moving", MovingSubject.FORM, Freezing::moving, "What moves.");

  static final ObjectForm<Freezing> FORM =
      ObjectForm.of(
          "freezing",
          "How what moves comes out.",
          values -> new Freezing(values.get(MOVING)),
          List.of(MOVING));

  static Optional<Freezing> find(SetupDocument setup, Figures figures, Gaps gaps) {
    List<String> needs = new ArrayList<>();
    boolean moves = false;
    for (int i = 0; i < setup.subjects().size(); i++) {
      Subject subject = setup.subjects().get(i);
      if (subject.speedMPerS().isEmpty() && !subject.path().isEmpty()) {
        needs.add("/subjects/" + i + "/speed_m_per_s");
      }
      moves |= subject.speedMPerS().filter(speed -> speed > 0).isPresent();
    }
    if (!needs.isEmpty()) {
      return gaps.none(PartName.FREEZING, Why.SPEED_UNKNOWN, needs);
    }
    if (!moves) {
      return Optional.of(new Freezing(Optional.empty()));
    }
    if (figures.movements().isEmpty()) {
      return gaps.none(
          PartName.FREEZING,
          Why.CAMERA_UNKNOWN,
          figures.needs().stream().filter(need -> need.startsWith("/camera")).toList());
    }
    return found(figures, gaps);
  }

  private static Optional<Freezing> found(Figures figures, Gaps gaps) {
    List<MovingSubject> all = new ArrayList<>();
    for (MovementFigures movement : figures.movements()) {
      if (movement.speed().value() > 0) {
        Optional<MovingSubject> seen = MovingSubject.find(movement, figures);
        if (seen.isEmpty()) {
          return gaps.none(
              PartName.FREEZING, Why.DURATION_UNKNOWN, MovingSubject.needs(movement, figures));
        }
        all.add(seen.get());
      }
    }
    return Optional.of(
        new Freezing(
            all.stream()
                .max(
                    Comparator.comparing(MovingSubject::kind)
                        .thenComparingDouble(MovingSubject::longestCircles))));
  }

  public Kind kind() {
    return moving.map(MovingSubject::kind).orElse(Kind.NOTHING_MOVES);
  }

  @Override
  public PartName part() {
    return PartName.FREEZING;
  }

  @Override
  public Said words() {
    return Said.of("signature.freezing." + Numbers.key(kind()));
  }

  @Override
  public Said sentence() {
    return moving.map(MovingSubject::sentence).orElseGet(() -> Said.of("signature.freezing.none"));
  }
}
