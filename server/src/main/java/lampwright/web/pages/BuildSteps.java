package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lampwright.setup.Ambient;
import lampwright.setup.BuildStep;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.Target;
import lampwright.setup.building.BuildUp;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.LightFigures;
import lampwright.wording.Wording;

/**
 * The steps of a build, as the field sheet and the phone on location tell them.
 *
 * @param numbers of all the lights
 */
record BuildSteps(
    SetupDocument setup, Figures figures, Map<LightId, Integer> numbers, Wording words) {

  /** Room for words, where there is no want of it. */
  static final int ALL_WORDS = 4_000;

  /** What is done without a light is told in so many letters at least. */
  private static final int LEAST_LETTERS = 105;

  /**
   * In build order; lights that it leaves out come last. Where there is none, one is proposed: the
   * ambient, then the lights by their roles, each with why its turn is now.
   *
   * @param letters of what is done and why in each step; 0 leaves that out for lights
   */
  List<SheetPage.Step> all(int letters) {
    Map<LightId, BuildUp.Step> built =
        BuildUp.of(setup, figures).stream()
            .collect(Collectors.toMap(step -> step.light().light().id(), step -> step));
    List<SheetPage.Step> steps = new ArrayList<>();
    for (BuildStep step : setup.buildOrder()) {
      Optional<BuildUp.Step> light = step.light().map(built::remove);
      if (light.isPresent()) {
        steps.add(step(light.get(), step.what(), letters));
      } else {
        step.what()
            .map(what -> SheetRoom.cut(what, Math.max(letters, LEAST_LETTERS)))
            .ifPresent(what -> steps.add(new SheetPage.Step(what, Optional.empty())));
      }
    }
    boolean isProposed = setup.buildOrder().isEmpty();
    if (isProposed) {
      setup.ambient().ifPresent(ambient -> steps.add(ambientFirst(ambient)));
    }
    for (Light light : setup.lightsInBuildOrder()) {
      Optional.ofNullable(built.get(light.id()))
          .ifPresent(
              left ->
                  steps.add(
                      step(
                          left,
                          isProposed ? Optional.of(whyNow(light)) : Optional.empty(),
                          letters)));
    }
    return steps;
  }

  /** Where nobody gave an order: everything is measured against the ambient. */
  private SheetPage.Step ambientFirst(Ambient ambient) {
    return new SheetPage.Step(
        words.say("sheet.proposed.ambient", words.notation().fixed(ambient.level().value(), 1)),
        Optional.empty());
  }

  /** Why a light's turn is now, and why it is there. */
  private String whyNow(Light light) {
    String turn =
        words.say(
            switch (light.role()) {
              case KEY -> "sheet.proposed.key";
              case FILL -> "sheet.proposed.fill";
              case BACK, RIM, KICKER, HAIR -> "sheet.proposed.behind";
              case BACKGROUND -> "sheet.proposed.background";
              case ACCENT -> "sheet.proposed.accent";
            });
    return light.reason().map(reason -> turn + " " + reason).orElse(turn);
  }

  private SheetPage.Step step(BuildUp.Step built, Optional<String> what, int letters) {
    LightFigures of = built.light();
    Light light = of.light();
    SheetPlaces places = new SheetPlaces(setup, words);
    return new SheetPage.Step(
        letters == 0 ? "" : SheetRoom.cut(what.or(light::reason).orElse(""), letters),
        Optional.of(
            new SheetLight(
                light.id().text(),
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
            .map(
                aim ->
                    words.say(
                        "sheet.aim.other", places.whole(aim), words.notation().tape(aim.z()), at))
            .orElseGet(() -> words.say("sheet.aim", at, words.notation().tape(target.at().z())));
    return switch (target.held()) {
      case TOWARD_LIGHT -> aimed;
      case TOWARD_CAMERA -> aimed + ". " + words.say("sheet.meter.camera");
      case ON_SURFACE -> aimed + ". " + words.say("sheet.meter.surface");
    };
  }
}
