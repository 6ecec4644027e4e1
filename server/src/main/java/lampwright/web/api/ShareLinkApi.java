package lampwright.web.api;

import static lampwright.document.Field.usually;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.tasks.OutsideLink;
import lampwright.tasks.Sharing;
import lampwright.web.http.Door;
import lampwright.web.http.LinkAddresses;

/** The links that show a setup to somebody outside: list, make, withdraw. */
public final class ShareLinkApi {

  private static final Field<Sharing.Wish, Integer> DAYS =
      usually(
          Sharing.USUAL_DAYS,
          "days",
          Forms.count(1, Sharing.MOST_DAYS),
          Sharing.Wish::days,
          "How long it lasts; usually 14.");
  private static final Field<Sharing.Wish, Boolean> PICTURES =
      usually(
          true,
          "shows_pictures",
          Forms.flag(),
          Sharing.Wish::showsPictures,
          "Whether the finished pictures that are there now are shown; usually they are.");
  private static final Field<Sharing.Wish, Boolean> PLACE =
      usually(
          false,
          "shows_place",
          Forms.flag(),
          Sharing.Wish::showsPlace,
          "Whether it is shown when and where it was; usually not.");

  private static final ObjectForm<Sharing.Wish> FORM =
      ObjectForm.of(
          "share_link",
          "A link that shows one setup, as it is now, to somebody outside until it ends.",
          values -> new Sharing.Wish(values.get(DAYS), values.get(PICTURES), values.get(PLACE)),
          List.of(DAYS, PICTURES, PLACE));

  private final Door door;
  private final Sharing sharing;
  private final LinkAddresses links;

  public ShareLinkApi(Door door, Sharing sharing, LinkAddresses links) {
    this.door = door;
    this.sharing = sharing;
    this.links = links;
  }

  /** What is read here. */
  static Form<Sharing.Wish> form() {
    return FORM;
  }

  private record One(
      String id,
      int revision,
      boolean showsPictures,
      boolean showsPlace,
      String by,
      Instant createdAt,
      Instant endsAt,
      Optional<Instant> openedAt,
      Optional<String> address) {

    static One of(OutsideLink link, Optional<String> address) {
      return new One(
          link.id(),
          link.revision(),
          link.showsPictures(),
          link.showsPlace(),
          link.by(),
          link.createdAt(),
          link.endsAt(),
          link.openedAt(),
          address);
    }
  }

  private record All(List<One> items, Optional<String> next) {}

  /** Those that have not ended, the newest first. */
  public void list(Context context) {
    context.json(
        new All(
            sharing
                .list(door.caller(context), SetupApi.studio(context), SetupApi.setup(context))
                .stream()
                .map(link -> One.of(link, Optional.empty()))
                .toList(),
            Optional.empty()));
  }

  /** Makes one, and tells its address this once: asked again under its key, it does not. */
  public void create(Context context) {
    Sharing.Wish wish = Documents.read(context, FORM);
    Sharing.Made made =
        sharing.make(
            door.caller(context),
            SetupApi.studio(context),
            SetupApi.setup(context),
            wish,
            Repeats.of(context));
    context.status(HttpStatus.CREATED);
    context.header("Location", context.path() + "/" + made.link().id());
    context.json(One.of(made.link(), made.secret().map(secret -> links.of("/shared/" + secret))));
  }

  /** Withdraws one; from then on it shows nothing. */
  public void delete(Context context) {
    sharing.withdraw(
        door.caller(context),
        SetupApi.studio(context),
        SetupApi.setup(context),
        context.pathParam("link"));
    context.status(HttpStatus.NO_CONTENT);
  }
}
