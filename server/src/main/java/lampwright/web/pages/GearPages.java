package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.gear.stock.GearId;
import lampwright.gear.stock.GearKind;
import lampwright.language.Notation;
import lampwright.people.Permission;
import lampwright.people.StudioId;
import lampwright.tasks.Caller;
import lampwright.tasks.GearCalibrating;
import lampwright.tasks.GearKeeping;
import lampwright.tasks.KeptGear;
import lampwright.tasks.Leave;
import lampwright.tasks.Studios;
import lampwright.web.http.Body;
import lampwright.web.http.Door;

/** The pages of a studio's gear: all of it by kind, and one piece with what was metered of it. */
public final class GearPages {

  private final Door door;
  private final Tasks tasks;
  private final Templates templates;
  private final StudioLayouts layouts;

  /** What these pages ask. */
  public record Tasks(Studios studios, GearKeeping gear, GearCalibrating calibrating) {}

  public GearPages(Door door, Tasks tasks, Templates templates, StudioLayouts layouts) {
    this.door = door;
    this.tasks = tasks;
    this.templates = templates;
    this.layouts = layouts;
  }

  static String path(StudioId studio) {
    return "/studios/" + studio.text() + "/gear";
  }

  /** Shows all of it: {@code /studios/{studio}/gear}. */
  public void list(Context context) {
    StudioId studio = studio(context);
    Layout layout = layouts.named(context, studio, "studio.gear.heading");
    Notation notation = layout.notation();
    Map<GearKind, List<GearListPage.Row>> shelves = new LinkedHashMap<>();
    for (KeptGear gear : tasks.gear().listAll(door.caller(context), studio, Optional.empty())) {
      shelves
          .computeIfAbsent(gear.document().kind(), _ -> new ArrayList<>())
          .add(new GearView(notation, gear).row(path(studio) + "/" + gear.id().text()));
    }
    templates.show(
        context,
        "gear",
        new GearListPage(
            layout,
            shelves.entrySet().stream()
                .map(
                    shelf ->
                        new GearListPage.Shelf(
                            KitView.heading(notation, shelf.getKey()), shelf.getValue()))
                .toList(),
            KitPages.path(studio),
            mayWrite(context, studio) ? ways(notation, studio) : List.of()));
  }

  private static List<Link> ways(Notation notation, StudioId studio) {
    return Arrays.stream(GearKind.values())
        .map(
            kind ->
                new Link(
                    notation.say("studio.gear.kind." + kind.word()),
                    GearEditPages.newPath(studio, kind)))
        .toList();
  }

  /** Shows one: {@code /studios/{studio}/gear/{gear}}. */
  public void show(Context context) {
    StudioId studio = studio(context);
    Caller caller = door.caller(context);
    GearId id = GearKeeping.id(context.pathParam("gear"));
    KeptGear gear = tasks.gear().get(caller, studio, id);
    Layout layout = layouts.of(context, studio, gear.document().name());
    GearView view = new GearView(layout.notation(), gear);
    templates.show(
        context,
        "gearPiece",
        new GearPage(
            layout,
            KitView.heading(layout.notation(), gear.document().kind()),
            gear.document().name(),
            view.count(),
            new PieceWords(layout.notation()).facts(gear.document().piece()),
            calibrated(context, studio, gear, view),
            view.condition(),
            tasks.gear().kits(caller, studio, id).stream()
                .map(kit -> new Link(kit.name(), KitPages.path(studio) + "/" + kit.id().text()))
                .toList(),
            layout
                .notation()
                .say(
                    "studio.gear.revision",
                    gear.revision(),
                    new WhoWords(layout.words()).by(gear.changedBy()),
                    new DayWords(layout.words()).day(gear.changedAt())),
            path(studio),
            mayWrite(context, studio) ? GearEditPages.changePath(studio, id) : ""));
  }

  private Optional<GearPage.Calibrated> calibrated(
      Context context, StudioId studio, KeptGear gear, GearView view) {
    return switch (gear.document().kind()) {
      case HEAD, MODIFIER ->
          Optional.of(
              gear.document().readings().isEmpty()
                  ? GearView.withoutReadings()
                  : view.calibrated(
                      tasks.calibrating().calibrate(door.caller(context), studio, gear.id()),
                      new GearPage.Adopt(
                          mayWrite(context, studio)
                              ? path(studio) + "/" + gear.id().text() + "/calibration"
                              : "",
                          door.csrfToken(context),
                          gear.revision())));
      case PACK, BODY, LENS, GEL, NEUTRAL_DENSITY, STAND -> Optional.empty();
    };
  }

  /** Makes what the readings say the gear's next revision. */
  public void adopt(Context context) {
    StudioId studio = studio(context);
    GearId id = GearKeeping.id(context.pathParam("gear"));
    int revision = KitFields.revision(Body.form(context));
    tasks.calibrating().adopt(door.caller(context), studio, id, revision);
    context.redirect(path(studio) + "/" + id.text(), HttpStatus.SEE_OTHER);
  }

  private boolean mayWrite(Context context, StudioId studio) {
    return tasks.studios().role(door.caller(context), studio).may(Permission.WRITE_KITS);
  }

  private static StudioId studio(Context context) {
    return Leave.studio(context.pathParam("studio"));
  }
}
