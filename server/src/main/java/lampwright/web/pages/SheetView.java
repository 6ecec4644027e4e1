package lampwright.web.pages;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampwright.drawing.AddressCode;
import lampwright.drawing.Elevation;
import lampwright.drawing.Plan;
import lampwright.engine.light.Point;
import lampwright.setup.Camera;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.Target;
import lampwright.setup.building.BuildUp;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.LightFigures;
import lampwright.setup.figures.OpticsFigures;
import lampwright.tasks.Catalogued;
import lampwright.wording.CautionLine;
import lampwright.wording.Figure;
import lampwright.wording.KeyFigures;
import lampwright.wording.Wording;

/**
 * Puts a setup, as it was or recomputed for a kit, on the field sheet.
 *
 * @param numbers of the lights: the original's, where some are given up
 */
record SheetView(
    SetupDocument setup, Figures figures, Map<LightId, Integer> numbers, Wording words) {

  private static final double CODE_PT = 68;

  /** Three lines of the largest letters. */
  private static final int LONGEST_TITLE = 130;

  SheetView(SetupDocument setup, Figures figures, Wording words) {
    this(setup, figures, setup.numbersInBuildOrder(), words);
  }

  /**
   * What stands around it.
   *
   * @param kit see {@link SheetPage#kit}
   * @param address of the page that the code leads to
   * @param changes what to change when the light changes, all of it
   */
  record Around(
      Layout layout,
      Catalogued from,
      Link back,
      List<Link> files,
      String kit,
      String address,
      List<SheetPage.Change> changes) {
    Around {
      files = List.copyOf(files);
      changes = List.copyOf(changes);
    }
  }

  SheetPage page(Around around, SheetRoom room) {
    SheetFacts facts = new SheetFacts(setup, figures, numbers, words, room);
    List<SheetPage.Step> steps = steps(room);
    int shown = (int) steps.stream().filter(step -> step.light().isPresent()).count();
    return new SheetPage(
        around.layout(),
        SheetRoom.cut(around.from().document().title(), LONGEST_TITLE),
        around.back(),
        around.files(),
        around.kit(),
        placeAndDate(),
        revision(around.from()),
        around.from().changedBy(),
        AddressCode.of(around.address(), words.say("sheet.code"), CODE_PT),
        around.address(),
        strip(),
        words.say(isTrue() ? "sheet.bearings.true" : "sheet.bearings.camera"),
        new SheetPage.Drawings(
            Plan.onPaper(setup, figures, numbers, words.notation(), room.planPt()),
            Elevation.onPaper(setup, figures, numbers, words.notation(), room.planPt())),
        steps,
        facts.more(setup.lights().size() - shown),
        camera(),
        facts.movement(),
        facts.changes(around),
        facts.power(),
        facts.packing(),
        facts.weight(),
        cautions(facts, room),
        room.noteLines(),
        room.tight());
  }

  private boolean isTrue() {
    return setup.camera().flatMap(Camera::bearing).isPresent();
  }

  private String placeAndDate() {
    String sun =
        figures
            .sun()
            .map(
                of ->
                    words.say(
                        of.position().elevation().value() > 0 ? "sheet.sun.up" : "sheet.sun.down",
                        SheetPlaces.bearing(of.position().azimuth()),
                        words.fixed(Math.abs(of.position().elevation().value()), 0)))
            .orElse("");
    return Stream.of(SetupView.placeAndDate(setup, words), sun)
        .filter(part -> !part.isEmpty())
        .collect(Collectors.joining(" · "));
  }

  private String revision(Catalogued from) {
    return words.say(
        "pages.setup.revision",
        from.revision(),
        from.changedBy(),
        new DayWords(words).day(from.changedAt().atZone(ZoneOffset.UTC).toLocalDate()));
  }

  /** The ambient's own level beside its offset: that is what is metered again at the place. */
  private List<Figure> strip() {
    List<Figure> strip = new ArrayList<>(KeyFigures.of(setup, figures, words.notation()));
    setup
        .exposure()
        .whiteBalance()
        .ifPresent(
            k ->
                strip.add(
                    Figure.of(words.fixed(k.value(), 0), "K", words.say("sheet.whiteBalance"))));
    setup
        .ambient()
        .ifPresent(
            ambient ->
                strip.add(
                    Figure.of(
                        words.level(ambient.level()),
                        words.say("pages.unit.ev"),
                        words.say("sheet.ambientReads"))));
    return strip;
  }

  private List<SheetPage.Step> steps(SheetRoom room) {
    Map<LightId, BuildUp.Step> built =
        BuildUp.of(setup, figures).stream()
            .collect(Collectors.toMap(step -> step.light().light().id(), step -> step));
    List<SheetPage.Step> steps = new ArrayList<>();
    int lights = 0;
    for (lampwright.setup.BuildStep step : setup.buildOrder()) {
      Optional<BuildUp.Step> light = step.light().map(built::get);
      if (light.isEmpty()) {
        step.what()
            .map(what -> SheetRoom.cut(what, Math.max(room.whyLetters(), 105)))
            .ifPresent(what -> steps.add(new SheetPage.Step(what, Optional.empty())));
      } else if (lights++ < room.lights()) {
        steps.add(step(light.get(), step.what(), room));
      }
    }
    for (Light light : setup.lightsInBuildOrder()) {
      boolean named =
          setup.buildOrder().stream()
              .anyMatch(step -> step.light().equals(Optional.of(light.id())));
      if (!named && lights++ < room.lights() && built.containsKey(light.id())) {
        steps.add(step(built.get(light.id()), Optional.empty(), room));
      }
    }
    return steps;
  }

  private SheetPage.Step step(BuildUp.Step built, Optional<String> what, SheetRoom room) {
    LightFigures of = built.light();
    Light light = of.light();
    SheetPlaces places = new SheetPlaces(setup, words);
    return new SheetPage.Step(
        room.whyLetters() == 0
            ? ""
            : SheetRoom.cut(what.or(light::reason).orElse(""), room.whyLetters()),
        Optional.of(
            new SheetLight(
                numbers.getOrDefault(light.id(), 0),
                words.role(light.role()),
                words.gear(light.heads(), light.head(), light.modifier(), light.gels())
                    + (light.pops() > 1 ? ", " + words.say("sheet.pops", light.pops()) : ""),
                places.direction(light.place()),
                places.distance(light.place()),
                words.notation().tape(light.place().z()),
                aim(light, places),
                words.power(light.head(), light.stopsDown()),
                of.level().map(level -> words.reading(level.reading())).orElse("–"),
                built.together().map(all -> words.reading(all.reading())).orElse("–"))));
  }

  private String aim(Light light, SheetPlaces places) {
    Target target = light.target();
    String at = words.where(target);
    String aimed =
        light
            .aim()
            .filter(aim -> aim.distanceTo(target.at()).value() > 0.02)
            .map(aim -> words.say("sheet.aim.other", places.whole(aim), tape(aim), at))
            .orElseGet(() -> words.say("sheet.aim", at, tape(target.at())));
    return switch (target.held()) {
      case TOWARD_LIGHT -> aimed;
      case TOWARD_CAMERA -> aimed + ". " + words.say("sheet.meter.camera");
      case ON_SURFACE -> aimed + ". " + words.say("sheet.meter.surface");
    };
  }

  private String tape(Point point) {
    return words.notation().tape(point.z());
  }

  private List<SheetPage.Fact> camera() {
    List<SheetPage.Fact> facts = new ArrayList<>();
    Optional<Camera> camera = setup.camera();
    SheetPlaces places = new SheetPlaces(setup, words);
    camera
        .flatMap(Camera::focusDistance)
        .ifPresent(at -> facts.add(fact("sheet.camera.focus", words.notation().tape(at))));
    focusPoint(places).ifPresent(at -> facts.add(fact("sheet.camera.focusPoint", at)));
    camera
        .flatMap(Camera::place)
        .ifPresent(
            place -> {
              facts.add(fact("sheet.camera.place", places.whole(place)));
              facts.add(fact("sheet.camera.height", tape(place)));
            });
    camera
        .flatMap(Camera::bearing)
        .ifPresent(b -> facts.add(fact("sheet.camera.looks", SheetPlaces.bearing(b))));
    camera
        .flatMap(Camera::body)
        .ifPresent(body -> facts.add(fact("pages.common.body", body.name())));
    camera
        .flatMap(Camera::lens)
        .ifPresent(lens -> facts.add(fact("pages.common.lens", lens.name())));
    figures
        .optics()
        .flatMap(OpticsFigures::focused)
        .ifPresent(
            f -> {
              facts.add(
                  fact(
                      "sheet.camera.frame",
                      words.length(f.fieldWidth()) + " × " + words.length(f.fieldHeight())));
              f.depths().stream()
                  .findFirst()
                  .ifPresent(depth -> facts.add(fact("sheet.camera.sharp", places.sharp(depth))));
            });
    return facts;
  }

  /** Where the focus is set: what the camera is aimed at, at the focused distance. */
  private Optional<String> focusPoint(SheetPlaces places) {
    return setup
        .camera()
        .filter(camera -> camera.focusDistance().isPresent())
        .flatMap(Camera::aim)
        .map(aim -> words.say("sheet.placeUp", places.whole(aim), tape(aim)));
  }

  private SheetPage.Fact fact(String key, String value) {
    return new SheetPage.Fact(words.say(key), value);
  }

  /** A caution stands whole or by its name alone: half a warning can mislead. */
  private SheetPage.Cut<CautionLine> cautions(SheetFacts facts, SheetRoom room) {
    List<CautionLine> shown = new ArrayList<>();
    int letters = 0;
    int left = 0;
    for (CautionLine line : CautionLine.all(setup, words)) {
      letters += line.act().length();
      if (letters <= room.cautionLetters()) {
        shown.add(line);
      } else {
        left++;
        if (!line.danger().isEmpty()) {
          shown.add(new CautionLine(line.danger(), ""));
        }
      }
    }
    return new SheetPage.Cut<>(shown, facts.more(left));
  }
}
