package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lampwright.engine.Known;
import lampwright.engine.exposure.Ambient;
import lampwright.engine.exposure.Ev100;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.power.PowerSetting;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;
import lampwright.engine.unit.WattSeconds;
import lampwright.gear.Gel;
import lampwright.gear.Head;
import lampwright.gear.Kit;
import lampwright.gear.Modifier;
import lampwright.setup.Camera;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FiguresComputation;
import lampwright.setup.figures.Level;
import lampwright.setup.figures.LightFigures;

/** Writes a chosen candidate down as a complete setup, and says what it costs in words. */
final class AdaptedDocument {

  /** A shift that is just visible side by side; common practice, no source. */
  private static final double SEEN_MIRED = 10;

  private static final List<String> LEFT_OUT =
      List.of(
          "Modifiers were chosen by likeness before heads; choosing both together may do better.",
          "No light was moved, and each light got one head.",
          "Long-burst flash beyond the sync time, and what a shutter cuts off a slow flash.");

  private final SetupDocument setup;
  private final Kit kit;
  private final Figures original;
  private final CameraChoice camera;
  private final List<Modifier> modifiers;
  private final PairedReadings readings;
  private final Optional<Ev100> ambient;

  AdaptedDocument(
      SetupDocument setup,
      Kit kit,
      Figures original,
      CameraChoice camera,
      List<Modifier> modifiers,
      PairedReadings readings,
      Optional<Ev100> ambient) {
    this.setup = setup;
    this.kit = kit;
    this.original = original;
    this.camera = camera;
    this.modifiers = modifiers;
    this.readings = readings;
    this.ambient = ambient;
  }

  Adaptation of(AdaptationSearch.Candidate candidate) {
    ExposureSettings settings = candidate.setting().exposure();
    SetupDocument document = document(candidate);
    Figures figures = FiguresComputation.of(document);
    List<AdaptedLight> lights = new ArrayList<>();
    for (int i = 0; i < setup.lights().size(); i++) {
      lights.add(light(i, candidate, figures));
    }
    Optional<Stops> offset = ambient.map(level -> Ambient.of(level).offset(settings));
    Optional<Stops> change = offset.flatMap(o -> original.ambient().map(a -> o.minus(a.offset())));
    Stops depth = AdaptationSearch.depthChange(settings.aperture(), camera);
    return new Adaptation(
        document,
        figures,
        settings,
        camera.body(),
        camera.lens(),
        candidate.setting().filter().map(lampwright.gear.NeutralDensity::name),
        offset,
        change,
        depth,
        camera.framingChange(),
        lights,
        new Losses(setup, settings, change, depth, camera.framingChange(), lights).inWords(),
        candidate.cost(),
        LEFT_OUT);
  }

  private SetupDocument document(AdaptationSearch.Candidate candidate) {
    List<Light> lights = new ArrayList<>();
    Set<LightId> lit = new HashSet<>();
    for (int i = 0; i < setup.lights().size(); i++) {
      Optional<Head> head = candidate.heads().heads().get(i);
      Optional<PowerSetting> power = candidate.heads().powers().get(i);
      if (head.isPresent() && power.isPresent()) {
        Light old = setup.lights().get(i);
        lights.add(with(old, head.get(), modifiers.get(i), power.get().set()));
        lit.add(old.id());
      }
    }
    return new SetupDocument(
        setup.title(),
        setup.intent(),
        setup.moods(),
        setup.genre(),
        setup.occasion(),
        setup.exposure().with(candidate.setting().exposure()),
        newCamera(),
        setup.subjects(),
        setup.surfaces(),
        lights,
        newAmbient(),
        setup.plan(),
        setup.buildOrder().stream()
            .filter(step -> step.light().isEmpty() || lit.contains(step.light().get()))
            .toList(),
        setup.cautions(),
        List.of(),
        List.of());
  }

  private Optional<Camera> newCamera() {
    if (camera.body().isEmpty() && camera.lens().isEmpty()) {
      return setup.camera();
    }
    return Optional.of(
        new Camera(
            camera.body(),
            camera.lens(),
            setup.camera().flatMap(Camera::place),
            setup.camera().flatMap(Camera::aim),
            setup.camera().flatMap(Camera::bearing),
            setup.camera().flatMap(Camera::focusDistance)));
  }

  private Optional<lampwright.setup.Ambient> newAmbient() {
    return ambient.map(
        level ->
            setup
                .ambient()
                .filter(own -> own.level().equals(level))
                .orElseGet(
                    () ->
                        new lampwright.setup.Ambient(
                            level,
                            Known.SET,
                            Optional.empty(),
                            setup.ambient().flatMap(lampwright.setup.Ambient::source),
                            Optional.empty())));
  }

  /** The light as the kit makes it. The old reading was another head's, so it goes. */
  private Light with(Light old, Head head, Modifier modifier, Stops down) {
    return new Light(
        old.id(),
        old.role(),
        old.reason(),
        head,
        1,
        1,
        Optional.of(modifier),
        readings.of(head, modifier),
        old.gels(),
        old.place(),
        old.placeKnown(),
        old.aim(),
        old.target(),
        old.stand(),
        Optional.of(down),
        Optional.empty());
  }

  private AdaptedLight light(int index, AdaptationSearch.Candidate candidate, Figures figures) {
    LightFigures old = original.lights().get(index);
    Optional<Head> head = candidate.heads().heads().get(index);
    Optional<PowerSetting> power = candidate.heads().powers().get(index);
    if (head.isEmpty() || power.isEmpty()) {
      return new AdaptedLight(old, Optional.empty());
    }
    LightFigures now = figures.get(old.light().id());
    Optional<AdaptedLight.Made> made =
        now.level()
            .flatMap(
                level ->
                    old.level()
                        .map(was -> made(old, now, was, level, head.get(), power.get(), index)));
    return new AdaptedLight(old, made);
  }

  private AdaptedLight.Made made(
      LightFigures old,
      LightFigures now,
      Level was,
      Level level,
      Head head,
      PowerSetting power,
      int index) {
    double energyShare = power.set().negated().toFactor();
    return new AdaptedLight.Made(
        head,
        modifiers.get(index),
        power,
        level,
        level.fromShooting().minus(was.fromShooting()),
        now.angularSize(),
        new WattSeconds(head.energy().value() * energyShare),
        head.recycle().map(full -> new Seconds(full.value() * energyShare)),
        head.flashesPerCharge().map(full -> full / energyShare),
        missingGels(old.light()),
        Remedies.of(old, modifiers.get(index), power));
  }

  /** Gels of the setup that the kit has nothing like, within what one would just see. */
  private List<String> missingGels(Light light) {
    List<String> missing = new ArrayList<>();
    for (Gel gel : light.gels()) {
      boolean has =
          kit.gels().stream()
              .anyMatch(
                  g -> Math.abs(g.item().shift().value() - gel.shift().value()) <= SEEN_MIRED);
      if (!has) {
        missing.add("The kit has no gel like “" + gel.name() + "”; bring it.");
      }
    }
    return missing;
  }
}
