package lampwright.web.http;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lampwright.tasks.Refused;

/**
 * The parts of a form with a file in it (RFC 7578), read one after the other as they arrive, so
 * that no file is held in memory. What a file was called is not looked at.
 */
public final class Multipart {

  private static final int LONGEST_HEAD = 8 * 1024;
  private static final int LONGEST_FIELD = 16 * 1024;
  private static final int MOST_PARTS = 20;
  private static final Pattern BOUNDARY =
      Pattern.compile(
          "(?i)multipart/form-data\\s*;.*?boundary=(?:\"([^\"]{1,70})\"|([^;\\s]{1,70})).*");
  private static final Pattern NAME = Pattern.compile("(?i).*;\\s*name=\"([^\"]*)\".*");

  private final Boundaries in;
  private int parts;

  private Multipart(Boundaries in) {
    this.in = in;
  }

  /**
   * One part; its content must be read before the next.
   *
   * @param isFile whether the sender says that it is one
   */
  public record Part(String name, boolean isFile, InputStream content) {

    /**
     * Its content as text.
     *
     * @throws Refused NotReadable where that is long or no UTF-8
     */
    public String text() {
      try {
        byte[] bytes = content.readNBytes(LONGEST_FIELD + 1);
        if (bytes.length > LONGEST_FIELD) {
          throw Refused.notReadable("The field " + name + " is too long.");
        }
        return Body.decoded(bytes);
      } catch (IOException e) {
        throw broken();
      }
    }
  }

  /** Whether a content type names such a form. */
  public static boolean is(String contentType) {
    return contentType.toLowerCase(Locale.ROOT).startsWith("multipart/form-data");
  }

  /**
   * Begins to read.
   *
   * @throws Refused NotReadable where the content type names no boundary
   */
  public static Multipart of(String contentType, InputStream body) {
    Matcher named = BOUNDARY.matcher(contentType);
    if (!named.matches()) {
      throw Refused.notReadable("The header Content-Type names no boundary for the parts.");
    }
    String boundary = named.group(1) == null ? named.group(2) : named.group(1);
    return new Multipart(new Boundaries(body, boundary));
  }

  /**
   * The next part; empty after the last.
   *
   * @throws Refused NotReadable where the form is broken
   */
  public Optional<Part> next() {
    try {
      in.transferTo(OutputStream.nullOutputStream());
      if (!in.open()) {
        return Optional.empty();
      }
      if (++parts > MOST_PARTS) {
        throw Refused.notReadable("The form has more than " + MOST_PARTS + " parts.");
      }
      return Optional.of(part());
    } catch (IOException e) {
      throw broken();
    }
  }

  private Part part() throws IOException {
    String name = "";
    boolean isFile = false;
    for (String line = line(); !line.isEmpty(); line = line()) {
      if (line.toLowerCase(Locale.ROOT).startsWith("content-disposition:")) {
        Matcher named = NAME.matcher(line);
        name = named.matches() ? named.group(1) : "";
        isFile = line.toLowerCase(Locale.ROOT).contains("filename");
      }
    }
    return new Part(name, isFile, in);
  }

  private String line() throws IOException {
    ByteArrayOutputStream line = new ByteArrayOutputStream();
    for (int read = in.read(); read != '\n'; read = in.read()) {
      if (read < 0 || line.size() > LONGEST_HEAD) {
        throw broken();
      }
      line.write(read);
    }
    return line.toString(StandardCharsets.UTF_8).stripTrailing();
  }

  private static Refused broken() {
    return Refused.notReadable("The form is broken, or ended before it was complete.");
  }

  /** The body up to the next boundary, again and again. */
  private static final class Boundaries extends InputStream {

    private static final int WINDOW = 64 * 1024;

    private final InputStream body;
    private final byte[] mark;
    private final byte[] window = new byte[WINDOW];
    private int start;
    private int end;
    private int safe;
    private boolean atMark;
    private boolean over;

    Boundaries(InputStream body, String boundary) {
      this.body = body;
      this.mark = ("\r\n--" + boundary).getBytes(StandardCharsets.ISO_8859_1);
      // The first boundary has no line before it.
      window[0] = '\r';
      window[1] = '\n';
      end = 2;
    }

    /** Steps over a boundary; whether a part follows. */
    boolean open() throws IOException {
      if (over) {
        return false;
      }
      start += mark.length;
      atMark = false;
      safe = start;
      while (end - start < 2) {
        if (!fill()) {
          throw new IOException("No end");
        }
      }
      if (window[start] == '-' && window[start + 1] == '-') {
        over = true;
        return false;
      }
      if (window[start] != '\r' || window[start + 1] != '\n') {
        throw new IOException("No line after the boundary");
      }
      start += 2;
      safe = start;
      return true;
    }

    @Override
    public int read() throws IOException {
      return look() ? window[start++] & 0xff : -1;
    }

    @Override
    public int read(byte[] into, int from, int most) throws IOException {
      if (most == 0) {
        return 0;
      }
      if (!look()) {
        return -1;
      }
      int count = Math.min(most, safe - start);
      System.arraycopy(window, start, into, from, count);
      start += count;
      return count;
    }

    /** Whether there is content before the next boundary. */
    private boolean look() throws IOException {
      while (start >= safe) {
        if (atMark || over) {
          return false;
        }
        int found = find();
        if (found >= 0) {
          safe = found;
          atMark = true;
        } else if (end - start >= mark.length) {
          // What could be the beginning of a boundary waits for more.
          safe = end - mark.length + 1;
        } else if (!fill()) {
          throw new IOException("No closing boundary");
        }
      }
      return true;
    }

    private int find() {
      for (int at = start; at + mark.length <= end; at++) {
        if (Arrays.equals(window, at, at + mark.length, mark, 0, mark.length)) {
          return at;
        }
      }
      return -1;
    }

    private boolean fill() throws IOException {
      if (start > 0) {
        System.arraycopy(window, start, window, 0, end - start);
        safe -= start;
        end -= start;
        start = 0;
      }
      int read = body.read(window, end, window.length - end);
      if (read > 0) {
        end += read;
      }
      return read > 0;
    }
  }
}
