package lampwright.web.http;

import io.javalin.http.Context;
import java.net.InetAddress;

/** Where a request comes from, as an address to count failures under. */
public final class Visitors {

  private static final int LONGEST_ADDRESS = 45;

  private final boolean behindProxy;

  /**
   * @param behindProxy whether visitors come through a proxy on this machine, which says for whom
   */
  public Visitors(boolean behindProxy) {
    this.behindProxy = behindProxy;
  }

  /** The network address of the visitor. */
  public String addressOf(Context context) {
    String near = context.req().getRemoteAddr();
    String said = context.header("X-Forwarded-For");
    if (!behindProxy || said == null || !isLoopback(near)) {
      return near;
    }
    // The last one is the proxy's own word; whatever stands before it, anybody can have written.
    String last = said.substring(said.lastIndexOf(',') + 1).strip();
    return last.isEmpty() || last.length() > LONGEST_ADDRESS ? near : last;
  }

  private static boolean isLoopback(String address) {
    try {
      return InetAddress.ofLiteral(address).isLoopbackAddress();
    } catch (IllegalArgumentException e) {
      return false;
    }
  }
}
