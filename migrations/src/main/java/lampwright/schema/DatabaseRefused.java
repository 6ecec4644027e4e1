package lampwright.schema;

/**
 * The database that the settings name cannot be worked with. The message is one line for the person
 * who starts the server: the setting, what is wrong, and what to do. It holds no password.
 */
public final class DatabaseRefused extends RuntimeException {

  DatabaseRefused(String message) {
    super(message);
  }

  DatabaseRefused(String message, Throwable cause) {
    super(message, cause);
  }
}
