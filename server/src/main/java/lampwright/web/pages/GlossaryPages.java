package lampwright.web.pages;

import io.javalin.http.Context;
import lampwright.people.Membership;
import lampwright.tasks.Caller;
import lampwright.tasks.Studios;
import lampwright.web.http.Door;

/** The page that explains the words of the trade. */
public final class GlossaryPages {

  private final Door door;
  private final Studios studios;
  private final Templates templates;
  private final StudioLayouts layouts;

  public GlossaryPages(Door door, Studios studios, Templates templates, StudioLayouts layouts) {
    this.door = door;
    this.studios = studios;
    this.templates = templates;
    this.layouts = layouts;
  }

  /** Shows it: {@code /glossary}. */
  public void show(Context context) {
    templates.show(context, "glossary", GlossaryView.page(layout(context)));
  }

  /** In the studio that one belongs to first; who belongs to none has a bare page. */
  private Layout layout(Context context) {
    Caller caller = door.caller(context);
    String title = layouts.words(context).say("glossary.title");
    return studios.list(caller).stream()
        .findFirst()
        .map(Membership::studio)
        .map(studio -> layouts.of(context, studio, title))
        .orElseGet(() -> layouts.outside(context, title));
  }
}
