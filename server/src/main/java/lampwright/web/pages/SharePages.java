package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.people.StudioId;
import lampwright.setup.SetupId;
import lampwright.tasks.Caller;
import lampwright.tasks.Cataloguing;
import lampwright.tasks.Leave;
import lampwright.tasks.Once;
import lampwright.tasks.Opening;
import lampwright.tasks.OutsideLink;
import lampwright.tasks.Refused;
import lampwright.tasks.Sharing;
import lampwright.web.http.Body;
import lampwright.web.http.Door;
import lampwright.web.http.FormFields;
import lampwright.web.http.LinkAddresses;
import lampwright.wording.Wording;

/** Where members show a setup to somebody outside, and end it: a part of the setup's page. */
public final class SharePages {

  private static final String YES = "true";

  private final Door door;
  private final Sharing sharing;
  private final Cataloguing cataloguing;
  private final LinkAddresses links;
  private final Templates templates;
  private final StudioLayouts layouts;

  public SharePages(
      Door door,
      Sharing sharing,
      Cataloguing cataloguing,
      LinkAddresses links,
      Templates templates,
      StudioLayouts layouts) {
    this.door = door;
    this.sharing = sharing;
    this.cataloguing = cataloguing;
    this.links = links;
    this.templates = templates;
    this.layouts = layouts;
  }

  static String path(StudioId studio, SetupId setup) {
    return SetupPages.setupPath(studio, setup) + "/share-links";
  }

  /** What the setup's own page shows of it; empty for whose role does not cover it. */
  Optional<SharePart> part(Context context, StudioId studio, Opening.Opened opened, Wording words) {
    String path = path(studio, opened.setup().id());
    opened.links().stream()
        .flatMap(List::stream)
        .map(OutsideLink::endsAt)
        .forEach(end -> KeptPages.until(context, end));
    return opened
        .links()
        .map(
            open ->
                new SharePart(
                    path,
                    door.csrfToken(context),
                    Sharing.USUAL_DAYS,
                    Sharing.MOST_DAYS,
                    open.stream().map(link -> open(link, path, words)).toList()));
  }

  private static SharePart.Open open(OutsideLink link, String path, Wording words) {
    DayWords days = new DayWords(words);
    List<String> shows = new ArrayList<>();
    shows.add(words.say("sharing.shows.revision", link.revision()));
    if (link.showsPictures()) {
      shows.add(words.say("sharing.shows.pictures"));
    }
    if (link.showsPlace()) {
      shows.add(words.say("sharing.shows.place"));
    }
    shows.add(
        words.say("sharing.madeBy", new WhoWords(words).by(link.by()), days.day(link.createdAt())));
    return new SharePart.Open(
        words.say("sharing.ends", days.day(link.endsAt())),
        String.join(" · ", shows),
        link.openedAt()
            .map(at -> words.say("sharing.opened", days.day(at)))
            .orElseGet(() -> words.say("sharing.unopened")),
        path + "/" + link.id() + "/removal");
  }

  /** Whoever comes to the form's own address is led to the form. */
  public void leadBack(Context context) {
    context.redirect(place(context), HttpStatus.SEE_OTHER);
  }

  /** Makes a link, and shows its address this once: a form to {@code …/share-links}. */
  public void make(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    SetupId setup = Cataloguing.id(context.pathParam("setup"));
    Caller caller = door.caller(context);
    FormFields sent = Body.form(context);
    Sharing.Made made =
        sharing.make(
            caller,
            studio,
            setup,
            new Sharing.Wish(
                days(sent.get(SharePart.DAYS)),
                sent.get(SharePart.PICTURES).equals(YES),
                sent.get(SharePart.PLACE).equals(YES)),
            Once.unkeyed());
    Layout layout = layouts.named(context, studio, "sharing.made.heading");
    Wording words = layout.words();
    context.status(HttpStatus.CREATED);
    templates.show(
        context,
        "shareMade",
        new ShareMadePage(
            layout,
            cataloguing.get(caller, studio, setup).document().title(),
            place(context),
            made.secret().map(secret -> links.whole(context, SharedPages.path(secret))).orElse(""),
            words.say("sharing.made.ends", new DayWords(words).day(made.link().endsAt()))));
  }

  private static int days(String written) {
    int days = written.strip().matches("\\d{1,3}") ? Integer.parseInt(written.strip()) : 0;
    if (days < 1 || days > Sharing.MOST_DAYS) {
      throw Refused.invalid(
          "/days",
          "Days (\"%s\") must be a whole number from 1 to %d. Maybe %d?"
              .formatted(written, Sharing.MOST_DAYS, Sharing.USUAL_DAYS));
    }
    return days;
  }

  /** Withdraws one: a form to {@code …/share-links/{link}/removal}. */
  public void withdraw(Context context) {
    sharing.withdraw(
        door.caller(context),
        Leave.studio(context.pathParam("studio")),
        Cataloguing.id(context.pathParam("setup")),
        context.pathParam("link"));
    context.redirect(place(context), HttpStatus.SEE_OTHER);
  }

  private static String place(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    return SetupPages.setupPath(studio, Cataloguing.id(context.pathParam("setup"))) + "#share";
  }
}
