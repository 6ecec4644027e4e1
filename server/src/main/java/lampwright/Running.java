package lampwright;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import lampwright.web.http.MemberLimits;

/**
 * How the server holds up and is watched, as its keeper wants it.
 *
 * @param slowQuery a statement that takes longer is told in the log
 * @param metricsToken the secret of a scraper elsewhere
 * @param requestsAtOnce how many light requests are worked on at once; empty for as many as the
 *     machine's cores suggest
 * @param perMinute how many requests come from whom
 * @param drain for how long a server that stops still takes requests
 */
record Running(
    Duration slowQuery,
    Optional<String> metricsToken,
    OptionalInt requestsAtOnce,
    MemberLimits.PerMinute perMinute,
    Duration drain) {

  private static final int SHORTEST_TOKEN = 32;
  private static final int DAY_MS = 24 * 60 * 60 * 1000;
  private static final int MOST_AT_ONCE = 10_000;
  private static final int MOST_A_MINUTE = 1_000_000_000;
  private static final int LONGEST_DRAIN_S = 300;

  /** No record's text may reach a log with a secret in it. */
  @Override
  public String toString() {
    return "Running[" + requestsAtOnce + ", " + perMinute + "]";
  }

  /**
   * Reads it from an environment.
   *
   * @throws SettingRefused when a value cannot be worked with
   */
  static Running read(Map<String, String> environment) {
    String log = Settings.value(environment, Setting.LOG);
    // The log itself reads it, before anybody else, in logback.xml.
    if (!log.equals("text") && !log.equals("json")) {
      throw SettingRefused.of(Setting.LOG, log, "must be text or json. Maybe json?");
    }
    return new Running(
        Duration.ofMillis(number(environment, Setting.SLOW_QUERY_MS, 1, DAY_MS)),
        Settings.text(environment, Setting.METRICS_TOKEN).map(Running::token),
        Settings.text(environment, Setting.REQUESTS_AT_ONCE).isEmpty()
            ? OptionalInt.empty()
            : OptionalInt.of(number(environment, Setting.REQUESTS_AT_ONCE, 1, MOST_AT_ONCE)),
        new MemberLimits.PerMinute(
            number(environment, Setting.MEMBER_REQUESTS_PER_MINUTE, 0, MOST_A_MINUTE),
            number(environment, Setting.MEMBER_COSTLY_REQUESTS_PER_MINUTE, 0, MOST_A_MINUTE),
            number(environment, Setting.VISITOR_REQUESTS_PER_MINUTE, 0, MOST_A_MINUTE)),
        Duration.ofSeconds(number(environment, Setting.DRAIN_SECONDS, 0, LONGEST_DRAIN_S)));
  }

  private static int number(Map<String, String> environment, Setting setting, int least, int most) {
    String value = Settings.value(environment, setting);
    try {
      int number = Integer.parseInt(value);
      if (number >= least && number <= most) {
        return number;
      }
    } catch (NumberFormatException e) {
      // Said below, for both.
    }
    throw SettingRefused.of(
        setting, value, "must be a whole number from %d to %d.".formatted(least, most));
  }

  private static String token(String value) {
    Path file = Settings.file(Setting.METRICS_TOKEN, value);
    try {
      String token = Files.readString(file).strip();
      if (token.length() >= SHORTEST_TOKEN && token.chars().allMatch(Running::isPlain)) {
        return token;
      }
    } catch (CharacterCodingException e) {
      // Said below: it is no text.
    } catch (IOException e) {
      throw SettingRefused.of(
          Setting.METRICS_TOKEN, value, "must be a file that this server may read.");
    }
    throw SettingRefused.of(
        Setting.METRICS_TOKEN,
        value,
        "must hold one secret of %d letters and digits or more. Maybe openssl rand -hex 32?"
            .formatted(SHORTEST_TOKEN));
  }

  /** What a header can carry without quotes. */
  private static boolean isPlain(int character) {
    return character > ' ' && character <= '~';
  }
}
