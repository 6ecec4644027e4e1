package lampwright.tasks;

import java.util.List;
import java.util.Optional;
import lampwright.document.Pointer;
import lampwright.document.Problem;
import lampwright.document.Problems;
import lampwright.learning.trail.Stage;
import lampwright.learning.trail.Trail;
import lampwright.learning.trail.TrailId;
import lampwright.people.Ids;
import lampwright.people.Permission;
import lampwright.people.StudioId;
import lampwright.setup.SetupId;
import lampwright.store.Database;
import lampwright.store.Page;
import lampwright.store.Setups;
import lampwright.store.StoredTrail;
import lampwright.store.StudioTransaction;
import lampwright.store.Trails;

/** Keeps a studio's trails. */
public final class TrailKeeping {

  /** More courses than that nobody walks. */
  static final int MOST_TRAILS = 200;

  private final Database database;
  private final Ids ids;

  public TrailKeeping(Database database, Ids ids) {
    this.database = database;
    this.ids = ids;
  }

  /**
   * The trail that an address names.
   *
   * @throws Refused NotFound where no trail can have that id
   */
  public static TrailId id(String text) {
    if (!Ids.isId(text)) {
      throw Refused.notFound();
    }
    return new TrailId(text);
  }

  /**
   * Keeps a new trail.
   *
   * @throws Refused Invalid where it names a setup that the studio does not have
   */
  public KeptTrail create(Caller caller, StudioId studio, Trail trail, Once once) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.WRITE_TRAILS);
          return once.make(
              in, ids, id -> create(in, new TrailId(id), trail), id -> find(in, new TrailId(id)));
        });
  }

  private static KeptTrail create(StudioTransaction in, TrailId id, Trail trail) {
    mustHaveSetups(in, trail);
    Trails trails = new Trails(in);
    if (trails.count() >= MOST_TRAILS) {
      throw new Refused(
          new Refusal.Clash(
              "The studio has " + MOST_TRAILS + " trails already. Delete one first."));
    }
    String json = StoredDocuments.print(Trail.FORM, trail);
    return kept(in, trails.create(id, trail.name(), json, ""));
  }

  /** A trail as it is now. */
  public KeptTrail get(Caller caller, StudioId studio, TrailId id) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.READ_SETUPS);
          return get(in, id);
        });
  }

  static KeptTrail get(StudioTransaction in, TrailId id) {
    return find(in, id).orElseThrow(Refused::notFound);
  }

  static Optional<KeptTrail> find(StudioTransaction in, TrailId id) {
    return new Trails(in).find(id).map(stored -> kept(in, stored));
  }

  /** At most so many trails, the last changed first. */
  public Listed<KeptTrail> list(Caller caller, StudioId studio, Listed.Wish wish) {
    Optional<Page.Place> after = PageCursor.read(wish.cursor());
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.READ_SETUPS);
          Page<StoredTrail> page = new Trails(in).list(after, wish.limit());
          return PageCursor.listed(new Page<>(kept(in, page.items()), page.next()));
        });
  }

  /** All of them, the first made first. */
  static List<KeptTrail> all(StudioTransaction in) {
    return kept(in, new Trails(in).list(Optional.empty(), MOST_TRAILS).items()).reversed();
  }

  private static List<KeptTrail> kept(StudioTransaction in, List<StoredTrail> stored) {
    return stored.stream()
        .flatMap(
            one ->
                StoredDocuments.find(Trail.FORM, one.document(), one.id())
                    .map(document -> kept(in, one, document))
                    .stream())
        .toList();
  }

  /** Whether a member may make, change and delete trails. */
  public boolean mayWrite(Caller caller, StudioId studio) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> Leave.ask(in, Permission.READ_SETUPS).may(Permission.WRITE_TRAILS));
  }

  /**
   * Puts another document in the place of the one that it was made from. What members did on stages
   * that stay is kept.
   *
   * @param basedOn the revision it was made from; empty replaces whatever is there
   * @throws Refused Invalid where it names a setup that the studio does not have
   */
  public KeptTrail replace(
      Caller caller, StudioId studio, TrailId id, Optional<Integer> basedOn, Trail trail) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.WRITE_TRAILS);
          mustHaveSetups(in, trail);
          int from = basedOn.orElseGet(() -> get(in, id).revision());
          String json = StoredDocuments.print(Trail.FORM, trail);
          Cataloguing.mustBeSaved(new Trails(in).replace(id, from, trail.name(), json, ""));
          return get(in, id);
        });
  }

  /** Takes a trail away; its revisions, and what members did on it, are kept. */
  public void delete(Caller caller, StudioId studio, TrailId id, Optional<Integer> basedOn) {
    database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.WRITE_TRAILS);
          int from = basedOn.orElseGet(() -> get(in, id).revision());
          return Cataloguing.mustBeSaved(new Trails(in).delete(id, from, ""));
        });
  }

  private static void mustHaveSetups(StudioTransaction in, Trail trail) {
    Problems problems = new Problems();
    for (int i = 0; i < trail.stages().size(); i++) {
      Pointer at = Pointer.root().field("stages").item(i).field("setup");
      setup(trail.stages().get(i))
          .filter(id -> new Setups(in).find(id).isEmpty())
          .ifPresent(
              id ->
                  problems.add(
                      at,
                      "Setup (\"%s\") must be the id of one of the studio's setups."
                          .formatted(id)));
    }
    List<Problem> wrong = problems.list();
    if (!wrong.isEmpty()) {
      throw Refused.invalid(wrong);
    }
  }

  private static Optional<SetupId> setup(Stage stage) {
    return switch (stage) {
      case Stage.ToStudy study -> Optional.of(study.setup());
      case Stage.ToBuild build -> Optional.of(build.setup());
      case Stage.ToRead _, Stage.ToAnswer _ -> Optional.empty();
    };
  }

  private static KeptTrail kept(StudioTransaction in, StoredTrail stored) {
    return kept(in, stored, StoredDocuments.read(Trail.FORM, stored.document()));
  }

  private static KeptTrail kept(StudioTransaction in, StoredTrail stored, Trail document) {
    return new KeptTrail(
        stored.id(),
        stored.revision(),
        stored.changedAt(),
        Cataloguing.name(in, stored.changedBy()),
        document);
  }
}
