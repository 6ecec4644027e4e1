package lampwright.web.http;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** Gives bytes out, whole or in part, or says that who asks has them already. */
public final class ServedBytes {

  private ServedBytes() {}

  /**
   * Answers with them.
   *
   * @param etag strong, in quotes
   * @param bytes is closed, whatever the answer
   */
  public static void give(
      Context context, String mediaType, String etag, long length, InputStream bytes) {
    context.header("Accept-Ranges", "bytes");
    if (Preconditions.isKnown(context, etag)) {
      close(bytes);
      return;
    }
    context.contentType(mediaType);
    if (context.method().equals(HandlerType.HEAD)) {
      context.res().setContentLengthLong(length);
      close(bytes);
      return;
    }
    switch (ByteRange.of(context.header("Range"), context.header("If-Range"), etag, length)) {
      case ByteRange.Whole _ -> {
        context.res().setContentLengthLong(length);
        context.result(bytes);
      }
      case ByteRange.Part part -> {
        context.status(HttpStatus.PARTIAL_CONTENT);
        context.header(
            "Content-Range", "bytes %d-%d/%d".formatted(part.first(), part.last(), length));
        context.res().setContentLengthLong(part.bytes());
        context.result(cut(bytes, part));
      }
      case ByteRange.Nowhere _ -> {
        close(bytes);
        context.header("Content-Range", "bytes */" + length);
        throw new HttpResponseException(HttpStatus.RANGE_NOT_SATISFIABLE.getCode());
      }
    }
  }

  private static InputStream cut(InputStream bytes, ByteRange.Part part) {
    try {
      bytes.skipNBytes(part.first());
      return new Cut(bytes, part.bytes());
    } catch (IOException e) {
      close(bytes);
      throw new UncheckedIOException(e);
    }
  }

  private static void close(InputStream bytes) {
    try (bytes) {
      // Nothing of it is sent.
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The first so many bytes. */
  private static final class Cut extends FilterInputStream {

    private long left;

    Cut(InputStream in, long bytes) {
      super(in);
      this.left = bytes;
    }

    @Override
    public int read() throws IOException {
      int read = left > 0 ? in.read() : -1;
      left -= read < 0 ? 0 : 1;
      return read;
    }

    @Override
    public int read(byte[] into, int from, int most) throws IOException {
      int read = left > 0 ? in.read(into, from, (int) Math.min(most, left)) : -1;
      left -= Math.max(0, read);
      return read;
    }
  }
}
