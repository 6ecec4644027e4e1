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
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;
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
    return new SheetPage(
        around.layout(),
        SheetRoom.cut(around.from().document().title(), LONGEST_TITLE),
        around.back(),
        around.files(),
        around.kit(),
        placeAndDate(),
        revision(around.from()),
        new WhoWords(words).who(around.from().changedBy()),
        AddressCode.of(around.address(), words.say("sheet.code"), CODE_PT),
        around.address(),
        strip(),
        words.say(isTrue() ? "sheet.bearings.true" : "sheet.bearings.camera"),
        new SheetPage.Drawings(
            Plan.onPaper(setup, figures, numbers, words.notation(), room.planPt()),
            Elevation.onPaper(setup, figures, numbers, words.notation(), room.planPt())),
        new BuildSteps(setup, figures, numbers, words).all(room.whyLetters()),
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
        new WhoWords(words).by(from.changedBy()),
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
