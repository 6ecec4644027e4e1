package lampwright.web.http;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import java.io.InputStream;

/** Gives bytes out, whole or in part, or says that who asks has them already. */
public final class ServedBytes {

  private ServedBytes() {}

  /** Whoever opens so many of the bytes, from one on that is counted from 0. */
  @FunctionalInterface
  public interface Opening {
    InputStream open(long first, long count);
  }

  /**
   * Answers with them.
   *
   * @param etag strong, in quotes
   * @param bytes opens what is given out, and nothing else
   */
  public static void give(
      Context context, String mediaType, String etag, long length, Opening bytes) {
    context.header("Accept-Ranges", "bytes");
    if (Preconditions.isKnown(context, etag)) {
      return;
    }
    context.contentType(mediaType);
    if (context.method().equals(HandlerType.HEAD)) {
      context.res().setContentLengthLong(length);
      return;
    }
    switch (ByteRange.of(context.header("Range"), context.header("If-Range"), etag, length)) {
      case ByteRange.Whole _ -> {
        InputStream all = bytes.open(0, length);
        context.res().setContentLengthLong(length);
        context.result(all);
      }
      case ByteRange.Part part -> {
        InputStream some = bytes.open(part.first(), part.bytes());
        context.status(HttpStatus.PARTIAL_CONTENT);
        context.header(
            "Content-Range", "bytes %d-%d/%d".formatted(part.first(), part.last(), length));
        context.res().setContentLengthLong(part.bytes());
        context.result(some);
      }
      case ByteRange.Nowhere _ -> {
        context.header("Content-Range", "bytes */" + length);
        throw new HttpResponseException(HttpStatus.RANGE_NOT_SATISFIABLE.getCode());
      }
    }
  }
}
