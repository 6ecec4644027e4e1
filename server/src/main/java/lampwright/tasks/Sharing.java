package lampwright.tasks;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BiFunction;
import lampwright.people.Ids;
import lampwright.people.Permission;
import lampwright.people.PersonId;
import lampwright.people.Role;
import lampwright.people.SecretHash;
import lampwright.people.StudioId;
import lampwright.setup.OutsideView;
import lampwright.setup.PictureId;
import lampwright.setup.PictureKind;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.store.Database;
import lampwright.store.People;
import lampwright.store.Pictures;
import lampwright.store.SetupHistory;
import lampwright.store.Setups;
import lampwright.store.ShareLink;
import lampwright.store.ShareLinks;
import lampwright.store.StoredPicture;
import lampwright.store.StudioTransaction;
import lampwright.store.Studios;

/**
 * Shows one setup to somebody outside, by a link that ends. It shows the revision that was there
 * when the link was made, and of that what {@link OutsideView} lets out. It opens nothing any more
 * once it has ended or was withdrawn, the setup is deleted or put by, or whoever made it may not
 * show setups.
 */
public final class Sharing {

  /** Open links that a setup can have. */
  public static final int MOST = 20;

  /** The most days that one lasts. */
  public static final int MOST_DAYS = 90;

  /** How many it usually lasts. */
  public static final int USUAL_DAYS = 14;

  private static final Duration BETWEEN_NOTES = Duration.ofHours(1);
  private static final int MOST_PICTURES = 12;

  private final Database database;
  private final Ids ids;
  private final Closed closed;

  public Sharing(Database database, Ids ids, Closed closed) {
    this.database = database;
    this.ids = ids;
    this.closed = closed;
  }

  /**
   * What somebody wants to show, and how long.
   *
   * @param days 1 to {@link #MOST_DAYS}
   */
  public record Wish(int days, boolean showsPictures, boolean showsPlace) {}

  /**
   * A new link.
   *
   * @param secret stands in its address; nobody can show it again, so it is empty where the link
   *     had been made before under the same key
   */
  public record Made(OutsideLink link, Optional<String> secret) {

    /** No record's text may carry a secret into a log. */
    @Override
    public String toString() {
      return "Made[" + link.id() + "]";
    }
  }

  /**
   * What somebody outside sees.
   *
   * @param document with nothing in it that they do not see
   * @param pictures the finished ones, where they are shown
   */
  public record Shown(
      SetupDocument document,
      int revision,
      Instant revisedAt,
      Instant endsAt,
      boolean showsPlace,
      List<KeptPicture> pictures) {

    public Shown {
      pictures = List.copyOf(pictures);
    }
  }

  /**
   * Makes a link to a setup as it is now.
   *
   * @throws Refused NotFound, NotAllowed, or Clash where the setup has as many as one may have
   */
  public Made make(Caller caller, StudioId studio, SetupId setup, Wish wish, Once once) {
    String secret = ids.nextSecret();
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Role role = Leave.ask(in, Permission.SHARE_SETUPS);
          // Two who make the last one at once wait for each other.
          new Setups(in).hold(setup);
          int revision = Sight.of(role).get(in, setup).revision();
          ShareLinks links = new ShareLinks(in);
          AtomicBoolean isNew = new AtomicBoolean();
          ShareLink made =
              once.make(
                  in,
                  ids,
                  id -> {
                    isNew.set(true);
                    return create(links, id, secret, setup, revision, wish);
                  },
                  id -> links.find(setup, id));
          Map<PersonId, String> names = Map.of(caller.person().id(), caller.person().name());
          return new Made(
              OutsideLink.of(made, names), isNew.get() ? Optional.of(secret) : Optional.empty());
        });
  }

  private static ShareLink create(
      ShareLinks links, String id, String secret, SetupId setup, int revision, Wish wish) {
    if (links.list(setup).size() >= MOST) {
      throw new Refused(
          new Refusal.Clash(
              "The setup is shown by %d links, and that is the most. Withdraw one first."
                  .formatted(MOST)));
    }
    return links.create(
        id,
        SecretHash.of(secret),
        new ShareLinks.Wanted(
            setup,
            revision,
            wish.showsPictures(),
            wish.showsPlace(),
            Duration.ofDays(wish.days())));
  }

  /** The links to a setup that have not ended, the newest first. */
  public List<OutsideLink> list(Caller caller, StudioId studio, SetupId setup) {
    return database.inStudio(
        studio, caller.asker(), in -> list(in, Leave.ask(in, Permission.SHARE_SETUPS), setup));
  }

  private static List<OutsideLink> list(StudioTransaction in, Role role, SetupId setup) {
    Sight.of(role).get(in, setup);
    return list(in, setup, Cataloguing.names(in));
  }

  static List<OutsideLink> list(StudioTransaction in, SetupId setup, Map<PersonId, String> names) {
    return new ShareLinks(in)
        .list(setup).stream().map(made -> OutsideLink.of(made, names)).toList();
  }

  /**
   * Withdraws one: from then on it opens nothing.
   *
   * @throws Refused NotFound where the setup has none of that id
   */
  public void withdraw(Caller caller, StudioId studio, SetupId setup, String id) {
    boolean withdrawn =
        database.inStudio(
            studio,
            caller.asker(),
            in -> {
              Sight.of(Leave.ask(in, Permission.SHARE_SETUPS)).get(in, setup);
              return new ShareLinks(in).delete(setup, id);
            });
    if (!withdrawn) {
      throw Refused.notFound();
    }
  }

  /**
   * What a link shows.
   *
   * @param names what stands in the place of subjects' names
   * @throws Refused NotFound where it shows nothing, whatever the reason
   */
  public Shown open(String secret, OutsideView.Names names) {
    Opened opened = held(secret, (in, link) -> new Opened(link, shown(in, link, names)));
    database.inStudioForUpkeep(
        opened.link().studio(),
        in -> {
          ShareLinks.noteOpened(in, opened.link().id(), BETWEEN_NOTES);
          return opened;
        });
    return opened.shown();
  }

  private record Opened(ShareLink link, Shown shown) {}

  /**
   * A finished picture that a link shows.
   *
   * @throws Refused NotFound where it does not
   */
  public KeptPicture picture(String secret, PictureId id) {
    return held(
        secret,
        (in, link) ->
            pictures(in, link).stream()
                .filter(picture -> picture.id().equals(id))
                .findFirst()
                .orElseThrow(Refused::notFound));
  }

  private <T> T held(String secret, BiFunction<StudioTransaction, ShareLink, T> work) {
    SecretHash hash = SecretHash.of(secret);
    return database.anonymous(
        in -> {
          ShareLink link =
              ShareLinks.findHeld(in.holding(hash), hash).orElseThrow(Refused::notFound);
          StudioTransaction studio = in.enter(link.studio(), link.createdBy());
          if (!mayStillShow(studio, link) || !isThere(studio, link.setup())) {
            throw Refused.notFound();
          }
          return work.apply(studio, link);
        });
  }

  /** Not by Leave, whose refusal tells what somebody's role is. */
  private boolean mayStillShow(StudioTransaction in, ShareLink link) {
    return new People(in).find(link.createdBy()).filter(closed::isOpenTo).isPresent()
        && new Studios(in)
            .findRole(link.studio())
            .filter(role -> role.may(Permission.SHARE_SETUPS))
            .isPresent();
  }

  private static boolean isThere(StudioTransaction in, SetupId setup) {
    return new Setups(in).find(setup).filter(found -> !found.standing().archived()).isPresent();
  }

  private static Shown shown(StudioTransaction in, ShareLink link, OutsideView.Names names) {
    SetupHistory.Past past =
        new SetupHistory(in).find(link.setup(), link.revision()).orElseThrow(Refused::notFound);
    return new Shown(
        OutsideView.of(
            StoredDocuments.read(SetupDocument.FORM, past.document()), link.showsPlace(), names),
        link.revision(),
        past.line().revision().changedAt(),
        link.expiresAt(),
        link.showsPlace(),
        pictures(in, link));
  }

  /** Those that were there when the link was made. */
  private static List<KeptPicture> pictures(StudioTransaction in, ShareLink link) {
    if (!link.showsPictures()) {
      return List.of();
    }
    return new Pictures(in)
        .list(link.setup(), Optional.empty(), Listed.MOST).items().stream()
            .filter(stored -> !stored.createdAt().isAfter(link.createdAt()))
            .map(Sharing::kept)
            .filter(picture -> picture.note().kind() == PictureKind.FINAL)
            .limit(MOST_PICTURES)
            .toList();
  }

  /** Nobody's name goes out. */
  private static KeptPicture kept(StoredPicture stored) {
    return SetupPictures.kept(stored, "");
  }
}
