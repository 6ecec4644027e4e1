package lampwright.tasks;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import lampwright.archive.Archive;
import lampwright.archive.ArchiveKind;
import lampwright.gear.KitId;
import lampwright.people.Ids;
import lampwright.people.StudioId;
import lampwright.setup.SetupId;
import lampwright.store.ArchiveArrival;
import lampwright.store.Clashing;
import lampwright.store.Database;
import lampwright.store.DatabaseUnavailable;
import lampwright.store.Gear;
import lampwright.store.ImportJobs;
import lampwright.store.Kits;
import lampwright.store.Locations;
import lampwright.store.Pictures;
import lampwright.store.PicturesUnavailable;
import lampwright.store.StoredPicture;
import lampwright.store.StudioTransaction;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Carries an import out: the pictures' files first, then everything else in one transaction. Files
 * that are left without a row go at once, or at the next start.
 */
record ImportExecution(
    Database database,
    Cataloguing cataloguing,
    PictureUpkeep upkeep,
    PictureAdding adding,
    Ids ids,
    Clock clock) {

  private static final Duration WAIT_FOR_INDEX = Duration.ofSeconds(30);
  private static final String CHANGED =
      "Somebody changed what the archive would change. Send it again.";
  private static final Logger LOG = LoggerFactory.getLogger(ImportExecution.class);

  /** How many steps it takes at most. */
  static int steps(Archive archive) {
    int things = archive.pictureHashes().size();
    for (ArchiveKind kind : ArchiveKind.values()) {
      things += archive.of(kind).things().size();
    }
    return things;
  }

  void carryOut(ImportJob job, Archive archive, Fates fates) {
    Set<String> copied = job.copies() ? fates.clashingSetups() : Set.of();
    Set<String> hashes = fates.hashes(copied);
    try {
      Map<SetupId, Integer> setups = bringIn(job, archive, fates, copied, hashes);
      awaitIndex(job.studio(), setups);
      job.letFilesGo();
      job.imported();
    } catch (RuntimeException | Error e) {
      job.letFilesGo();
      job.failed(why(job, e));
    } finally {
      job.over().countDown();
    }
  }

  private Map<SetupId, Integer> bringIn(
      ImportJob job, Archive archive, Fates fates, Set<String> copied, Set<String> hashes) {
    boolean kept = false;
    PictureUpkeep.Hold hold = upkeep.hold(hashes);
    try {
      Map<String, StoredPicture.File> files = new HashMap<>();
      for (String hash : hashes) {
        job.stepOn();
        files.put(hash, archive.picture(hash, adding::placeHeld));
      }
      Map<SetupId, Integer> setups =
          database.inStudio(
              job.studio(), job.by().asker(), in -> write(job, in, fates, copied, files));
      kept = true;
      return setups;
    } finally {
      hold.close();
      if (!kept) {
        hashes.forEach(upkeep::takeAwayUnneeded);
      }
    }
  }

  private Map<SetupId, Integer> write(
      ImportJob job,
      StudioTransaction in,
      Fates planned,
      Set<String> copied,
      Map<String, StoredPicture.File> files) {
    ArchiveArrival.hold(in);
    new Gear(in).holdKitsAndGear();
    new Pictures(in).holdAllFiles();
    mustStillBeThere(files.keySet());
    ImportChecking.mayBring(in, planned.archive());
    Fates now = Fates.find(in, planned.archive(), job.clashes());
    if (!now.of().equals(planned.of())) {
      throw new Refused(new Refusal.Clash(CHANGED));
    }
    Map<SetupId, Integer> setups = new Arriving(in, now, copied, files, ids, job::stepOn).write();
    mustBeWhole(in, planned.archive());
    mustNotBeTooMany("kits", new Kits(in).count(), KitKeeping.MOST_KITS);
    mustNotBeTooMany("pieces of gear", new Gear(in).count(), GearKeeping.MOST_GEAR);
    mustNotBeTooMany("locations", new Locations(in).count(), LocationKeeping.MOST_LOCATIONS);
    job.commit();
    // What others were told of it decides: who stopped it elsewhere finds nothing done.
    if (!new ImportJobs(in).commit(job.id(), job.server())) {
      throw new ImportJob.Stopped();
    }
    return setups;
  }

  /** Another server on the same place may have taken a file away before this one held them all. */
  private void mustStillBeThere(Set<String> hashes) {
    if (!upkeep.originals(hashes).keySet().containsAll(hashes)) {
      throw new Refused(
          new Refusal.Clash("A picture's file was taken away meanwhile. Send the archive again."));
    }
  }

  /** A kit that is new may name gear that stayed as it is here. */
  private static void mustBeWhole(StudioTransaction in, Archive archive) {
    for (String id : archive.of(ArchiveKind.KITS).things().keySet()) {
      KitKeeping.find(in, new KitId(id))
          .filter(
              kit ->
                  !Stock.of(in, List.of(kit.written())).whole(kit.written()).problems().isEmpty())
          .ifPresent(
              kit -> {
                throw new Refused(
                    new Refusal.Clash(
                        "With the gear that is here the kit \"%s\" would be no whole one."
                            .formatted(kit.written().name())));
              });
    }
  }

  private static void mustNotBeTooMany(String what, int count, int most) {
    if (count > most) {
      throw new Refused(
          new Refusal.Clash(
              "The studio would have %d %s, and at most %d are kept."
                  .formatted(count, what, most)));
    }
  }

  private void awaitIndex(StudioId studio, Map<SetupId, Integer> setups) {
    Instant end = clock.instant().plus(WAIT_FOR_INDEX);
    setups.forEach(
        (id, revision) -> {
          if (clock.instant().isBefore(end)) {
            cataloguing.awaitIndex(studio, id, revision);
          }
        });
  }

  private static String why(ImportJob job, Throwable thrown) {
    return switch (thrown) {
      case ImportJob.Stopped _ -> job.whyStopped();
      case Refused refused -> ImportChecking.sentence(refused);
      case DatabaseUnavailable _ ->
          "The database was lost. Send the archive again: its plan says whether it came in.";
      case PicturesUnavailable _ -> "The store of pictures was lost. Send the archive again.";
      case RuntimeException failure when Clashing.is(failure) -> CHANGED;
      default -> {
        LOG.error("The import {} failed", job.id(), thrown);
        yield "The archive could not be brought in. Send it again: its plan says what is here.";
      }
    };
  }
}
