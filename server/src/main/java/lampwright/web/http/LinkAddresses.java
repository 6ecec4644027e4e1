package lampwright.web.http;

import io.javalin.http.Context;
import java.net.URI;
import java.util.Optional;

/**
 * The addresses of links that are handed to somebody. Where the settings name the server's address,
 * that is what they begin with; a visitor's own word for it is used only where they name none.
 *
 * @param publicUrl the address that visitors type
 */
public record LinkAddresses(Optional<URI> publicUrl) {

  /** For a program: the whole address where the settings say how it begins, else the path. */
  public String of(String path) {
    return publicUrl.map(url -> withoutSlash(url) + path).orElse(path);
  }

  /** For a person, who copies it: the whole address in any case. */
  public String whole(Context context, String path) {
    return publicUrl
        .map(url -> withoutSlash(url) + path)
        .orElseGet(() -> context.scheme() + "://" + context.host() + path);
  }

  private static String withoutSlash(URI url) {
    String text = url.toString();
    return text.endsWith("/") ? text.substring(0, text.length() - 1) : text;
  }
}
