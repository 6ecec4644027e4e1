package lampwright.web.pages;

import io.javalin.http.Context;
import java.util.Optional;

/** What a page has around its own part, for whoever looks at it. */
public final class Layouts {

  private final Assets assets;

  public Layouts(Assets assets) {
    this.assets = assets;
  }

  /** For a page outside every studio. */
  public Layout outside(Optional<Context> context, String title) {
    return new Layout(
        title, Optional.empty(), context.map(Layouts::theme).orElse(Theme.DEVICE), assets);
  }

  /** For a page inside a studio. */
  public Layout inside(Context context, String title, SignedIn member) {
    return new Layout(title, Optional.of(member), theme(context), assets);
  }

  private static Theme theme(Context context) {
    String cookie = context.cookie(Theme.COOKIE);
    return cookie == null ? Theme.DEVICE : Theme.of(cookie);
  }
}
