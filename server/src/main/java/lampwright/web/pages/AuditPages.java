package lampwright.web.pages;

import io.javalin.http.Context;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lampwright.people.AuditKind;
import lampwright.people.Ids;
import lampwright.people.PersonId;
import lampwright.people.StudioId;
import lampwright.setup.SetupId;
import lampwright.tasks.Audited;
import lampwright.tasks.Auditing;
import lampwright.tasks.Caller;
import lampwright.tasks.Leave;
import lampwright.tasks.Listed;
import lampwright.tasks.MemberKeeping;
import lampwright.tasks.Refused;
import lampwright.web.http.Door;

/** The page on which owners read who did what: {@code /studios/{studio}/audit}. */
public final class AuditPages {

  private static final int LINES = 50;
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  /** What is never told in a studio's own trail is not asked for there. */
  private static final List<AuditKind> KINDS =
      List.of(
          AuditKind.SETUP,
          AuditKind.TAKE,
          AuditKind.NOTE,
          AuditKind.PICTURE,
          AuditKind.PROPOSAL,
          AuditKind.KIT,
          AuditKind.GEAR,
          AuditKind.LOCATION,
          AuditKind.TRAIL,
          AuditKind.BUILD,
          AuditKind.SHARE_LINK,
          AuditKind.MEMBER,
          AuditKind.INVITATION,
          AuditKind.RESET_LINK,
          AuditKind.STUDIO,
          AuditKind.ARCHIVE);

  private final Door door;
  private final Auditing auditing;
  private final MemberKeeping members;
  private final Templates templates;
  private final StudioLayouts layouts;

  public AuditPages(
      Door door,
      Auditing auditing,
      MemberKeeping members,
      Templates templates,
      StudioLayouts layouts) {
    this.door = door;
    this.auditing = auditing;
    this.members = members;
    this.templates = templates;
    this.layouts = layouts;
  }

  /** Where all stands that was done to one setup. */
  static String path(StudioId studio, SetupId setup) {
    return Address.of(path(studio)).with(AuditPage.SETUP, setup.text()).text();
  }

  static String path(StudioId studio) {
    return "/studios/" + studio.text() + "/audit";
  }

  /** What is asked in the address. */
  private record Asked(
      Optional<PersonId> person,
      Optional<AuditKind> kind,
      Optional<SetupId> setup,
      Optional<LocalDate> from,
      Optional<LocalDate> until) {

    static Asked of(Context context) {
      return new Asked(
          find(context, AuditPage.PERSON).filter(Ids::isId).map(PersonId::new),
          find(context, AuditPage.KIND).flatMap(AuditKind::find),
          find(context, AuditPage.SETUP).filter(Ids::isId).map(SetupId::new),
          day(context, AuditPage.FROM),
          day(context, AuditPage.UNTIL));
    }

    boolean isAnything() {
      return !address("").text().isEmpty();
    }

    Auditing.Wish wish() {
      return new Auditing.Wish(
          person,
          kind,
          Optional.empty(),
          setup.map(SetupId::text),
          from.map(day -> day.atStartOfDay(ZoneOffset.UTC).toInstant()),
          until.map(day -> day.plusDays(1).atStartOfDay(ZoneOffset.UTC).toInstant()));
    }

    Address address(String path) {
      Address address = Address.of(path);
      address = with(address, AuditPage.PERSON, person.map(PersonId::text));
      address = with(address, AuditPage.KIND, kind.map(AuditKind::word));
      address = with(address, AuditPage.SETUP, setup.map(SetupId::text));
      address = with(address, AuditPage.FROM, from.map(LocalDate::toString));
      return with(address, AuditPage.UNTIL, until.map(LocalDate::toString));
    }

    private static Address with(Address address, String name, Optional<String> value) {
      return value.map(text -> address.with(name, text)).orElse(address);
    }
  }

  private static Optional<String> find(Context context, String name) {
    return Optional.ofNullable(context.queryParam(name)).filter(value -> !value.isBlank());
  }

  private static Optional<LocalDate> day(Context context, String name) {
    return find(context, name)
        .map(
            written ->
                Optional.of(written)
                    .filter(text -> text.matches("\\d{4}-\\d{2}-\\d{2}"))
                    .flatMap(AuditPages::day)
                    .orElseThrow(
                        () ->
                            Refused.invalid(
                                "/" + name,
                                "The day must be a date such as 2031-05-04; leave it out for"
                                    + " any.")));
  }

  private static Optional<LocalDate> day(String text) {
    try {
      return Optional.of(LocalDate.parse(text));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  /** Shows it. */
  public void show(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    Caller caller = door.caller(context);
    Asked asked = Asked.of(context);
    Listed<Audited> found =
        auditing.list(
            caller, studio, asked.wish(), new Listed.Wish(find(context, "cursor"), LINES));
    Layout layout = layouts.named(context, studio, "auditing.heading");
    AuditSentences sentences = new AuditSentences(layout.words(), asked.setup().isPresent());
    templates.show(
        context,
        "audit",
        new AuditPage(
            layout,
            path(studio),
            people(members.list(caller, studio), asked, layout),
            kinds(asked, layout, sentences),
            asked.setup().map(setup -> oneSetup(studio, setup, found.items(), sentences)),
            asked.from().map(LocalDate::toString).orElse(""),
            asked.until().map(LocalDate::toString).orElse(""),
            asked.isAnything(),
            days(found.items(), sentences),
            found
                .next()
                .map(next -> asked.address(path(studio)).with("cursor", next).text())
                .orElse("")));
  }

  private static AuditPage.OneSetup oneSetup(
      StudioId studio, SetupId setup, List<Audited> lines, AuditSentences sentences) {
    return new AuditPage.OneSetup(
        setup.text(),
        lines.stream()
            .map(Audited::subjectName)
            .filter(title -> !title.isEmpty())
            .findFirst()
            .map(title -> sentences.words().say("auditing.oneSetup", title))
            .orElseGet(() -> sentences.words().say("auditing.oneSetup.untitled")),
        SetupPages.setupPath(studio, setup));
  }

  private static List<AuditPage.Choice> people(
      List<MemberKeeping.Known> members, Asked asked, Layout layout) {
    List<AuditPage.Choice> choices = new ArrayList<>();
    choices.add(
        new AuditPage.Choice(
            "", layout.words().say("auditing.everybody"), asked.person().isEmpty()));
    members.forEach(
        known ->
            choices.add(
                new AuditPage.Choice(
                    known.member().person().id().text(),
                    known.member().person().name(),
                    asked.person().filter(known.member().person().id()::equals).isPresent())));
    return choices;
  }

  private static List<AuditPage.Choice> kinds(
      Asked asked, Layout layout, AuditSentences sentences) {
    List<AuditPage.Choice> choices = new ArrayList<>();
    choices.add(
        new AuditPage.Choice(
            "", layout.words().say("auditing.everything"), asked.kind().isEmpty()));
    KINDS.forEach(
        kind ->
            choices.add(
                new AuditPage.Choice(
                    kind.word(),
                    sentences.kind(kind),
                    asked.kind().filter(kind::equals).isPresent())));
    return choices;
  }

  private static List<AuditPage.Day> days(List<Audited> lines, AuditSentences sentences) {
    Map<LocalDate, List<AuditPage.Line>> byDay = new LinkedHashMap<>();
    for (Audited line : lines) {
      byDay
          .computeIfAbsent(LocalDate.ofInstant(line.at(), ZoneOffset.UTC), _ -> new ArrayList<>())
          .add(
              new AuditPage.Line(
                  CLOCK.format(line.at().atOffset(ZoneOffset.UTC)),
                  moment(line.at()),
                  sentences.say(line),
                  sentences.more(line)));
    }
    DayWords days = new DayWords(sentences.words());
    return byDay.entrySet().stream()
        .map(day -> new AuditPage.Day(days.day(day.getKey()), day.getValue()))
        .toList();
  }

  private static String moment(Instant at) {
    return at.truncatedTo(ChronoUnit.SECONDS).toString();
  }
}
