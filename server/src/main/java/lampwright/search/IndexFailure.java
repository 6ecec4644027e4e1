package lampwright.search;

/**
 * The index folder could not be used. The message is for the log and for whoever runs the server.
 */
public abstract sealed class IndexFailure extends RuntimeException {
  private static final long serialVersionUID = 1;

  private IndexFailure(String message) {
    super(message);
  }

  private IndexFailure(String message, Throwable cause) {
    super(message, cause);
  }

  /** Another process holds the folder. */
  public static final class InUse extends IndexFailure {
    private static final long serialVersionUID = 1;

    InUse(String message, Throwable cause) {
      super(message, cause);
    }
  }

  /**
   * Nothing could be written, as on a full disk. What was not committed is forgotten, and the index
   * stands at its last commit: {@link SetupIndex#reopen} and go on from its bookmark.
   */
  public static final class NotWritten extends IndexFailure {
    private static final long serialVersionUID = 1;

    NotWritten(String message) {
      super(message);
    }

    NotWritten(String message, Throwable cause) {
      super(message, cause);
    }
  }

  /** The files do not hold what was written. Only a rebuild helps. */
  public static final class Broken extends IndexFailure {
    private static final long serialVersionUID = 1;

    Broken(String message, Throwable cause) {
      super(message, cause);
    }
  }
}
