package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import lampwright.document.Problem;
import lampwright.gear.KitId;
import lampwright.gear.stock.GearId;
import lampwright.gear.stock.GearKind;
import lampwright.gear.stock.GearUse;
import lampwright.gear.stock.WrittenKit;
import lampwright.language.Notation;
import lampwright.people.Permission;
import lampwright.people.StudioId;
import lampwright.search.filter.Filter;
import lampwright.tasks.Caller;
import lampwright.tasks.GearKeeping;
import lampwright.tasks.KeptGear;
import lampwright.tasks.KeptKit;
import lampwright.tasks.KitKeeping;
import lampwright.tasks.Leave;
import lampwright.tasks.Once;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.tasks.Studios;
import lampwright.web.http.Body;
import lampwright.web.http.Door;
import lampwright.web.http.FormFields;

/** The pages of a studio's kits: the list, one, and the forms that make, change and delete one. */
public final class KitPages {

  private final Door door;
  private final Tasks tasks;
  private final Templates templates;
  private final StudioLayouts layouts;

  /** What these pages ask. */
  public record Tasks(Studios studios, KitKeeping kits, GearKeeping gear) {}

  public KitPages(Door door, Tasks tasks, Templates templates, StudioLayouts layouts) {
    this.door = door;
    this.tasks = tasks;
    this.templates = templates;
    this.layouts = layouts;
  }

  static String path(StudioId studio) {
    return "/studios/" + studio.text() + "/kits";
  }

  private static String path(StudioId studio, KitId kit) {
    return path(studio) + "/" + kit.text();
  }

  /** Shows the list: {@code /studios/{studio}/kits}. */
  public void list(Context context) {
    StudioId studio = studio(context);
    Caller caller = door.caller(context);
    List<KeptKit> kits = tasks.kits().list(caller, studio);
    Layout layout = layouts.named(context, studio, "studio.kits.heading");
    templates.show(
        context,
        "kits",
        new KitsPage(
            layout,
            kits.stream().map(kit -> card(layout.notation(), studio, kit)).toList(),
            GearPages.path(studio),
            mayWrite(caller, studio) ? path(studio) + "/new" : ""));
  }

  private static KitsPage.Card card(Notation notation, StudioId studio, KeptKit kit) {
    KitView view = new KitView(notation, kit);
    return new KitsPage.Card(
        kit.document().name(),
        path(studio, kit.id()),
        view.facts(),
        kit.document().note().orElse(""),
        view.missing());
  }

  /** Shows one: {@code /studios/{studio}/kits/{kit}}. */
  public void show(Context context) {
    StudioId studio = studio(context);
    Caller caller = door.caller(context);
    KeptKit kit = tasks.kits().get(caller, studio, id(context));
    Layout layout = layouts.of(context, studio, kit.document().name());
    KitView view = new KitView(layout.notation(), kit);
    Map<GearId, KeptGear> gear =
        tasks.gear().listAll(caller, studio, Optional.empty()).stream()
            .collect(Collectors.toMap(KeptGear::id, Function.identity()));
    Filter.Buildable makes = new Filter.Buildable(kit.document().name(), 0);
    templates.show(
        context,
        "kit",
        new KitPage(
            layout,
            kit.document().name(),
            kit.document().note().orElse(""),
            view.figures(),
            kit.missing().stream().map(missing -> missing.message()).toList(),
            view.shelves(used(kit, gear), GearPages.path(studio)),
            Address.of(SetupPages.findPath(studio))
                .with("q", "[" + makes.bracket() + "]")
                .toString(),
            Address.of(PackPages.path(studio)).with(PackQuery.KIT, kit.id().text()).text(),
            mayWrite(caller, studio) ? path(studio, kit.id()) + "/change" : "",
            path(studio)));
  }

  /** The studio's gear that a kit takes, by kind and name. */
  private static Map<GearKind, Map<String, GearId>> used(KeptKit kit, Map<GearId, KeptGear> gear) {
    Map<GearKind, Map<String, GearId>> used = new HashMap<>();
    for (GearUse use : kit.written().gear()) {
      KeptGear kept = gear.get(use.id());
      if (kept != null) {
        used.computeIfAbsent(kept.document().kind(), _ -> new HashMap<>())
            .put(kept.document().name(), use.id());
      }
    }
    return used;
  }

  /** Shows the form for a new one: {@code /studios/{studio}/kits/new}. */
  public void showNew(Context context) {
    StudioId studio = studio(context);
    form(context, studio, Optional.empty(), field -> "", FormErrors.none());
  }

  /** Shows the form for one that is there: {@code …/kits/{kit}/change}. */
  public void showChange(Context context) {
    StudioId studio = studio(context);
    KeptKit kit = tasks.kits().get(door.caller(context), studio, id(context));
    form(context, studio, Optional.of(kit), KitFields.of(kit.written()), FormErrors.none());
  }

  private void form(
      Context context,
      StudioId studio,
      Optional<KeptKit> of,
      UnaryOperator<String> typed,
      FormErrors errors) {
    Caller caller = door.caller(context);
    if (!mayWrite(caller, studio)) {
      throw Refused.notAllowed("Only authors and owners change kits.");
    }
    String here = of.map(kit -> path(studio, kit.id())).orElse(path(studio));
    Layout layout =
        of.map(
                kit ->
                    layouts.named(context, studio, "studio.kit.form.change", kit.document().name()))
            .orElseGet(() -> layouts.named(context, studio, "studio.kit.form.new"));
    templates.show(
        context,
        "kitForm",
        new KitEditPage(
            layout,
            layout.title(),
            of.isPresent() ? here + "/change" : here + "/new",
            here,
            door.csrfToken(context),
            of.map(KeptKit::revision).orElse(0),
            typed.apply(KitEditPage.NAME),
            typed.apply(KitEditPage.NOTE),
            shelves(
                layout.notation(), tasks.gear().listAll(caller, studio, Optional.empty()), typed),
            of.map(kit -> KitFields.writtenOut(kit.written())).orElse(List.of()),
            of.isPresent() ? here + "/removal" : "",
            errors));
  }

  private static List<KitEditPage.Shelf> shelves(
      Notation notation, List<KeptGear> gear, UnaryOperator<String> typed) {
    Map<GearKind, List<KitEditPage.Choice>> shelves = new LinkedHashMap<>();
    for (KeptGear kept : gear) {
      shelves
          .computeIfAbsent(kept.document().kind(), _ -> new ArrayList<>())
          .add(
              new KitEditPage.Choice(
                  KitFields.field(kept.id()),
                  kept.document().name(),
                  typed.apply(KitFields.field(kept.id())),
                  notation.say("studio.kit.form.has", kept.document().inOrder())));
    }
    return shelves.entrySet().stream()
        .map(
            shelf ->
                new KitEditPage.Shelf(KitView.heading(notation, shelf.getKey()), shelf.getValue()))
        .toList();
  }

  /** Keeps a new one. */
  public void create(Context context) {
    StudioId studio = studio(context);
    FormFields sent = Body.form(context);
    try {
      WrittenKit kit = KitFields.read(sent, Optional.empty());
      KeptKit made = tasks.kits().create(door.caller(context), studio, kit, Once.unkeyed());
      context.redirect(path(studio, made.id()), HttpStatus.SEE_OTHER);
    } catch (Refused refused) {
      again(context, studio, Optional.empty(), sent, refused);
    }
  }

  /** Changes one. */
  public void change(Context context) {
    StudioId studio = studio(context);
    Caller caller = door.caller(context);
    FormFields sent = Body.form(context);
    KeptKit current = tasks.kits().get(caller, studio, id(context));
    try {
      WrittenKit kit = KitFields.read(sent, Optional.of(current.written()));
      tasks
          .kits()
          .replace(caller, studio, current.id(), Optional.of(KitFields.revision(sent)), kit);
      context.redirect(path(studio, current.id()), HttpStatus.SEE_OTHER);
    } catch (Refused refused) {
      again(context, studio, Optional.of(current), sent, refused);
    }
  }

  /** Deletes one. */
  public void remove(Context context) {
    StudioId studio = studio(context);
    int revision = KitFields.revision(Body.form(context));
    tasks.kits().delete(door.caller(context), studio, id(context), Optional.of(revision));
    context.redirect(path(studio), HttpStatus.SEE_OTHER);
  }

  private void again(
      Context context, StudioId studio, Optional<KeptKit> of, FormFields sent, Refused refused) {
    switch (refused.refusal()) {
      case Refusal.Invalid(List<Problem> problems) ->
          again(
              context,
              HttpStatus.UNPROCESSABLE_CONTENT,
              studio,
              of,
              sent,
              KitFields.errors(problems));
      case Refusal.Stale _ ->
          again(
              context,
              HttpStatus.PRECONDITION_FAILED,
              studio,
              of,
              sent,
              error(
                  layouts
                      .named(context, studio, "studio.kits.heading")
                      .notation()
                      .say("studio.kit.form.changed_since")));
      case Refusal.Clash(String what) ->
          again(context, HttpStatus.CONFLICT, studio, of, sent, error(what));
      default -> throw refused;
    }
  }

  private static FormErrors error(String message) {
    return new FormErrors(List.of(new FormErrors.FormError("", message)));
  }

  private void again(
      Context context,
      HttpStatus status,
      StudioId studio,
      Optional<KeptKit> of,
      FormFields sent,
      FormErrors errors) {
    context.status(status);
    form(context, studio, of, sent::get, errors);
  }

  private boolean mayWrite(Caller caller, StudioId studio) {
    return tasks.studios().role(caller, studio).may(Permission.WRITE_KITS);
  }

  private static StudioId studio(Context context) {
    return Leave.studio(context.pathParam("studio"));
  }

  private static KitId id(Context context) {
    return KitKeeping.id(context.pathParam("kit"));
  }
}
