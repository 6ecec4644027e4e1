package lampwright.web.pages;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpStatus;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import lampwright.people.SecretHash;
import lampwright.people.StudioId;
import lampwright.tasks.Caller;
import lampwright.tasks.Finding;
import lampwright.tasks.Glancing;

/**
 * Pages of a studio as they were made, for who comes back to them: from a setup to the list, or to
 * the same setup by another tab. A page is somebody's alone, and is shown again only where nothing
 * of the studio was written since and its index shows the same; so it is what would be made anew.
 * Whether that holds is asked of the database every time, in the step that asks who comes. What was
 * not looked at for longest is let go.
 *
 * <p>It is for pages that looking at changes nothing, and that tell of no time but by {@link
 * #until}.
 */
public final class KeptPages {

  /** Some two thousand pages. */
  private static final long MOST_BYTES = 48_000_000;

  private static final int BESIDE_PAGE_BYTES = 1_000;

  /** The new name of somebody who left, and is still called by it, is shown so late at most. */
  private static final Duration LONGEST = Duration.ofHours(1);

  private static final String SEEN = "lampwright.page";
  private static final String UNTIL = "lampwright.until";
  private static final String HTML = "text/html";

  private final Glancing glancing;
  private final Finding finding;
  private final Clock clock;
  private final Cache<Key, Kept> pages =
      Caffeine.newBuilder()
          .maximumWeight(MOST_BYTES)
          .weigher((Key _, Kept page) -> page.zipped().size() + BESIDE_PAGE_BYTES)
          .build();

  public KeptPages(Glancing glancing, Finding finding, Clock clock) {
    this.glancing = glancing;
    this.finding = finding;
    this.clock = clock;
  }

  /**
   * Whose page, and which. What a page says follows from it and from {@link State}; the proof that
   * its forms carry is the session's.
   */
  private record Key(SecretHash secret, String address, String theme, String language) {}

  /** What a page was made of, with how often the studio was written; equal where it is alike. */
  private record State(Caller caller, String shown) {}

  private record Seen(Key key, State state) {}

  private record Kept(State state, Instant until, Zipped zipped) {

    boolean isOf(State now, Instant at) {
      return state.equals(now) && at.isBefore(until);
    }
  }

  /** Says of a page that is being made that it tells of something under way: it is not kept. */
  static void passing(Context context) {
    until(context, Instant.MIN);
  }

  /** Says of a page that is being made that it is another from a moment on, if not before. */
  static void until(Context context, Instant moment) {
    Instant said = context.attribute(UNTIL);
    context.attribute(UNTIL, said == null || moment.isBefore(said) ? moment : said);
  }

  /** Looks who comes, and what the page that they come for is made of. */
  public Optional<Caller> glance(Context context, Caller.Way way, String secret) {
    String studio = context.pathParam("studio");
    Glancing.Seen seen = glancing.lookAround(way, secret, studio);
    seen.caller()
        .filter(caller -> caller.seen().isPresent())
        .map(caller -> new State(caller, finding.shown(new StudioId(studio))))
        .ifPresent(state -> context.attribute(SEEN, new Seen(key(context, secret), state)));
    return seen.caller();
  }

  private static Key key(Context context, String secret) {
    String query = context.queryString();
    return new Key(
        SecretHash.of(secret),
        query == null ? context.path() : context.path() + "?" + query,
        Optional.ofNullable(context.cookie(Theme.COOKIE)).orElse(""),
        Optional.ofNullable(context.header("Accept-Language")).orElse(""));
  }

  /** Shows a page as it was made, or lets it be made. */
  public Handler over(Handler page) {
    return context -> {
      Seen seen = context.attribute(SEEN);
      if (seen == null || !context.method().equals(HandlerType.GET)) {
        page.handle(context);
        return;
      }
      Kept kept = pages.getIfPresent(seen.key());
      Instant now = clock.instant();
      if (kept != null && kept.isOf(seen.state(), now)) {
        kept.zipped().give(context);
        return;
      }
      page.handle(context);
      until(context, now.plus(LONGEST));
      Instant until = Objects.requireNonNull(context.attribute(UNTIL));
      String made = context.result();
      if (made != null && now.isBefore(until) && isWhole(context)) {
        Zipped zipped = Zipped.of(made);
        pages.put(seen.key(), new Kept(seen.state(), until, zipped));
        if (Zipped.isTaken(context)) {
          zipped.give(context);
        }
      }
    };
  }

  private static boolean isWhole(Context context) {
    String type = context.res().getContentType();
    return context.status().equals(HttpStatus.OK) && type != null && type.startsWith(HTML);
  }

  /** A page by GZIP, as browsers take it. */
  private static final class Zipped {

    private final byte[] bytes;

    private Zipped(byte[] bytes) {
      this.bytes = bytes;
    }

    static Zipped of(String page) {
      ByteArrayOutputStream zipped = new ByteArrayOutputStream();
      try (GZIPOutputStream out = new GZIPOutputStream(zipped)) {
        out.write(page.getBytes(StandardCharsets.UTF_8));
      } catch (IOException e) {
        throw new UncheckedIOException("Memory takes what it is given.", e);
      }
      return new Zipped(zipped.toByteArray());
    }

    int size() {
      return bytes.length;
    }

    static boolean isTaken(Context context) {
      String takes = context.header("Accept-Encoding");
      return takes != null && takes.matches("(?i).*\\bgzip\\b(?!\\s*;\\s*q=0(\\.0*)?(,|$)).*");
    }

    void give(Context context) {
      context.contentType(HTML);
      if (isTaken(context)) {
        context.disableCompression();
        context.header("Content-Encoding", "gzip");
        context.result(bytes);
      } else {
        context.result(unzipped());
      }
    }

    private byte[] unzipped() {
      try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(bytes))) {
        return in.readAllBytes();
      } catch (IOException e) {
        throw new UncheckedIOException("It was zipped here.", e);
      }
    }
  }
}
