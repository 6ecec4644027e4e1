package lampwright.tasks;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lampwright.archive.ArchiveKind;
import lampwright.language.Language;
import lampwright.people.Membership;
import lampwright.people.Person;
import lampwright.people.Role;
import lampwright.people.StudioId;
import lampwright.store.AccountEvents;
import lampwright.store.Database;
import lampwright.store.KeptFile;
import lampwright.store.OwnRows;
import lampwright.store.PersonTransaction;
import lampwright.store.Sessions;
import lampwright.store.StudioTransaction;

/**
 * Takes out all that is kept of a person, and what they wrote in the studios that they belong to,
 * as one ZIP of JSON files and their pictures. Rows go to files of their own first, so that nobody
 * who downloads slowly holds a connection of the database, and nothing need fit into memory.
 */
public final class TakingOut {

  private static final int AT_ONCE = 2;
  private static final Duration NEXT = Duration.ofSeconds(20);

  /** Said in what is taken out, for whoever opens it. */
  private static final List<String> NOT_IN_IT =
      List.of(
          "Your password and the secrets of your sessions and tokens: only their hashes are kept.",
          "What others wrote, and their changes to what you began: those are theirs and the"
              + " studio's. An owner can take out the whole studio.",
          "What you wrote in studios that you no longer belong to.",
          "What is computed from all this at need: figures, drawings, the search index.",
          "The lines of the server's log, which name nobody and are kept for a while only.");

  private final Database database;
  private final PictureUpkeep pictures;
  private final Path folder;
  private final Turns turns = new Turns(AT_ONCE, Duration.ZERO, NEXT);

  /**
   * @param folder for the rows while they are given out; what is in it from before goes
   */
  public TakingOut(Database database, PictureUpkeep pictures, Path folder) {
    this.database = database;
    this.pictures = pictures;
    this.folder = Spool.emptied(folder);
  }

  /** What is ready to be given out; to be closed. */
  public static final class Ready implements AutoCloseable {

    private final TakenOut parts;
    private final Instant madeAt;
    private final List<AutoCloseable> afterwards;

    private Ready(TakenOut parts, Instant madeAt, List<AutoCloseable> afterwards) {
      this.parts = parts;
      this.madeAt = madeAt;
      this.afterwards = afterwards;
    }

    /** A name for the file, without an ending. */
    public String name() {
      return "my-data-" + LocalDate.ofInstant(madeAt, ZoneOffset.UTC);
    }

    /**
     * Writes it all.
     *
     * @throws IOException where whoever it is for has gone
     */
    public void write(OutputStream out) throws IOException {
      Map<String, Object> about = new LinkedHashMap<>();
      about.put("what", "All that Lampwright keeps of you, and what you wrote.");
      about.put("made_at", madeAt.toString());
      about.put("not_in_it", NOT_IN_IT);
      parts.write(out, name(), madeAt, about);
    }

    @Override
    public void close() {
      Spool.closeAll(afterwards);
    }
  }

  /**
   * All of it.
   *
   * @throws Refused NotAllowed for programs; Unavailable where others take theirs out already
   */
  public Ready all(Caller caller) {
    if (caller.way() != Caller.Way.SESSION) {
      throw Refused.notAllowed(
          "Only a person who signed in can take out their data, and not a program with a token."
              + " Sign in.");
    }
    List<AutoCloseable> afterwards = new ArrayList<>();
    boolean isReady = false;
    try {
      afterwards.add(turns.take());
      TakenOut out = new TakenOut(Spool.make(folder, afterwards));
      Instant madeAt = database.asPerson(caller.asker(), in -> person(in, caller.person(), out));
      for (Membership membership : studios(caller)) {
        StudioId studio = membership.studio();
        database.inStudioAtOneMoment(
            studio, caller.asker(), in -> studio(in, studio, out, afterwards));
      }
      isReady = true;
      return new Ready(out, madeAt, afterwards);
    } finally {
      if (!isReady) {
        Spool.closeAll(afterwards);
      }
    }
  }

  private List<Membership> studios(Caller caller) {
    return database.asPerson(caller.asker(), in -> new lampwright.store.Studios(in).list());
  }

  private static Instant person(PersonTransaction in, Person person, TakenOut out) {
    Map<String, Object> who = new LinkedHashMap<>();
    who.put("id", person.id().text());
    who.put("email", person.email());
    who.put("name", person.name());
    person.preferred().language().map(Language::tag).ifPresent(tag -> who.put("language", tag));
    who.put("lengths", person.preferred().lengths().key());
    who.put("stops", person.preferred().stops().key());
    out.object("person.json", "Who you are, and how you read.", who);
    out.list(
        "studios.json",
        "The studios that you belong to, and your role in each.",
        to -> new lampwright.store.Studios(in).list().forEach(one -> to.accept(json(one))));
    out.list(
        "sessions.json",
        "Where you are signed in now.",
        to -> new Sessions(in).list(person.id()).forEach(one -> to.accept(json(one))));
    out.list(
        "tokens.json",
        "The tokens that you made for programs.",
        to ->
            new lampwright.store.Tokens(in).list(person.id()).forEach(one -> to.accept(json(one))));
    out.list(
        "account-events.json",
        "What happened with your account: sign-ins, also those that failed, and changes.",
        to -> new AccountEvents(in).each(to::accept));
    return in.now();
  }

  private StudioTransaction studio(
      StudioTransaction in, StudioId studio, TakenOut out, List<AutoCloseable> afterwards) {
    OwnRows rows = new OwnRows(in);
    String base = "studios/" + studio.text() + "/";
    for (OwnRows.Kind kind : OwnRows.Kind.values()) {
      String file = base + kind.name().toLowerCase(Locale.ROOT) + ".json";
      out.list(file, what(kind), to -> rows.each(kind, to::accept));
    }
    for (ArchiveKind kind : ArchiveKind.values()) {
      out.list(
          base + kind.word() + ".json",
          what(kind) + " Each revision that you made, as it was then.",
          to -> rows.eachRevision(kind, to::accept));
    }
    Map<String, String> files = rows.pictureFiles();
    afterwards.add(pictures.hold(files.keySet()));
    Map<String, KeptFile> there = pictures.originals(files.keySet());
    files.forEach(
        (hash, type) -> {
          String path = base + "pictures/" + hash + ending(type);
          Optional.ofNullable(there.get(hash))
              .ifPresentOrElse(file -> out.picture(path, file::open), () -> out.missing(path));
        });
    return in;
  }

  private static String what(OwnRows.Kind kind) {
    return switch (kind) {
      case SAVED_SEARCHES -> "The searches that you keep, and what each had found.";
      case DRILL_ANSWERS -> "What you answered to drills.";
      case STAGES_DONE -> "The stages of trails that you have read or studied.";
      case BUILDS -> "The run-throughs that you handed in, and what was said of them.";
      case JUDGEMENTS -> "What you said of others' run-throughs, as far as you may see it.";
      case PROPOSALS -> "What you proposed to take over into setups.";
      case DEEDS -> "What the audit trail tells of what you did.";
      case PICTURES_ADDED ->
          "The pictures that you added: what the file is, and what was read from it.";
    };
  }

  private static String what(ArchiveKind kind) {
    return switch (kind) {
      case GEAR -> "Gear.";
      case KITS -> "Kits.";
      case LOCATIONS -> "Locations.";
      case SETUPS -> "Setups.";
      case PICTURES -> "What is said of pictures.";
      case TAKES -> "Takes.";
      case NOTES -> "Notes.";
      case TRAILS -> "Trails.";
    };
  }

  private static String ending(String mediaType) {
    return switch (mediaType) {
      case "image/jpeg" -> ".jpg";
      case "image/png" -> ".png";
      case "image/webp" -> ".webp";
      case "image/tiff" -> ".tiff";
      default -> "";
    };
  }

  private static Map<String, Object> json(Membership membership) {
    return Map.of(
        "id", membership.studio().text(),
        "name", membership.studioName(),
        "role", membership.role().word());
  }

  private static Map<String, Object> json(Sessions.Session session) {
    return Map.of(
        "id", session.id(),
        "device", session.device(),
        "created_at", session.createdAt().toString(),
        "seen_at", session.seenAt().toString(),
        "expires_at", session.expiresAt().toString());
  }

  private static Map<String, Object> json(lampwright.store.Tokens.Token token) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("id", token.id());
    json.put("name", token.name());
    token.reach().atMost().map(Role::word).ifPresent(role -> json.put("at_most", role));
    token.reach().only().map(StudioId::text).ifPresent(studio -> json.put("studio", studio));
    json.put("created_at", token.createdAt().toString());
    token.expiresAt().ifPresent(at -> json.put("expires_at", at.toString()));
    token.lastUsedAt().ifPresent(at -> json.put("last_used_at", at.toString()));
    return json;
  }
}
