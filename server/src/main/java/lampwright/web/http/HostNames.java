package lampwright.web.http;

import java.util.Collection;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * The names under which this server may be visited. A page from elsewhere whose name was pointed at
 * this machine (DNS rebinding) sends its own name and is turned away; an address in digits cannot
 * be pointed anywhere, so every one is good.
 */
public final class HostNames {

  private final Set<String> names = new TreeSet<>(Set.of("localhost"));

  /**
   * @param further names beside localhost and addresses in digits
   */
  public HostNames(Collection<String> further) {
    further.forEach(name -> names.add(name.toLowerCase(Locale.ROOT)));
  }

  boolean includes(@Nullable String hostHeader) {
    if (hostHeader == null) {
      return false;
    }
    String name = withoutPort(hostHeader.strip().toLowerCase(Locale.ROOT));
    return names.contains(name)
        || name.matches("\\[[0-9a-f:.]+]")
        || name.matches("[0-9]{1,3}(\\.[0-9]{1,3}){3}");
  }

  private static String withoutPort(String host) {
    int colon = host.lastIndexOf(':');
    return colon > host.lastIndexOf(']') ? host.substring(0, colon) : host;
  }
}
