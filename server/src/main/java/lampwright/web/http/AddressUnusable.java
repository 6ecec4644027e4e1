package lampwright.web.http;

/**
 * The server cannot listen where it should. The message is one line for the person who starts it.
 */
public final class AddressUnusable extends RuntimeException {

  AddressUnusable(String host, int port, Throwable cause) {
    super(
        "LAMPWRIGHT_PORT (%d): nothing can listen on %s there; another program may already. Stop it, or set another LAMPWRIGHT_PORT or LAMPWRIGHT_HOST."
            .formatted(port, host),
        cause);
  }
}
