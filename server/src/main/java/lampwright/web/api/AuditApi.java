package lampwright.web.api;

import io.javalin.http.Context;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lampwright.document.Forms;
import lampwright.people.AuditKind;
import lampwright.people.Ids;
import lampwright.people.PersonId;
import lampwright.tasks.Audited;
import lampwright.tasks.Auditing;
import lampwright.tasks.Listed;
import lampwright.tasks.Refused;
import lampwright.web.http.Door;

/** Who did what to what in a studio, and when. */
public final class AuditApi {

  private static final String PERSON = "person";
  private static final String KIND = "kind";
  private static final String SUBJECT = "subject";
  private static final String SETUP = "setup";
  private static final String FROM = "from";
  private static final String UNTIL = "until";
  private static final Set<String> KNOWN =
      Set.of(PERSON, KIND, SUBJECT, SETUP, FROM, UNTIL, "cursor", "limit");
  private static final Set<String> OWN = Set.of("cursor", "limit");
  private static final int LONGEST_ID = 64;

  private final Door door;
  private final Auditing auditing;

  public AuditApi(Door door, Auditing auditing) {
    this.door = door;
    this.auditing = auditing;
  }

  private record Who(String id, String name) {}

  private record Subject(String id, String name) {}

  private record One(
      long number,
      Instant at,
      Optional<Who> by,
      String action,
      String kind,
      Subject subject,
      Map<String, Object> detail) {

    static One of(Audited line) {
      return new One(
          line.number(),
          line.at(),
          line.by().map(who -> new Who(who.id().text(), who.name())),
          line.action(),
          line.kind(),
          new Subject(line.subject(), line.subjectName()),
          line.detail());
    }
  }

  private record All(List<One> items, Optional<String> next) {}

  /** Part of the trail, the newest first. */
  public void list(Context context) {
    Query query = new Query(context, KNOWN);
    Optional<String> person = query.text(PERSON, Forms.text(LONGEST_ID));
    Optional<AuditKind> kind = query.text(KIND, Forms.choice(AuditKind.values()));
    Optional<String> subject = query.text(SUBJECT, Forms.text(LONGEST_ID));
    Optional<String> setup = query.text(SETUP, Forms.text(LONGEST_ID));
    Optional<Instant> from = query.text(FROM, Forms.dateTime()).map(OffsetDateTime::toInstant);
    Optional<Instant> until = query.text(UNTIL, Forms.dateTime()).map(OffsetDateTime::toInstant);
    Listed.Wish part = query.page();
    Listed<Audited> page =
        auditing.list(
            door.caller(context),
            SetupApi.studio(context),
            new Auditing.Wish(person.map(AuditApi::person), kind, subject, setup, from, until),
            part);
    Query.linkNext(context, page);
    context.json(new All(page.items().stream().map(One::of).toList(), page.next()));
  }

  private record Own(
      long number,
      Instant at,
      String action,
      String kind,
      Subject subject,
      Map<String, Object> detail) {

    static Own of(Audited line) {
      return new Own(
          line.number(),
          line.at(),
          line.action(),
          line.kind(),
          new Subject(line.subject(), line.subjectName()),
          line.detail());
    }
  }

  private record AllOwn(List<Own> items, Optional<String> next) {}

  /** Part of what happened with one's own account, the newest first. */
  public void listOwn(Context context) {
    Listed.Wish part = new Query(context, OWN).page();
    Listed<Audited> page = auditing.listOwn(door.caller(context), part);
    Query.linkNext(context, page);
    context.json(new AllOwn(page.items().stream().map(Own::of).toList(), page.next()));
  }

  private static PersonId person(String text) {
    if (!Ids.isId(text)) {
      throw Refused.invalid(
          "/person", "Person must be the id of one, as by tells it. Leave it out for everybody.");
    }
    return new PersonId(text);
  }
}
