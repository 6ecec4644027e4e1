package lampwright.web.pages;

import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lampwright.drawing.StopRuler;
import lampwright.drawing.Svg;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.unit.Stops;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.figures.Level;
import lampwright.setup.used.ComparedLight;
import lampwright.setup.used.PlannedAgainstUsed;
import lampwright.tasks.Recorded;

/** Puts what was really used, against what was planned, on the setup page. */
final class UsedView {

  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

  private final Recorded recorded;
  private final PlannedAgainstUsed both;
  private final Map<LightId, Integer> numbers;

  UsedView(Recorded recorded) {
    this.recorded = recorded;
    this.both = PlannedAgainstUsed.of(recorded.planned(), recorded.used());
    this.numbers = SetupView.numbers(recorded.planned());
  }

  UsedPart part() {
    List<ComparedLight> asPlanned =
        both.lights().stream().filter(ComparedLight::isAsPlanned).toList();
    return new UsedPart(
        "Revision %d against the plan in revision %d, told by %s, %s."
            .formatted(
                recorded.revision(),
                recorded.plannedRevision(),
                recorded.changedBy(),
                DAY.format(recorded.changedAt().atZone(ZoneOffset.UTC))),
        recorded.note(),
        both.lights().stream().filter(light -> !light.isAsPlanned()).map(this::light).toList(),
        asPlanned.isEmpty() ? "" : "As planned: " + names(asPlanned) + ".",
        camera());
  }

  private String names(List<ComparedLight> lights) {
    return lights.stream()
        .map(light -> light.planned().light())
        .map(light -> numbers.getOrDefault(light.id(), 0) + " " + Wording.role(light.role()))
        .collect(Collectors.joining(", "));
  }

  private UsedPart.UsedLight light(ComparedLight of) {
    Light was = of.planned().light();
    String role = Wording.role(was.role());
    return new UsedPart.UsedLight(
        numbers.getOrDefault(was.id(), 0),
        role,
        means(was, "", of.expected(), of.planned().level()),
        means(
            of.used().light(),
            of.powerDifference().map(UsedView::change).orElse(""),
            of.used().level().map(Level::reading),
            of.used().level()),
        ruler(role, of),
        of.levelDifference()
            .map(by -> Deviation.ofTenths(by.value()))
            .orElse(new Deviation("–", "not known", false)),
        notes(of));
  }

  private static UsedPart.Means means(
      Light light, String change, Optional<FNumber> reading, Optional<Level> level) {
    return new UsedPart.Means(
        Wording.gear(light.heads(), light.head(), light.modifier(), light.gels()),
        Wording.power(light.head(), light.stopsDown()),
        change,
        reading.map(FNumber::tenthsText).orElse("–"),
        level.map(l -> Wording.known(l.known())).orElse(Known.ESTIMATED));
  }

  /** The plan with how sure it was, and where the light really came to lie. */
  private static Svg ruler(String role, ComparedLight of) {
    StopRuler ruler = StopRuler.of(role).withNames("used", "planned");
    if (of.planned().level().isPresent()) {
      Level planned = of.planned().level().get();
      ruler = ruler.withBar(planned.fromShooting().value()).withBand(planned.uncertainty().value());
    }
    if (of.used().level().isPresent()) {
      ruler = ruler.withDot(of.used().level().get().fromShooting().value());
    }
    return ruler.svg();
  }

  private static String notes(ComparedLight of) {
    if (!of.isMoved()) {
      return "";
    }
    return String.format(
        Locale.ROOT,
        "It stood %.2f m from its target instead of %.2f m.",
        of.used().distance().value(),
        of.planned().distance().value());
  }

  private List<UsedPart.Setting> camera() {
    List<UsedPart.Setting> settings = new ArrayList<>();
    settings.add(
        new UsedPart.Setting(
            "Aperture",
            both.planned().fNumber().toString(),
            both.used().fNumber().toString(),
            change(both.apertureDifference())));
    settings.add(
        new UsedPart.Setting(
            "Time",
            both.planned().time().toString(),
            both.used().time().toString(),
            change(both.timeDifference())));
    settings.add(
        new UsedPart.Setting(
            "ISO",
            SetupFigures.iso(both.planned()),
            SetupFigures.iso(both.used()),
            change(both.isoDifference())));
    if (both.planned().neutralDensity().value() > 0 || both.used().neutralDensity().value() > 0) {
      settings.add(
          new UsedPart.Setting(
              "Grey filter",
              filter(both.planned().neutralDensity()),
              filter(both.used().neutralDensity()),
              change(both.neutralDensityDifference())));
    }
    return settings;
  }

  private static String filter(Stops density) {
    return density.value() == 0 ? "none" : Wording.signed(density.negated()) + " stops";
  }

  /** Empty where it does nothing that shows. */
  private static String change(Stops by) {
    String signed = Wording.signed(by);
    return signed.equals("0.0") ? "" : signed + (Math.abs(by.value()) < 1.05 ? " stop" : " stops");
  }
}
