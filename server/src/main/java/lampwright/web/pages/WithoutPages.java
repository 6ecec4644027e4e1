package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lampwright.document.Problem;
import lampwright.people.StudioId;
import lampwright.setup.Burning;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FiguresComputation;
import lampwright.setup.without.LightByLight;
import lampwright.tasks.Catalogued;
import lampwright.tasks.Cataloguing;
import lampwright.tasks.Leave;
import lampwright.tasks.Refused;
import lampwright.web.http.Door;

/** The lights of a setup turned off one by one, or put on one after another. */
public final class WithoutPages {

  private final Door door;
  private final Cataloguing cataloguing;
  private final DrawnSetups drawings;
  private final Templates templates;
  private final StudioLayouts layouts;

  public WithoutPages(
      Door door,
      Cataloguing cataloguing,
      DrawnSetups drawings,
      Templates templates,
      StudioLayouts layouts) {
    this.door = door;
    this.cataloguing = cataloguing;
    this.drawings = drawings;
    this.templates = templates;
    this.layouts = layouts;
  }

  static String path(StudioId studio, SetupId setup) {
    return SetupPages.setupPath(studio, setup) + "/lights";
  }

  /** The address at which something burns. */
  static String path(String page, Burning burning, SetupDocument setup) {
    Address address = Address.of(page);
    for (Light light : setup.lightsInBuildOrder()) {
      if (!burning.burns(light.id())) {
        address = address.with(WithoutPage.OFF, light.id().text());
      }
    }
    return (burning.ambient() ? address : address.with(WithoutPage.AMBIENT, WithoutPage.OFF))
        .toString();
  }

  /** The address of a stage, counted from 1. */
  static String stagePath(String page, int stage) {
    return Address.of(page).with(WithoutPage.STAGE, Integer.toString(stage)).toString();
  }

  /**
   * Shows {@code …/lights?off=ID&off=ID&ambient=off}, {@code …/lights?stage=2}, or leads a form's
   * {@code …/lights?form=sent&on=ID} to the first of these.
   */
  public void show(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    SetupId id = Cataloguing.id(context.pathParam("setup"));
    Catalogued setup = cataloguing.get(door.caller(context), studio, id);
    SetupDocument document = setup.document();
    if (context.queryParam(WithoutPage.FORM) != null) {
      context.redirect(
          path(path(studio, id), sent(context, document), document), HttpStatus.SEE_OTHER);
      return;
    }
    Figures figures = FiguresComputation.of(document);
    LightByLight lights = LightByLight.of(document, figures);
    Optional<Integer> stage = stage(context, lights.stages().size());
    Burning burning =
        stage
            .map(at -> lights.stages().get(at - 1).after())
            .orElseGet(() -> burning(context, document));
    Layout layout = layouts.named(context, studio, "without.of", document.title());
    templates.show(
        context,
        "without",
        new WithoutView(lights, figures, layout.words())
            .page(
                layout,
                new WithoutView.Asked(
                    SetupPages.setupPath(studio, id), path(studio, id), burning, stage),
                drawings.burning(document, figures, burning, layout.notation())));
  }

  private static Burning sent(Context context, SetupDocument setup) {
    Set<LightId> on = lights(context, WithoutPage.ON, setup);
    Burning burning = Burning.noLightOf(setup);
    for (LightId light : on) {
      burning = burning.with(light);
    }
    boolean without =
        setup.ambient().isPresent() && context.queryParam(WithoutPage.AMBIENT) == null;
    return without ? burning.withoutAmbient() : burning;
  }

  private static Burning burning(Context context, SetupDocument setup) {
    Optional<String> ambient = Optional.ofNullable(context.queryParam(WithoutPage.AMBIENT));
    if (ambient.isPresent() && !ambient.get().equals(WithoutPage.OFF)) {
      throw Refused.invalid(
          List.of(
              new Problem(
                  "/ambient",
                  "Ambient ("
                      + ambient.get()
                      + ") must be \"off\". Leave it out where it burns.")));
    }
    return new Burning(lights(context, WithoutPage.OFF, setup), ambient.isEmpty());
  }

  private static Set<LightId> lights(Context context, String name, SetupDocument setup) {
    Set<LightId> named = new HashSet<>();
    for (String text : context.queryParams(name)) {
      named.add(
          setup.lights().stream()
              .map(Light::id)
              .filter(light -> light.text().equals(text))
              .findFirst()
              .orElseThrow(() -> unknown(name, text, setup)));
    }
    return named;
  }

  private static Refused unknown(String name, String text, SetupDocument setup) {
    String there =
        setup.lightsInBuildOrder().stream()
            .map(light -> light.id().text())
            .collect(Collectors.joining(", "));
    return Refused.invalid(
        List.of(new Problem("/" + name, "Light (" + text + ") must be one of " + there + ".")));
  }

  private static Optional<Integer> stage(Context context, int stages) {
    Optional<String> written = Optional.ofNullable(context.queryParam(WithoutPage.STAGE));
    if (written.isEmpty()) {
      return Optional.empty();
    }
    int stage = written.get().matches("[1-9]\\d{0,3}") ? Integer.parseInt(written.get()) : 0;
    if (stage < 1 || stage > stages) {
      throw Refused.invalid(
          List.of(
              new Problem(
                  "/stage",
                  "Stage (" + written.get() + ") must be from 1 to " + stages + ". Maybe 1?")));
    }
    return Optional.of(stage);
  }
}
