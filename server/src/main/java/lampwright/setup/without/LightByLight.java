package lampwright.setup.without;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.engine.light.Point;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Metres;
import lampwright.setup.Burning;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.Role;
import lampwright.setup.SetupDocument;
import lampwright.setup.Subject;
import lampwright.setup.Target;
import lampwright.setup.figures.AmbientFigures;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FlatMeter;
import lampwright.setup.figures.SpillFigures;
import lampwright.setup.figures.TargetFigures;

/**
 * A setup whose lights can be turned off one by one: every meter of it with what each light gives,
 * from which the levels of whatever burns follow by adding.
 *
 * @param own of each light in build order the meter at its target, held as for it alone; without
 *     the lights whose strength is not known
 * @param targets the meters at all targets, toward the camera or on the surface, as the figures
 *     have them
 * @param subjects the meters at subjects on which no target is
 * @param face the sides of what the key is for; absent without a key that a meter toward the camera
 *     sees
 * @param unknown lights whose strength nothing tells, in build order: they are in no level
 */
public record LightByLight(
    SetupDocument setup,
    List<MeterPlace> own,
    List<MeterPlace> targets,
    List<MeterPlace> subjects,
    Optional<FaceSides> face,
    List<LightId> unknown) {

  /** A target so near a subject is a part of it, in metres over the ground: a judgement. */
  private static final double ON_SUBJECT_M = 0.5;

  public LightByLight {
    own = List.copyOf(own);
    targets = List.copyOf(targets);
    subjects = List.copyOf(subjects);
    unknown = List.copyOf(unknown);
  }

  /** The meters of a setup, whose figures these are; deterministic. */
  public static LightByLight of(SetupDocument setup, Figures figures) {
    return new Metering(setup, figures).all();
  }

  /** The meter that is held for a light; absent where its strength is not known. */
  public Optional<MeterPlace> own(LightId light) {
    return own.stream()
        .filter(place -> place.at() instanceof Metered.ForLight(Light of) && of.id().equals(light))
        .findFirst();
  }

  /**
   * The states that a setup goes through while it is built: the ambient alone where it is known,
   * then one light more each time, in build order.
   */
  public List<Stage> stages() {
    List<Stage> stages = new ArrayList<>();
    Burning burning = Burning.noLightOf(setup);
    if (setup.ambient().isPresent()) {
      stages.add(new Stage(Optional.empty(), new Burning(burning.out(), false), burning));
    }
    for (Light light : setup.lightsInBuildOrder()) {
      Burning more = burning.with(light.id());
      stages.add(new Stage(Optional.of(light.id()), burning, more));
      burning = more;
    }
    return List.copyOf(stages);
  }

  /**
   * One light more.
   *
   * @param came which; absent where it is the ambient
   * @param before what burned without it
   * @param after what burns with it
   */
  public record Stage(Optional<LightId> came, Burning before, Burning after) {}

  /** Gathers the meters of one setup. */
  private static final class Metering {

    private final SetupDocument setup;
    private final Figures figures;
    private final FlatMeter meter;
    private final LuxSeconds ambient;

    Metering(SetupDocument setup, Figures figures) {
      this.setup = setup;
      this.figures = figures;
      this.meter = FlatMeter.of(setup, figures);
      this.ambient = figures.ambient().map(AmbientFigures::exposure).orElse(LuxSeconds.NONE);
    }

    LightByLight all() {
      List<MeterPlace> own = new ArrayList<>();
      List<LightId> unknown = new ArrayList<>();
      for (Light light : setup.lightsInBuildOrder()) {
        List<SpillFigures.Reach> reaches = meter.heldFor(light);
        if (reaches.stream().anyMatch(reach -> reach.light().equals(light.id()))) {
          own.add(place(new Metered.ForLight(light), reaches));
        } else {
          unknown.add(light.id());
        }
      }
      List<MeterPlace> targets = new ArrayList<>();
      figures.targets().forEach(of -> targets.add(place(of.target(), of.spill())));
      figures.unlit().forEach(of -> targets.add(place(of.target(), of.spill())));
      List<MeterPlace> subjects =
          setup.subjects().stream()
              .filter(subject -> setup.lights().stream().noneMatch(light -> isOn(light, subject)))
              .filter(subject -> subject.height().isPresent())
              .map(
                  subject ->
                      place(new Metered.AtSubject(subject), meter.towardCamera(eyes(subject))))
              .toList();
      return new LightByLight(setup, own, targets, subjects, face(), unknown);
    }

    private MeterPlace place(Target target, SpillFigures spill) {
      return place(new Metered.AtTarget(target), spill.reaches());
    }

    private MeterPlace place(Metered at, List<SpillFigures.Reach> reaches) {
      return new MeterPlace(at, reaches, ambient, setup.exposure().settings());
    }

    private static boolean isOn(Light light, Subject subject) {
      Point target = light.target().at();
      double dx = target.x() - subject.place().x();
      double dy = target.y() - subject.place().y();
      return dx * dx + dy * dy < ON_SUBJECT_M * ON_SUBJECT_M;
    }

    /** Nothing is guessed: a subject of unknown height has no place for a meter. */
    private static Point eyes(Subject subject) {
      Point feet = subject.place();
      return new Point(
          feet.x(), feet.y(), feet.z() + subject.eyes().map(Metres::value).orElse(0.0));
    }

    private Optional<FaceSides> face() {
      Map<LightId, Role> roles = new HashMap<>();
      setup.lights().forEach(light -> roles.put(light.id(), light.role()));
      return figures.targets().stream()
          .filter(of -> of.target().held() != Target.Held.ON_SURFACE)
          .filter(of -> hasKey(of, roles))
          .findFirst()
          .map(of -> new FaceSides(place(of.target(), of.spill()), of, roles));
    }

    private static boolean hasKey(TargetFigures target, Map<LightId, Role> roles) {
      return target.shares().stream()
          .anyMatch(share -> roles.get(share.light()) == Role.KEY && share.exposure().value() > 0);
    }
  }
}
