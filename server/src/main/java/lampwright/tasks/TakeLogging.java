package lampwright.tasks;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lampwright.document.Reading;
import lampwright.people.Ids;
import lampwright.people.Permission;
import lampwright.people.Role;
import lampwright.people.StudioId;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.setup.takes.ComparedReading;
import lampwright.setup.takes.MeteredSetup;
import lampwright.setup.takes.Take;
import lampwright.setup.takes.TakeId;
import lampwright.store.Database;
import lampwright.store.Page;
import lampwright.store.Saving;
import lampwright.store.Setups;
import lampwright.store.StoredSetup;
import lampwright.store.StoredTake;
import lampwright.store.StudioTransaction;
import lampwright.store.Takes;

/** Logs what happened on the day: takes and run-throughs with their readings. */
public final class TakeLogging {

  /** Where a take says by which key it is one, however often it is sent. */
  public static final String CLIENT_KEY = "/client_key";

  private final Database database;
  private final Cataloguing cataloguing;
  private final Ids ids;

  /**
   * @param cataloguing waits for the index
   */
  public TakeLogging(Database database, Cataloguing cataloguing, Ids ids) {
    this.database = database;
    this.cataloguing = cataloguing;
    this.ids = ids;
  }

  /**
   * The take that an address names.
   *
   * @throws Refused NotFound where no take can have that id
   */
  public static TakeId id(String text) {
    if (!Ids.isId(text)) {
      throw Refused.notFound();
    }
    return new TakeId(text);
  }

  /**
   * What became of logging a take.
   *
   * @param isNew false where the same was logged before by the same key
   */
  public record Logged(LoggedTake take, boolean isNew) {}

  /**
   * Logs a take; the same once more, by its key, is the same take.
   *
   * @throws Refused Invalid for a revision that the setup does not have, lights that it does not
   *     have, and a key that another take has
   */
  public Logged log(Caller caller, StudioId studio, SetupId setup, Take take) {
    return log(caller, studio, setup, take, Time.STATED);
  }

  /**
   * Logs a take whose time is when it was sent: the same once more, by its key, is the same take
   * although it says a later time.
   *
   * @throws Refused as {@link #log}
   */
  public Logged logAsSent(Caller caller, StudioId studio, SetupId setup, Take take) {
    return log(caller, studio, setup, take, Time.AS_SENT);
  }

  /** Whether a take that is sent again must say the same time. */
  private enum Time {
    STATED,
    AS_SENT
  }

  private Logged log(Caller caller, StudioId studio, SetupId setup, Take take, Time time) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.LOG_TAKES);
          Takes takes = new Takes(in, setup);
          if (!new Setups(in).hold(setup)) {
            throw Refused.notFound();
          }
          Optional<Takes.TakeOfKey> before = takes.findByKey(take.clientKey());
          if (before.isPresent()) {
            return new Logged(again(in, takes, before.get(), take, time), false);
          }
          mustFit(take, shot(in, setup, take.setupRevision()));
          int number = takes.nextNumber(take.day());
          StoredTake stored =
              takes.create(
                  new Takes.NewTake(
                      new TakeId(ids.next()),
                      take.setupRevision(),
                      take.at().toInstant(),
                      take.day(),
                      number,
                      take.clientKey(),
                      take.label(number),
                      StoredDocuments.print(Take.FORM, take)));
          return new Logged(logged(in, stored, new HashMap<>()), true);
        });
  }

  private static LoggedTake again(
      StudioTransaction in, Takes takes, Takes.TakeOfKey before, Take take, Time time) {
    if (before.isDeleted()) {
      throw Refused.invalid(CLIENT_KEY, "The take of this client key was deleted. Use a new key.");
    }
    Take first = StoredDocuments.read(Take.FORM, before.first());
    if (!first.equals(time == Time.STATED ? take : take.withAt(first.at()))) {
      throw Refused.invalid(
          CLIENT_KEY, "Another take has this client key. Use a new key for each take.");
    }
    return logged(in, takes.find(before.id()).orElseThrow(), new HashMap<>());
  }

  /** A take as it is now. */
  public LoggedTake get(Caller caller, StudioId studio, SetupId setup, TakeId id) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          return get(in, Sight.ask(in), setup, id);
        });
  }

  private static LoggedTake get(StudioTransaction in, Sight sight, SetupId setup, TakeId id) {
    return logged(in, stored(in, sight, setup, id), new HashMap<>());
  }

  private static StoredTake stored(StudioTransaction in, Sight sight, SetupId setup, TakeId id) {
    sight.get(in, setup);
    return new Takes(in, setup).find(id).orElseThrow(Refused::notFound);
  }

  /** What the next take of a day will be called, unless somebody else logs one before. */
  public int nextNumber(Caller caller, StudioId studio, SetupId setup, LocalDate day) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Sight.ask(in).get(in, setup);
          return new Takes(in, setup).nextNumber(day);
        });
  }

  /**
   * What a member may do with takes.
   *
   * @param log them, and write notes
   * @param deleteAny not only their own
   * @param keepReadings with the setup and with gear
   */
  public record May(boolean log, boolean deleteAny, boolean keepReadings) {}

  /** What a member may do with takes. */
  public May may(Caller caller, StudioId studio) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Role role = Leave.ask(in, Permission.READ_SETUPS);
          return new May(
              role.may(Permission.LOG_TAKES),
              role.may(Permission.WRITE_SETUPS),
              role.may(Permission.WRITE_SETUPS) && role.may(Permission.WRITE_KITS));
        });
  }

  /**
   * Which takes are wanted.
   *
   * @param day by the clocks of the place
   */
  public record Wish(Optional<LocalDate> day, Optional<Take.Kept> kept, Listed.Wish page) {}

  /** At most so many, the last taken first. */
  public Listed<LoggedTake> list(Caller caller, StudioId studio, SetupId setup, Wish wish) {
    Optional<Page.Place> after = PageCursor.read(wish.page().cursor());
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Sight.ask(in).get(in, setup);
          Map<Integer, SetupDocument> shot = new HashMap<>();
          Page<StoredTake> page =
              new Takes(in, setup)
                  .list(
                      wish.day(),
                      wish.kept().map(kept -> kept.name().toLowerCase(Locale.ROOT)),
                      after,
                      wish.page().limit());
          return PageCursor.listed(
              new Page<>(
                  page.items().stream().map(stored -> logged(in, stored, shot)).toList(),
                  page.next()));
        });
  }

  /**
   * Puts another document in the place of a take's; when it was, and its key, stay.
   *
   * @param basedOn the revision that was looked at
   */
  public LoggedTake replace(
      Caller caller, StudioId studio, SetupId setup, TakeId id, int basedOn, Take take) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Sight sight = Sight.of(Leave.ask(in, Permission.LOG_TAKES));
          StoredTake stored = stored(in, sight, setup, id);
          Take before = StoredDocuments.read(Take.FORM, stored.document());
          mustStay("/at", "At", before.at().equals(take.at()));
          mustStay(CLIENT_KEY, "Client key", before.clientKey().equals(take.clientKey()));
          mustFit(take, shot(in, setup, take.setupRevision()));
          Cataloguing.mustBeSaved(
              new Takes(in, setup)
                  .replace(
                      id,
                      basedOn,
                      take.label(stored.number()),
                      StoredDocuments.print(Take.FORM, take)));
          return get(in, sight, setup, id);
        });
  }

  private static void mustStay(String pointer, String what, boolean stays) {
    if (!stays) {
      throw Refused.invalid(pointer, what + " must stay as it was logged. Maybe log another take?");
    }
  }

  /** Takes one's own take away; who may change setups takes any away. */
  public void delete(Caller caller, StudioId studio, SetupId setup, TakeId id, int basedOn) {
    database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Role role = Leave.ask(in, Permission.LOG_TAKES);
          StoredTake stored = stored(in, Sight.of(role), setup, id);
          boolean isOwn = stored.createdBy().equals(caller.person().id());
          if (!isOwn && !role.may(Permission.WRITE_SETUPS)) {
            throw Refused.notAllowed(
                "Somebody else logged this take; only they, authors and owners delete it.");
          }
          return Cataloguing.mustBeSaved(new Takes(in, setup).delete(id, basedOn));
        });
  }

  /**
   * Makes the setup's next revision from the current one with readings of a take, so that its
   * figures follow the meter.
   *
   * @param basedOn the revision of the setup that was looked at
   * @param lights whose readings are taken over
   */
  public Catalogued calibrate(
      Caller caller, StudioId studio, SetupId setup, TakeId id, int basedOn, List<LightId> lights) {
    Catalogued changed =
        database.inStudio(
            studio,
            caller.asker(),
            in -> {
              Sight sight = Sight.of(Leave.ask(in, Permission.WRITE_SETUPS));
              StoredTake stored = stored(in, sight, setup, id);
              Take take = StoredDocuments.read(Take.FORM, stored.document());
              Setups setups = new Setups(in);
              StoredSetup current = sight.get(in, setup);
              if (current.revision() != basedOn) {
                throw Refused.stale(current.revision());
              }
              SetupDocument document =
                  metered(
                      MeteredSetup.of(
                          take,
                          lights,
                          shot(in, setup, take.setupRevision()),
                          StoredDocuments.read(SetupDocument.FORM, current.document())));
              Saving saving =
                  setups.replace(
                      setup,
                      basedOn,
                      document.title(),
                      StoredDocuments.print(SetupDocument.FORM, document),
                      "Readings of " + take.label(stored.number()) + ", " + stored.day());
              Cataloguing.mustBeSaved(saving);
              return Cataloguing.get(in, sight, setup);
            });
    cataloguing.awaitIndex(studio, setup, changed.revision());
    return changed;
  }

  private static SetupDocument metered(Reading<SetupDocument> reading) {
    return switch (reading) {
      case Reading.Sound<SetupDocument>(SetupDocument document) -> document;
      case Reading.Faulty<SetupDocument> faulty -> throw Refused.invalid(faulty.problems());
    };
  }

  /** The revision of a setup that a take is of. */
  static SetupDocument shot(StudioTransaction in, SetupId setup, int revision) {
    return new Setups(in)
        .findRevision(setup, revision)
        .map(found -> StoredDocuments.read(SetupDocument.FORM, found.document()))
        .orElseThrow(
            () ->
                Refused.invalid(
                    "/setup_revision",
                    "Setup revision (%d) must be one that the setup has.".formatted(revision)));
  }

  private static void mustFit(Take take, SetupDocument shot) {
    for (int i = 0; i < take.readings().size(); i++) {
      LightId light = take.readings().get(i).light();
      if (shot.lights().stream().noneMatch(of -> of.id().equals(light))) {
        throw Refused.invalid(
            "/readings/" + i + "/light",
            "Light (\"%s\") is not one of the lights of the revision that was shot."
                .formatted(light));
      }
    }
  }

  /**
   * @param shot the revisions that were read already
   */
  private static LoggedTake logged(
      StudioTransaction in, StoredTake stored, Map<Integer, SetupDocument> shot) {
    Take take = StoredDocuments.read(Take.FORM, stored.document());
    SetupDocument setup =
        shot.computeIfAbsent(take.setupRevision(), revision -> shot(in, stored.setup(), revision));
    return new LoggedTake(
        stored.id(),
        stored.revision(),
        stored.number(),
        stored.changedAt(),
        Cataloguing.name(in, stored.createdBy()),
        stored.createdBy(),
        setup,
        take,
        ComparedReading.of(take, setup));
  }
}
