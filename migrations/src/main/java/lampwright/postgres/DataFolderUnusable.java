package lampwright.postgres;

/**
 * The data folder cannot hold a running PostgreSQL. The message is one line for the person who
 * starts the server: the folder, what is wrong with it, and what to do.
 */
public final class DataFolderUnusable extends RuntimeException {

  DataFolderUnusable(String message) {
    super(message);
  }

  DataFolderUnusable(String message, Throwable cause) {
    super(message, cause);
  }
}
