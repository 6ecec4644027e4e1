package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.drawing.DrawingTable;
import lampwright.drawing.Overlay;
import lampwright.people.StudioId;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.setup.Standing;
import lampwright.setup.comparing.About;
import lampwright.setup.comparing.Change;
import lampwright.tasks.Caller;
import lampwright.tasks.Catalogued;
import lampwright.tasks.Cataloguing;
import lampwright.tasks.Comparing;
import lampwright.tasks.Histories;
import lampwright.tasks.Leave;
import lampwright.tasks.Message;
import lampwright.tasks.Opening;
import lampwright.tasks.Past;
import lampwright.tasks.Refused;
import lampwright.tasks.Stating;
import lampwright.web.http.Body;
import lampwright.web.http.Door;
import lampwright.web.http.FormFields;
import lampwright.wording.Wording;

/** A setup's history, two of its revisions compared, and the buttons for where it stands. */
public final class LifePages {

  private static final int LINES_A_PAGE = 50;
  private static final String REVISIONS = "/revisions";
  private static final String CURSOR = "cursor";

  private final Door door;
  private final Tasks tasks;
  private final Templates templates;
  private final StudioLayouts layouts;

  /** What these pages ask for. */
  public record Tasks(Histories histories, Stating stating, Comparing comparing) {}

  public LifePages(Door door, Tasks tasks, Templates templates, StudioLayouts layouts) {
    this.door = door;
    this.tasks = tasks;
    this.templates = templates;
    this.layouts = layouts;
  }

  /** What the setup's own page shows of it. */
  LifePart part(Context context, StudioId studio, Opening.Opened opened) {
    Catalogued setup = opened.setup();
    String path = SetupPages.setupPath(studio, setup.id());
    Wording words = layouts.words(context);
    return new LifePart(
        named(setup.standing(), words),
        meaning(setup.standing(), words),
        lines(opened.history(), setup.revision(), words),
        path + REVISIONS,
        opened.isAuditOpen() ? AuditPages.path(studio, setup.id()) : "",
        opened.used().mayRecord()
            ? Optional.of(
                new LifePart.StandingForm(
                    path + "/state",
                    door.csrfToken(context),
                    setup.revision(),
                    setup.standing().state() == Standing.State.PROVEN,
                    setup.standing().archived()))
            : Optional.empty());
  }

  static String named(Standing standing, Wording words) {
    String state = words.say("pages.life.state." + standing.state().word());
    return standing.archived() ? words.say("pages.life.archived", state) : state;
  }

  private static String meaning(Standing standing, Wording words) {
    if (standing.archived()) {
      return words.say("pages.life.archivedMeaning");
    }
    return switch (standing.state()) {
      case DRAFT -> words.say("pages.life.draftMeaning");
      case PROVEN -> words.say("pages.life.provenMeaning");
    };
  }

  /** Shows every revision: {@code /studios/{studio}/setups/{setup}/revisions}. */
  public void history(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    SetupId id = Cataloguing.id(context.pathParam("setup"));
    Caller caller = door.caller(context);
    Histories.Page page =
        tasks.histories().list(caller, studio, id, number(context, CURSOR), LINES_A_PAGE);
    String title = page.items().isEmpty() ? "" : page.items().getFirst().title();
    String path = SetupPages.setupPath(studio, id);
    templates.show(
        context,
        "history",
        new HistoryPage(
            layouts.of(context, studio, layouts.words(context).say("pages.history.of", title)),
            title,
            page.isDeleted() ? "" : path,
            path + "/changes",
            page.current(),
            lines(page.items(), page.current(), layouts.words(context)),
            page.next()
                .map(n -> Address.of(path + REVISIONS).with(CURSOR, String.valueOf(n)).toString()),
            page.mayRestore()
                ? Optional.of(
                    new HistoryPage.Restoring(path + "/restorations", door.csrfToken(context)))
                : Optional.empty()));
  }

  /** What cannot be read as a revision's number is as if it were not there. */
  private static Optional<Integer> number(Context context, String name) {
    return Optional.ofNullable(context.queryParam(name))
        .filter(text -> text.matches("[1-9]\\d{0,8}"))
        .map(Integer::valueOf);
  }

  /**
   * @param current the setup's revision now
   */
  private static List<PastLine> lines(List<Past> items, int current, Wording words) {
    List<PastLine> lines = new ArrayList<>();
    for (Past past : items) {
      boolean isNow = past.revision() == current && !past.deleted();
      lines.add(
          new PastLine(
              past.revision(),
              what(past, words),
              new DayWords(words)
                  .dayAndTime(
                      past.changedAt().atZone(ZoneOffset.UTC).toLocalDate(),
                      past.changedAt().atZone(ZoneOffset.UTC).toLocalTime()),
              new WhoWords(words).who(past.changedBy()),
              past.message(),
              !isNow));
    }
    return lines;
  }

  private static String what(Past past, Wording words) {
    if (past.deleted()) {
      return words.say("pages.life.away");
    }
    String standing = named(past.standing(), words);
    return past.restoredFrom()
        .map(from -> words.say("pages.life.back", standing, from))
        .or(() -> past.planned().map(plan -> words.say("pages.life.usedOf", standing, plan)))
        .orElse(standing);
  }

  /** Compares two revisions: {@code …/changes?from=1&to=3}. */
  public void changes(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    SetupId id = Cataloguing.id(context.pathParam("setup"));
    int from = number(context, HistoryPage.FROM).orElseThrow(Refused::notFound);
    Comparing.Compared compared =
        tasks
            .comparing()
            .revisions(door.caller(context), studio, id, from, number(context, HistoryPage.TO));
    String title = compared.to().document().title();
    Wording words = layouts.words(context);
    templates.show(
        context,
        "changes",
        new ChangesPage(
            layouts.of(context, studio, words.say("pages.changes.of", title)),
            title,
            SetupPages.setupPath(studio, id) + REVISIONS,
            words.say(
                "pages.changes.between", compared.from().revision(), compared.to().revision()),
            groups(compared.changes(), words),
            overlay(compared, words)));
  }

  /** Where things stood and stand, if any of them moved. */
  private static Optional<DrawingView> overlay(Comparing.Compared compared, Wording words) {
    SetupDocument before = compared.from().document();
    SetupDocument after = compared.to().document();
    DrawingTable table = Overlay.table(before, after, words.notation());
    return compared.changes().isEmpty() || table.rows().isEmpty()
        ? Optional.empty()
        : Optional.of(
            new DrawingView(
                Overlay.of(before, after, words.notation()),
                words.say("studio.drawing.overlay"),
                table));
  }

  static List<ChangesPage.Group> groups(List<Change> changes, Wording words) {
    Map<String, List<String>> groups = new LinkedHashMap<>();
    for (String name : List.of("lights", "camera", "subject", "words")) {
      groups.put(name, new ArrayList<>());
    }
    for (Change change : changes) {
      groups
          .computeIfAbsent(group(change.about().kind()), _ -> new ArrayList<>())
          .add(words.say(change.sentence()));
    }
    return groups.entrySet().stream()
        .filter(group -> !group.getValue().isEmpty())
        .map(
            group ->
                new ChangesPage.Group(
                    words.say("pages.changes." + group.getKey()), group.getValue()))
        .toList();
  }

  private static String group(About.Kind kind) {
    return switch (kind) {
      case LIGHT, LIGHTS, BUILD_ORDER -> "lights";
      case CAMERA, EXPOSURE, PLAN -> "camera";
      case AMBIENT, SUBJECT, SURFACE, OCCASION -> "subject";
      case TEXT -> "words";
    };
  }

  /** Says where the setup stands: a form to {@code …/state}. */
  public void stand(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    SetupId id = Cataloguing.id(context.pathParam("setup"));
    FormFields sent = Body.form(context);
    String state = sent.get(LifePart.StandingForm.STATE);
    Standing standing =
        switch (state) {
          case "draft", "proven" ->
              new Standing(
                  Standing.State.of(state),
                  sent.get(LifePart.StandingForm.ARCHIVED).equals("true"));
          default -> throw Refused.invalid("/state", "State must be draft or proven.");
        };
    tasks
        .stating()
        .stand(
            door.caller(context),
            studio,
            id,
            revision(sent, LifePart.StandingForm.REVISION),
            standing,
            Message.none());
    context.redirect(SetupPages.setupPath(studio, id) + "#history", HttpStatus.SEE_OTHER);
  }

  /** Brings a revision back: a form to {@code …/restorations}. */
  public void restore(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    SetupId id = Cataloguing.id(context.pathParam("setup"));
    FormFields sent = Body.form(context);
    tasks
        .histories()
        .restore(
            door.caller(context),
            studio,
            id,
            Optional.of(revision(sent, HistoryPage.Restoring.BASED_ON)),
            revision(sent, HistoryPage.Restoring.REVISION),
            Message.none());
    context.redirect(SetupPages.setupPath(studio, id), HttpStatus.SEE_OTHER);
  }

  /** Where the form does not say, none that there is. */
  private static int revision(FormFields sent, String name) {
    String written = sent.get(name);
    return written.matches("[1-9]\\d{0,8}") ? Integer.parseInt(written) : 0;
  }
}
