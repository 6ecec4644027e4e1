package lampwright.web.pages;

import io.javalin.http.Context;
import lampwright.people.Membership;
import lampwright.tasks.Studios;
import lampwright.web.http.Door;
import lampwright.wording.Wording;

/**
 * What a page of one's own matters has around its own part: the studio that one belongs to first,
 * and who belongs to none has a bare page.
 */
public final class OwnLayouts {

  private final Door door;
  private final Studios studios;
  private final StudioLayouts layouts;

  public OwnLayouts(Door door, Studios studios, StudioLayouts layouts) {
    this.door = door;
    this.studios = studios;
    this.layouts = layouts;
  }

  /** With a phrase for its title. */
  Layout named(Context context, String key) {
    String title = words(context).say(key);
    return studios.list(door.caller(context)).stream()
        .findFirst()
        .map(Membership::studio)
        .map(studio -> layouts.of(context, studio, title))
        .orElseGet(() -> layouts.outside(context, title));
  }

  /** For who is signed in no more. */
  Layout outside(Context context, String title) {
    return layouts.outside(context, title);
  }

  /** The words and figures of who asks. */
  Wording words(Context context) {
    return layouts.words(context);
  }
}
