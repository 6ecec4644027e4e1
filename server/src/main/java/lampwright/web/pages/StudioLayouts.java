package lampwright.web.pages;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lampwright.people.Membership;
import lampwright.people.Permission;
import lampwright.people.StudioId;
import lampwright.tasks.Caller;
import lampwright.tasks.Refused;
import lampwright.tasks.SearchNews;
import lampwright.tasks.Studios;
import lampwright.web.http.Door;
import lampwright.wording.Wording;

/** What a page inside a studio has around its own part. */
public final class StudioLayouts {

  private static final String SIGN_OUT = "/sign-out";

  /** How the addresses of all pages inside a studio begin. */
  private static final String STUDIOS = "/studios/";

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

  /** The same with a phrase for its title. */
  Layout named(Context context, StudioId studio, String key, Object... parts) {
    return of(context, studio, words(context).say(key, parts));
  }

  /** The words and figures of who asks. */
  Wording words(Context context) {
    return layouts.words(context);
  }

  /** For who belongs to no studio. */
  Layout outside(Context context, String title) {
    return layouts.outside(Optional.of(context), title);
  }

  Layout of(Context context, StudioId studio, String title) {
    return of(context, studio, title, studios.list(door.caller(context)));
  }

  /**
   * The same for whose studios are known.
   *
   * @param all that the caller belongs to, by name
   */
  Layout of(Context context, StudioId studio, String title, List<Membership> all) {
    Caller caller = door.caller(context);
    Wording words = words(context);
    Membership member =
        all.stream()
            .filter(membership -> membership.studio().equals(studio))
            .findFirst()
            .orElseThrow(Refused::notFound);
    String find = SetupPages.findPath(studio);
    String locations = LocationPages.path(studio);
    String kits = KitPages.path(studio);
    String people = PeoplePages.path(studio);
    String learning = LearningPages.path(studio);
    String archive = ArchivePages.path(studio);
    String saved = SavedSearchPages.path(studio);
    return layouts.inside(
        context,
        title,
        new SignedIn(
            member.studioName(),
            find,
            all.size() > 1 ? StudiosPage.PATH : "",
            caller.person().name(),
            SIGN_OUT,
            door.csrfToken(context),
            find,
            List.of(
                new Link(words.say("pages.find.setups"), find),
                new Link(words.say("studio.kits.heading"), kits),
                new Link(words.say("pages.location.all"), locations),
                new Link(words.say("learning.heading"), learning),
                new Link(words.say("studio.people.heading"), people),
                new Link(words.say("studio.archive.heading"), archive)),
            new SignedIn.Saved(saved, news.count(caller, studio)),
            member.role().may(Permission.WRITE_SETUPS) ? find + "/new" : "",
            context.path().startsWith(AuditPages.path(studio))
                ? people
                : context.path().startsWith(GearPages.path(studio))
                    ? kits
                    : context.path().startsWith(IndexPages.path(studio))
                        ? archive
                        : isOfLearning(context.path(), studio)
                            ? learning
                            : Stream.of(kits, locations, learning, people, archive, saved)
                                .filter(context.path()::startsWith)
                                .findFirst()
                                .orElse(context.path().startsWith(STUDIOS) ? find : "")));
  }

  private static boolean isOfLearning(String path, StudioId studio) {
    return Stream.of(
            DrillPages.path(studio), TrailPages.path(studio), SignOffPages.path(studio, ""))
        .anyMatch(path::startsWith);
  }
}
