package lampwright.web.http;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Which of some bytes a request asks for (RFC 9110, section 14). A header that is malformed, of
 * another unit or of several ranges is as if it were not there, as the standard allows.
 */
public sealed interface ByteRange {

  /** All of them. */
  record Whole() implements ByteRange {}

  /** Those from the first to the last, both included, counted from 0. */
  record Part(long first, long last) implements ByteRange {

    public long bytes() {
      return last - first + 1;
    }
  }

  /** Some that are not there. */
  record Nowhere() implements ByteRange {}

  /** A range counted from the start, or a suffix of so many bytes. */
  Pattern ONE = Pattern.compile("(?i)bytes=[ \\t]*(\\d{1,18})?-(\\d{1,18})?[ \\t]*");

  /**
   * Reads what is asked for.
   *
   * @param range the header Range
   * @param ifRange the header If-Range: the part is wanted only of what has this ETag
   * @param etag of these bytes, strong
   * @param length how many there are
   */
  static ByteRange of(@Nullable String range, @Nullable String ifRange, String etag, long length) {
    boolean isOfThese = ifRange == null || ifRange.strip().equals(etag);
    if (range == null || !isOfThese) {
      return new Whole();
    }
    Matcher matcher = ONE.matcher(range.strip());
    if (!matcher.matches()) {
      return new Whole();
    }
    Optional<Long> first = number(matcher.group(1));
    Optional<Long> last = number(matcher.group(2));
    if (first.isEmpty()) {
      return last.map(count -> suffix(count, length)).orElse(new Whole());
    }
    if (last.filter(end -> end < first.get()).isPresent()) {
      return new Whole();
    }
    return first.get() >= length
        ? new Nowhere()
        : new Part(first.get(), Math.min(last.orElse(Long.MAX_VALUE), length - 1));
  }

  private static ByteRange suffix(long count, long length) {
    return count == 0 || length == 0
        ? new Nowhere()
        : new Part(Math.max(0, length - count), length - 1);
  }

  private static Optional<Long> number(@Nullable String digits) {
    return Optional.ofNullable(digits).map(Long::valueOf);
  }
}
