package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lampwright.drawing.Plan;
import lampwright.drawing.PlanTable;
import lampwright.drawing.StopRuler;
import lampwright.drawing.Svg;
import lampwright.engine.unit.Stops;
import lampwright.setup.Cautions;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.adapting.Adaptation;
import lampwright.setup.adapting.Answer;
import lampwright.setup.figures.LightFigures;

/** Puts a setup recomputed for a kit beside the original. */
final class AdaptedView {

  private static final double VISIBLE_STOPS = 1.0 / 3 - 1e-9;

  private final SetupDocument setup;
  private final Answer answer;
  private final List<Adaptation> adaptations;
  private final Map<LightId, Integer> numbers;

  AdaptedView(SetupDocument setup, Answer answer) {
    this.setup = setup;
    this.answer = answer;
    this.adaptations =
        switch (answer) {
          case Answer.Adapted adapted -> adapted.adaptations();
          case Answer.NotEnoughGear falls -> falls.nearest();
        };
    this.numbers = SetupView.numbers(setup);
  }

  /**
   * The page.
   *
   * @param address of this page, with its kit, without the number of the way
   * @param way which of the adaptations is shown, from 0; the last where there are fewer
   */
  AdaptedPage page(
      Layout layout, String setupPath, String kitName, Address address, int way, KitForm kits) {
    boolean enough = answer instanceof Answer.Adapted;
    if (adaptations.isEmpty()) {
      return new AdaptedPage(
          layout,
          setup.title(),
          setupPath,
          kitName,
          "This kit cannot make the setup.",
          enough,
          List.of(),
          List.of(),
          Optional.empty(),
          List.of(),
          List.of(),
          List.of(),
          shortfalls(Optional.empty()),
          List.of(),
          kits);
    }
    int shown = Math.clamp(way, 0, adaptations.size() - 1);
    Adaptation adaptation = adaptations.get(shown);
    return new AdaptedPage(
        layout,
        setup.title(),
        setupPath,
        kitName,
        verdict(adaptation),
        enough,
        SetupFigures.strip(adaptation.document().exposure(), adaptation.figures()),
        alternatives(address, shown),
        Optional.of(plan(adaptation)),
        lights(adaptation),
        AdaptedCamera.settings(setup, adaptation),
        adaptation.losses(),
        shortfalls(Optional.of(adaptation)),
        Cautions.of(adaptation.document()),
        kits);
  }

  private static PlanView plan(Adaptation adaptation) {
    return PlanView.of(
        Plan.of(adaptation.document(), adaptation.figures()),
        PlanTable.of(adaptation.document(), adaptation.figures()));
  }

  private String verdict(Adaptation adaptation) {
    if (answer instanceof Answer.NotEnoughGear falls) {
      return String.join(" ", falls.reasons()) + " The nearest thing is below.";
    }
    long off = adaptation.lights().stream().filter(AdaptedView::isOff).count();
    int lights = adaptation.lights().size();
    String all =
        lights == 1 ? "The light reaches its level" : "All " + lights + " lights reach their level";
    String inShort =
        off == 0
            ? all + " within a third of a stop."
            : off
                + " of "
                + lights
                + (off == 1 ? " lights is" : " lights are")
                + " off by a third of a stop or more.";
    return inShort
        + adaptation
            .ambientChange()
            .filter(change -> Math.abs(change.value()) >= VISIBLE_STOPS)
            .map(AdaptedView::ambientInShort)
            .orElse("");
  }

  private static String ambientInShort(Stops change) {
    return " The ambient is %s %s."
        .formatted(
            Wording.stops(Math.abs(change.value())), change.value() > 0 ? "brighter" : "darker");
  }

  private static boolean isOff(lampwright.setup.adapting.AdaptedLight light) {
    return light
        .made()
        .filter(made -> Math.abs(made.deviation().value()) < VISIBLE_STOPS)
        .isEmpty();
  }

  private List<AdaptedPage.Alternative> alternatives(Address address, int shown) {
    List<AdaptedPage.Alternative> ways = new ArrayList<>();
    for (int i = 0; i < adaptations.size(); i++) {
      Adaptation one = adaptations.get(i);
      String summary =
          one.settings().aperture()
              + ", "
              + one.settings().time()
              + ", "
              + one.settings().iso()
              + one.neutralDensity().map(filter -> ", " + filter).orElse("")
              + one.losses().stream()
                  .findFirst()
                  .map(loss -> ". " + loss)
                  .orElse(". Nothing lost.");
      ways.add(
          new AdaptedPage.Alternative(
              String.valueOf((char) ('A' + i)),
              summary,
              address.with("way", Integer.toString(i + 1)).toString(),
              i == shown));
    }
    return ways;
  }

  private List<AdaptedLight> lights(Adaptation adaptation) {
    return setup.lightsInBuildOrder().stream().map(light -> light(adaptation, light)).toList();
  }

  private AdaptedLight light(Adaptation adaptation, Light light) {
    lampwright.setup.adapting.AdaptedLight adapted =
        adaptation.lights().stream()
            .filter(one -> one.original().light().id().equals(light.id()))
            .findFirst()
            .orElseThrow();
    LightFigures was = adapted.original();
    String role = Wording.role(light.role());
    return new AdaptedLight(
        numbers.getOrDefault(light.id(), 0),
        role,
        was(was),
        adapted.made().map(made -> now(light, made)).orElse(GIVEN_UP),
        ruler(role, was, adapted.made()),
        adapted
            .made()
            .map(made -> Deviation.ofTenths(made.deviation().value()))
            .orElse(new Deviation("–", "given up", true)),
        notes(was, adapted.made()));
  }

  private static final AdaptedLight.Means GIVEN_UP =
      new AdaptedLight.Means("no head left", "–", "–", Known.COMPUTED);

  private static AdaptedLight.Means was(LightFigures was) {
    Light light = was.light();
    return new AdaptedLight.Means(
        Wording.gear(light.heads(), light.head(), light.modifier(), light.gels()),
        Wording.power(light.head(), light.stopsDown()),
        was.level().map(level -> level.reading().tenthsText()).orElse("–"),
        was.level().map(level -> Wording.known(level.known())).orElse(Known.ESTIMATED));
  }

  /** The setup's gels stay on: its levels are reckoned through them. */
  private static AdaptedLight.Means now(
      Light light, lampwright.setup.adapting.AdaptedLight.Made made) {
    return new AdaptedLight.Means(
        Wording.gear(1, made.head(), Optional.of(made.modifier()), light.gels()),
        made.powerShown(),
        made.level().reading().tenthsText(),
        Known.COMPUTED);
  }

  private static Svg ruler(
      String role, LightFigures was, Optional<lampwright.setup.adapting.AdaptedLight.Made> made) {
    StopRuler ruler = StopRuler.of(role);
    if (was.level().isPresent()) {
      ruler = ruler.withDot(was.level().get().fromShooting().value());
    }
    if (made.isPresent()) {
      ruler =
          ruler
              .withBar(made.get().level().fromShooting().value())
              .withBand(made.get().level().uncertainty().value());
    }
    return ruler.svg();
  }

  private static String notes(
      LightFigures was, Optional<lampwright.setup.adapting.AdaptedLight.Made> made) {
    if (made.isEmpty()) {
      return "";
    }
    List<String> notes = new ArrayList<>();
    double before = was.angularSize().value();
    double after = made.get().angularSize().value();
    if (Math.abs(before - after) >= 2) {
      notes.add(
          String.format(
              Locale.ROOT,
              "%s: it looks %.0f° wide from the target instead of %.0f°.",
              after > before ? "Softer" : "Harder",
              after,
              before));
    }
    notes.addAll(made.get().missing());
    made.get().recycle().ifPresent(recycle -> notes.add(Wording.readyAgain(recycle)));
    made.get()
        .flashesPerCharge()
        .ifPresent(n -> notes.add(String.format(Locale.ROOT, "About %.0f frames a charge.", n)));
    return String.join(" ", notes);
  }

  private List<Shortfall> shortfalls(Optional<Adaptation> adaptation) {
    List<Shortfall> shortfalls = new ArrayList<>();
    adaptation.ifPresent(
        one ->
            one.lights().stream()
                .filter(light -> light.made().isPresent())
                .filter(AdaptedView::isOff)
                .forEach(light -> shortfalls.add(shortfall(light))));
    if (answer instanceof Answer.NotEnoughGear falls) {
      for (LightId id : falls.unlit()) {
        shortfalls.add(new Shortfall(name(id), "no head left", falls.remedies()));
      }
      if (adaptation.isEmpty()) {
        falls.reasons().forEach(reason -> shortfalls.add(new Shortfall(reason, "", List.of())));
      }
    }
    return shortfalls;
  }

  private Shortfall shortfall(lampwright.setup.adapting.AdaptedLight light) {
    lampwright.setup.adapting.AdaptedLight.Made made = light.made().orElseThrow();
    Stops by = made.deviation();
    return new Shortfall(
        name(light.original().light().id()),
        Wording.stops(Math.abs(by.value())) + (by.value() < 0 ? " under" : " over"),
        made.remedies());
  }

  private String name(LightId id) {
    Light light =
        setup.lights().stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
    return numbers.getOrDefault(id, 0) + " " + Wording.role(light.role());
  }
}
