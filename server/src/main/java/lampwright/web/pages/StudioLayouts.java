package lampwright.web.pages;

import io.javalin.http.Context;
import java.util.List;
import java.util.stream.Stream;
import lampwright.people.Membership;
import lampwright.people.StudioId;
import lampwright.tasks.Caller;
import lampwright.tasks.Refused;
import lampwright.tasks.SearchNews;
import lampwright.tasks.Studios;
import lampwright.web.http.Door;

/** What a page inside a studio has around its own part. */
public final class StudioLayouts {

  private static final String SIGN_OUT = "/sign-out";

  private final Door door;
  private final Studios studios;
  private final Layouts layouts;
  private final SearchNews news;

  public StudioLayouts(Door door, Studios studios, Layouts layouts, SearchNews news) {
    this.door = door;
    this.studios = studios;
    this.layouts = layouts;
    this.news = news;
  }

  Layout of(Context context, StudioId studio, String title) {
    Caller caller = door.caller(context);
    String name =
        studios.list(caller).stream()
            .filter(membership -> membership.studio().equals(studio))
            .map(Membership::studioName)
            .findFirst()
            .orElseThrow(Refused::notFound);
    String find = SetupPages.findPath(studio);
    String locations = LocationPages.path(studio);
    String saved = SavedSearchPages.path(studio);
    return layouts.inside(
        context,
        title,
        new SignedIn(
            name,
            find,
            caller.person().name(),
            SIGN_OUT,
            door.csrfToken(context),
            find,
            List.of(new Link("Setups", find), new Link("Locations", locations)),
            new SignedIn.Saved(saved, news.count(caller, studio)),
            Stream.of(locations, saved)
                .filter(context.path()::startsWith)
                .findFirst()
                .orElse(find)));
  }
}
