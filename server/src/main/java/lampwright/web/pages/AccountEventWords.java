package lampwright.web.pages;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import lampwright.people.AuditAction;
import lampwright.people.AuditKind;
import lampwright.tasks.Audited;
import lampwright.tasks.Auditing;
import lampwright.wording.Wording;

/** Says what happened with an account, to whose it is. */
record AccountEventWords(Wording words) {

  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  /**
   * Lines that follow on each other and are to be said as one.
   *
   * @param newest the one whose time is shown
   */
  private record Run(Audited newest, int times) {

    boolean goesOnWith(Audited line) {
      return isFailure(newest) && isFailure(line) && day(newest).equals(day(line));
    }
  }

  /** Day by day; guesses that follow on each other are one line, however many they were. */
  List<AuditPage.Day> days(List<Audited> lines) {
    Map<LocalDate, List<AuditPage.Line>> byDay = new LinkedHashMap<>();
    for (Run run : runs(lines)) {
      byDay
          .computeIfAbsent(day(run.newest()), _ -> new ArrayList<>())
          .add(line(run, CLOCK.format(run.newest().at().atOffset(ZoneOffset.UTC))));
    }
    DayWords days = new DayWords(words);
    return byDay.entrySet().stream()
        .map(day -> new AuditPage.Day(days.day(day.getKey()), day.getValue()))
        .toList();
  }

  /** The latest in short, each with its day. */
  List<AuditPage.Line> latest(List<Audited> lines, int most) {
    return runs(lines).stream()
        .limit(most)
        .map(run -> line(run, AccountLinkPages.moment(words, run.newest().at())))
        .toList();
  }

  private AuditPage.Line line(Run run, String at) {
    return new AuditPage.Line(
        at,
        run.newest().at().truncatedTo(ChronoUnit.SECONDS).toString(),
        isFailure(run.newest())
            ? words.count("account.events.failed", run.times())
            : say(run.newest()),
        "");
  }

  private static List<Run> runs(List<Audited> lines) {
    List<Run> runs = new ArrayList<>();
    for (Audited line : lines) {
      if (!runs.isEmpty() && runs.getLast().goesOnWith(line)) {
        Run last = runs.removeLast();
        runs.add(new Run(last.newest(), last.times() + 1));
      } else {
        runs.add(new Run(line, 1));
      }
    }
    return runs;
  }

  private static boolean isFailure(Audited line) {
    return line.action().equals(AuditAction.SIGN_IN_FAILED.word());
  }

  private static LocalDate day(Audited line) {
    return LocalDate.ofInstant(line.at(), ZoneOffset.UTC);
  }

  private String say(Audited line) {
    return switch (AuditAction.find(line.action()).orElse(AuditAction.CHANGED)) {
      case SIGNED_IN ->
          words.say(
              line.detail().containsKey(Auditing.NEW_BROWSER)
                  ? "account.events.newBrowser"
                  : "account.events.signedIn");
      case SIGNED_OUT -> words.say("account.events.signedOut");
      case PASSWORD_CHANGED -> words.say("account.events.password");
      case EMAIL_CHANGED -> words.say("account.events.email");
      case SESSIONS_ENDED -> ended(line);
      case MADE, USED, REVOKED -> ofThing(line);
      default -> unknown(line);
    };
  }

  private String ended(Audited line) {
    return line.detail().get(Auditing.SESSIONS) instanceof Number number
        ? words.count("account.events.ended", number.intValue())
        : unknown(line);
  }

  private String ofThing(Audited line) {
    boolean isOver = line.action().equals(AuditAction.REVOKED.word());
    return switch (AuditKind.find(line.kind()).orElse(AuditKind.ACCOUNT)) {
      case TOKEN ->
          words.say(
              isOver ? "account.events.tokenRevoked" : "account.events.tokenMade",
              line.subjectName());
      case SECOND_FACTOR ->
          words.say(isOver ? "account.events.factorOff" : "account.events.factorOn");
      case RECOVERY_CODES ->
          words.say(
              line.action().equals(AuditAction.USED.word())
                  ? "account.events.codeUsed"
                  : "account.events.codesMade");
      default -> unknown(line);
    };
  }

  /** A later version wrote it; said as it stands, it is better than not said. */
  private String unknown(Audited line) {
    return words.say("account.events.unknown", line.action(), line.kind());
  }
}
