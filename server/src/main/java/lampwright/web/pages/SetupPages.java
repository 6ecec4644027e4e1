package lampwright.web.pages;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import lampwright.people.StudioId;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.setup.adapting.Answer;
import lampwright.setup.figures.FiguresComputation;
import lampwright.tasks.Adapting;
import lampwright.tasks.Caller;
import lampwright.tasks.Catalogued;
import lampwright.tasks.Cataloguing;
import lampwright.tasks.KeptKit;
import lampwright.tasks.KitKeeping;
import lampwright.tasks.Leave;
import lampwright.web.http.Door;

/** The page of one setup, and of the same setup recomputed for another kit. */
public final class SetupPages {

  private final Door door;
  private final Cataloguing cataloguing;
  private final KitKeeping kits;
  private final Adapting adapting;
  private final Templates templates;
  private final StudioLayouts layouts;

  public SetupPages(
      Door door,
      Cataloguing cataloguing,
      KitKeeping kits,
      Adapting adapting,
      Templates templates,
      StudioLayouts layouts) {
    this.door = door;
    this.cataloguing = cataloguing;
    this.kits = kits;
    this.adapting = adapting;
    this.templates = templates;
    this.layouts = layouts;
  }

  /** Shows a setup: {@code /studios/{studio}/setups/{setup}}. */
  public void show(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    SetupId id = Cataloguing.id(context.pathParam("setup"));
    Catalogued setup = cataloguing.get(door.caller(context), studio, id);
    templates.show(
        context,
        "setup",
        new SetupView(setup.document(), FiguresComputation.of(setup.document()))
            .page(
                layouts.of(context, studio, setup.document().title()),
                setup,
                kitForm(door.caller(context), studio, id, ""),
                findPath(studio),
                setupPath(studio, id) + "/figures"));
  }

  /** Shows all its figures: {@code /studios/{studio}/setups/{setup}/figures}. */
  public void figures(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    SetupId id = Cataloguing.id(context.pathParam("setup"));
    SetupDocument setup = cataloguing.get(door.caller(context), studio, id).document();
    templates.show(
        context,
        "figures",
        new FiguresView(setup, FiguresComputation.of(setup))
            .page(
                layouts.of(context, studio, "Figures of " + setup.title()), setupPath(studio, id)));
  }

  /** Shows it recomputed: {@code /studios/{studio}/setups/{setup}/adapted?kit=…&way=…}. */
  public void adapted(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    SetupId id = Cataloguing.id(context.pathParam("setup"));
    String kit = Optional.ofNullable(context.queryParam(KitForm.KIT)).orElse("");
    Adapting.Adapted adapted =
        adapting.adapt(door.caller(context), studio, id, kit, Adapting.Wishes.none());
    Answer answer = adapted.answer();
    Address address = Address.of(context.path()).with(KitForm.KIT, kit);
    templates.show(
        context,
        "adapted",
        new AdaptedView(adapted.setup().document(), answer)
            .page(
                layouts.of(context, studio, adapted.setup().document().title()),
                setupPath(studio, id),
                adapted.kit().document().name(),
                address,
                way(context),
                kitForm(door.caller(context), studio, id, kit)));
  }

  /** Ways are numbered from 1 in addresses; anything else is the first. */
  private static int way(Context context) {
    String written = Optional.ofNullable(context.queryParam("way")).orElse("1");
    return written.matches("[1-9]") ? Integer.parseInt(written) - 1 : 0;
  }

  private KitForm kitForm(Caller caller, StudioId studio, SetupId id, String chosen) {
    List<KeptKit> all = kits.list(caller, studio);
    return new KitForm(
        setupPath(studio, id) + "/adapted",
        all.stream()
            .map(
                kit ->
                    new KitForm.Choice(
                        kit.id().text(), kit.document().name(), kit.id().text().equals(chosen)))
            .toList(),
        "");
  }

  static String findPath(StudioId studio) {
    return "/studios/" + studio.text() + "/setups";
  }

  static String setupPath(StudioId studio, SetupId id) {
    return findPath(studio) + "/" + id.text();
  }
}
