package lampwright.web.pages;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/**
 * An address of ours with its query.
 *
 * @param text as it stands in a link
 */
record Address(String text) {

  static Address of(String path) {
    return new Address(path);
  }

  /** The address with one more name and value in its query. */
  Address with(String name, String value) {
    char separator = text.indexOf('?') < 0 ? '?' : '&';
    return new Address(
        text + separator + name + "=" + URLEncoder.encode(value, StandardCharsets.UTF_8));
  }

  @Override
  public String toString() {
    return text;
  }
}
