package lampwright.web.http;

import io.javalin.http.Context;
import java.net.InetAddress;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lampwright.tasks.Refused;
import org.jspecify.annotations.Nullable;

/**
 * Who watches over the server: a program on the same machine that came straight here, or one
 * elsewhere that has the secret. To all others there is nothing to see.
 */
public final class Watchers {

  /** By any of these a proxy says that it asks for somebody else. */
  private static final List<String> OF_PROXIES =
      List.of("X-Forwarded-For", "X-Forwarded-Host", "X-Real-IP", "Forwarded", "Via");

  private static final String BEARER = "bearer ";

  private final Optional<String> secret;

  /**
   * @param secret of who watches from elsewhere
   */
  public Watchers(Optional<String> secret) {
    this.secret = secret;
  }

  /**
   * Lets somebody look.
   *
   * @throws Refused NotFound to whom nothing is told
   */
  void mustWatch(Context context) {
    String authorization = context.header("Authorization");
    boolean mayWatch = authorization == null ? isNear(context) : isSecret(authorization);
    if (!mayWatch) {
      throw Refused.notFound();
    }
  }

  private boolean isSecret(String authorization) {
    return secret.isPresent()
        && authorization.toLowerCase(Locale.ROOT).startsWith(BEARER)
        && MessageDigest.isEqual(
            secret.get().getBytes(StandardCharsets.UTF_8),
            authorization.substring(BEARER.length()).strip().getBytes(StandardCharsets.UTF_8));
  }

  /** A proxy that says nothing of for whom it asks still brings the name that visitors type. */
  private static boolean isNear(Context context) {
    return isLoopback(context.req().getRemoteAddr())
        && OF_PROXIES.stream().allMatch(header -> context.header(header) == null)
        && namesThisMachine(context.header("Host"));
  }

  private static boolean namesThisMachine(@Nullable String host) {
    if (host == null) {
      return false;
    }
    String name = host.replaceFirst(":\\d+$", "").replaceAll("[\\[\\]]", "");
    return name.equalsIgnoreCase("localhost") || isLoopback(name);
  }

  private static boolean isLoopback(String address) {
    try {
      return InetAddress.ofLiteral(address).isLoopbackAddress();
    } catch (IllegalArgumentException e) {
      return false;
    }
  }
}
