package lampwright.store;

/**
 * Where pictures are kept cannot be used: the object store does not answer or refuses what was
 * asked of it, or the disk does not take what came in. Nothing is wrong with the request, which may
 * be tried again later. The message is one line for the keeper of the server.
 */
public final class PicturesUnavailable extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final boolean refused;

  private PicturesUnavailable(String message, boolean refused, Throwable cause) {
    super(message, cause);
    this.refused = refused;
  }

  /** It does not answer; it may be back soon. */
  static PicturesUnavailable away(String message, Throwable cause) {
    return new PicturesUnavailable(message, false, cause);
  }

  /** It answers and says no; somebody must put a setting right, there or here. */
  static PicturesUnavailable refused(String message, Throwable cause) {
    return new PicturesUnavailable(message, true, cause);
  }

  /** Whether it answered and said no. */
  public boolean isRefused() {
    return refused;
  }
}
