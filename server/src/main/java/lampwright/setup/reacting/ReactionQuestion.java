package lampwright.setup.reacting;

import static lampwright.document.Field.list;
import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import lampwright.document.Field;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.document.Pointer;
import lampwright.document.Problems;
import lampwright.engine.exposure.Ev100;
import lampwright.engine.light.Point;
import lampwright.engine.unit.Stops;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;

/**
 * What is asked when something happened, as it stands in a body.
 *
 * @param keep dials of the camera that must stay
 */
public record ReactionQuestion(Happening happening, List<CameraDial> keep) {

  /** Nearer than this to its target or aim no light can stand, in metres; as a setup's lights. */
  private static final double NEAREST_M = 0.05;

  private static final double DARKEST_EV = -10;
  private static final double BRIGHTEST_EV = 20;

  private static final Form<LightId> LIGHT_ID = LightId.FORM;

  /** A light and where it stands now. */
  private record Moved(LightId light, Point place) {

    private static final Field<Moved, LightId> LIGHT =
        required("light", LIGHT_ID, Moved::light, "The light's id in the setup.");
    private static final Field<Moved, Point> PLACE =
        required("place", Light.placeForm(), Moved::place, "Where its emitting face is now.");

    static final ObjectForm<Moved> FORM =
        ObjectForm.of(
            "moved_light",
            "A light that stands somewhere else, aimed at what it was aimed at.",
            values -> new Moved(values.get(LIGHT), values.get(PLACE)),
            List.of(LIGHT, PLACE));
  }

  /** What a body tells: exactly one of them. */
  private record Told(
      Optional<Ev100> reads, Optional<Stops> falls, Optional<Moved> moved, Optional<LightId> dead) {

    private static final Field<Told, Optional<Ev100>> READS =
        optional(
            "ambient_ev100",
            Forms.number("EV")
                .atLeast(DARKEST_EV)
                .atMost(BRIGHTEST_EV)
                .maybe(10)
                .as(Ev100::new, Ev100::value),
            Told::reads,
            "What the ambient reads now, as an EV at ISO 100.");
    private static final Field<Told, Optional<Stops>> FALLS =
        optional(
            "ambient_falls_stops",
            Forms.number("stops").atLeast(-10).atMost(10).maybe(1).as(Stops::new, Stops::value),
            Told::falls,
            "By how many stops the ambient has fallen; minus where it has risen.");
    private static final Field<Told, Optional<Moved>> MOVED =
        optional("moved", Moved.FORM, Told::moved, "The light that was moved.");
    private static final Field<Told, Optional<LightId>> DEAD =
        optional("dead", LIGHT_ID, Told::dead, "The light a head of which does not fire.");

    static final ObjectForm<Told> FORM =
        ObjectForm.<Told>of(
                "happening",
                "What happened to a setup that stands: exactly one of these.",
                values ->
                    new Told(
                        values.get(READS), values.get(FALLS), values.get(MOVED), values.get(DEAD)),
                List.of(READS, FALLS, MOVED, DEAD))
            .checked(Told::check);

    private static void check(Told told, Pointer at, Problems problems) {
      long count = told.all().count();
      if (count != 1) {
        problems.add(
            at,
            "What happened ("
                + count
                + " things) must be exactly 1: ambient_ev100, ambient_falls_stops, moved or dead.");
      }
    }

    private Stream<Happening> all() {
      return Stream.of(
              reads.<Happening>map(Happening.AmbientReads::new),
              falls.<Happening>map(Happening.AmbientFalls::new),
              moved.<Happening>map(at -> new Happening.LightMoved(at.light(), at.place())),
              dead.<Happening>map(Happening.HeadDead::new))
          .flatMap(Optional::stream);
    }

    /** Whatever stands where the check found fault is not handed on. */
    Happening happening() {
      return all().findFirst().orElseGet(() -> new Happening.AmbientFalls(Stops.ZERO));
    }

    static Told of(Happening happening) {
      return switch (happening) {
        case Happening.AmbientReads(Ev100 level) ->
            new Told(Optional.of(level), Optional.empty(), Optional.empty(), Optional.empty());
        case Happening.AmbientFalls(Stops stops) ->
            new Told(Optional.empty(), Optional.of(stops), Optional.empty(), Optional.empty());
        case Happening.LightMoved(LightId light, Point place) ->
            new Told(
                Optional.empty(),
                Optional.empty(),
                Optional.of(new Moved(light, place)),
                Optional.empty());
        case Happening.HeadDead(LightId light) ->
            new Told(Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(light));
      };
    }
  }

  private static final Field<ReactionQuestion, Happening> HAPPENING =
      happeningField(Function.identity());
  private static final Field<ReactionQuestion, List<CameraDial>> KEEP =
      keepField(Function.identity());

  /** The question as it stands in a body. */
  public static final ObjectForm<ReactionQuestion> FORM =
      ObjectForm.of(
          "reaction_question",
          "What happened to a setup that stands, and what must stay.",
          values -> new ReactionQuestion(values.get(HAPPENING), values.get(KEEP)),
          List.of(HAPPENING, KEEP));

  public ReactionQuestion {
    keep = List.copyOf(keep);
  }

  /** The field for what happened, in whatever has a question: an object with exactly one thing. */
  public static <T> Field<T, Happening> happeningField(Function<T, ReactionQuestion> question) {
    return required(
        "happening",
        Told.FORM.as(Told::happening, Told::of),
        of -> question.apply(of).happening(),
        "What happened.");
  }

  /** The field for what must stay, in whatever has a question. */
  public static <T> Field<T, List<CameraDial>> keepField(Function<T, ReactionQuestion> question) {
    return list(
        "keep",
        Forms.choice(CameraDial.values()),
        CameraDial.values().length,
        of -> question.apply(of).keep(),
        "Dials of the camera that must stay, such as the time where it is held by hand.");
  }

  /** The means with the dials kept that must stay. */
  public Means means(Means free) {
    return free.keeping(Set.copyOf(keep));
  }

  /** Adds what cannot have happened to a setup; {@code at} is where the happening stands. */
  public void check(SetupDocument setup, Pointer at, Problems problems) {
    switch (happening) {
      case Happening.AmbientReads _ -> {}
      case Happening.AmbientFalls(Stops stops) ->
          setup
              .ambient()
              .ifPresent(
                  ambient ->
                      checkLevel(
                          ambient.level().plus(stops.negated()),
                          at.field("ambient_falls_stops"),
                          problems));
      case Happening.LightMoved(LightId id, Point place) -> {
        Pointer moved = at.field("moved");
        find(setup, id, moved.field("light"), problems)
            .filter(light -> isNear(light, place))
            .ifPresent(
                _ ->
                    problems.add(
                        moved.field("place"),
                        "Place must be at least "
                            + NEAREST_M
                            + " m away from the light's target and aim. Maybe it is meant"
                            + " elsewhere?"));
      }
      case Happening.HeadDead(LightId id) -> find(setup, id, at.field("dead"), problems);
    }
  }

  private static void checkLevel(Ev100 level, Pointer at, Problems problems) {
    if (level.value() < DARKEST_EV || level.value() > BRIGHTEST_EV) {
      problems.add(
          at, "The ambient would be (" + level + ") beyond what a setup can say, EV -10 to 20.");
    }
  }

  private static boolean isNear(Light light, Point place) {
    Point aim = light.aim().orElse(light.target().at());
    return place.distanceTo(light.target().at()).value() < NEAREST_M
        || place.distanceTo(aim).value() < NEAREST_M;
  }

  private static Optional<Light> find(
      SetupDocument setup, LightId id, Pointer at, Problems problems) {
    Optional<Light> found =
        setup.lights().stream().filter(light -> light.id().equals(id)).findFirst();
    if (found.isEmpty()) {
      problems.add(at, "Light (\"" + id + "\") is not one of this setup's lights.");
    }
    return found;
  }
}
