package lampwright.web.pages;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lampwright.drawing.StopRuler;
import lampwright.drawing.Svg;
import lampwright.engine.Known;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Level;
import lampwright.setup.used.ComparedLight;
import lampwright.setup.used.PlannedAgainstUsed;
import lampwright.tasks.Recorded;
import lampwright.wording.Deviation;
import lampwright.wording.Figure;
import lampwright.wording.Wording;

/** Puts what was really used, against what was planned, on the setup page. */
final class UsedView {

  private final Wording words;
  private final PlannedAgainstUsed both;
  private final Map<LightId, Integer> numbers;

  private UsedView(SetupDocument planned, SetupDocument used, Wording words) {
    this.words = words;
    this.both = PlannedAgainstUsed.of(planned, used);
    this.numbers = planned.numbersInBuildOrder();
  }

  /** What was recorded. */
  static UsedPart recorded(Recorded recorded, Wording words) {
    return new UsedView(recorded.planned(), recorded.used(), words)
        .part(
            words.say(
                "pages.used.told",
                recorded.revision(),
                recorded.plannedRevision(),
                new WhoWords(words).by(recorded.changedBy()),
                new DayWords(words).day(recorded.changedAt().atZone(ZoneOffset.UTC).toLocalDate())),
            recorded.note());
  }

  /** What is proposed, against the setup as it is now. */
  static UsedPart proposed(SetupDocument planned, SetupDocument used, String note, Wording words) {
    return new UsedView(planned, used, words).part("", note);
  }

  private UsedPart part(String told, String note) {
    List<ComparedLight> asPlanned =
        both.lights().stream().filter(ComparedLight::isAsPlanned).toList();
    return new UsedPart(
        told,
        note,
        both.lights().stream().filter(light -> !light.isAsPlanned()).map(this::light).toList(),
        asPlanned.isEmpty() ? "" : words.say("pages.used.asPlanned", names(asPlanned)),
        camera());
  }

  private String names(List<ComparedLight> lights) {
    return lights.stream()
        .map(light -> light.planned().light())
        .map(light -> words.light(numbers.getOrDefault(light.id(), 0), light))
        .collect(Collectors.joining(", "));
  }

  private UsedPart.UsedLight light(ComparedLight of) {
    Light was = of.planned().light();
    String role = words.role(was.role());
    return new UsedPart.UsedLight(
        numbers.getOrDefault(was.id(), 0),
        role,
        means(was, "", of.expected(), of.planned().level()),
        means(
            of.used().light(),
            of.powerDifference().map(this::change).orElse(""),
            of.used().level().map(Level::reading),
            of.used().level()),
        ruler(role, of),
        of.levelDifference()
            .map(by -> Deviation.of(by, words))
            .orElse(new Deviation("–", words.notKnown(), false)),
        notes(of));
  }

  private UsedPart.Means means(
      Light light, String change, Optional<FNumber> reading, Optional<Level> level) {
    return new UsedPart.Means(
        words.gear(light.heads(), light.head(), light.modifier(), light.gels()),
        words.power(light.head(), light.stopsDown()),
        change,
        reading.map(words::reading).orElse("–"),
        level.map(l -> l.known()).orElse(Known.ESTIMATED));
  }

  /** The plan with how sure it was, and where the light really came to lie. */
  private Svg ruler(String role, ComparedLight of) {
    StopRuler ruler =
        StopRuler.of(role, words.notation())
            .withNames(words.say("pages.used.usedWord"), words.say("pages.used.plannedWord"));
    if (of.planned().level().isPresent()) {
      Level planned = of.planned().level().get();
      ruler = ruler.withBar(planned.fromShooting().value()).withBand(planned.uncertainty().value());
    }
    if (of.used().level().isPresent()) {
      ruler = ruler.withDot(of.used().level().get().fromShooting().value());
    }
    return ruler.svg();
  }

  private String notes(ComparedLight of) {
    if (!of.isMoved()) {
      return "";
    }
    return words.say("pages.used.moved", tape(of.used().distance()), tape(of.planned().distance()));
  }

  private String tape(Metres length) {
    Figure figure = words.length(length, 2, "");
    return (figure.value() + " " + figure.unit()).strip();
  }

  private List<UsedPart.Setting> camera() {
    List<UsedPart.Setting> settings = new ArrayList<>();
    settings.add(
        new UsedPart.Setting(
            words.say("pages.common.aperture"),
            words.aperture(both.planned().fNumber()),
            words.aperture(both.used().fNumber()),
            change(both.apertureDifference())));
    settings.add(
        new UsedPart.Setting(
            words.say("pages.common.time"),
            words.notation().written(both.planned().time().toString()),
            words.notation().written(both.used().time().toString()),
            change(both.timeDifference())));
    settings.add(
        new UsedPart.Setting(
            words.say("pages.common.iso"),
            words.iso(both.planned().iso()),
            words.iso(both.used().iso()),
            change(both.isoDifference())));
    if (both.planned().neutralDensity().value() > 0 || both.used().neutralDensity().value() > 0) {
      settings.add(
          new UsedPart.Setting(
              words.say("pages.common.greyFilter"),
              filter(both.planned().neutralDensity()),
              filter(both.used().neutralDensity()),
              change(both.neutralDensityDifference())));
    }
    return settings;
  }

  private String filter(Stops density) {
    return density.value() == 0 ? words.say("pages.common.none") : words.change(density.negated());
  }

  /** Empty where it does nothing that shows. */
  private String change(Stops by) {
    return words.change(by);
  }
}
