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
import lampwright.store.NotEntered;
import lampwright.store.Pictures;
import lampwright.store.PicturesUnavailable;
import lampwright.store.StoredPicture;
import lampwright.store.StudioTransaction;
import lampwright.tasks.ImportTrouble.Why;
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
      throw new ImportJob.Failed(Why.CHANGED_MEANWHILE);
    }
    Map<SetupId, Integer> setups = new Arriving(in, now, copied, files, ids, job::stepOn).write();
    mustBeWhole(in, planned.archive());
    mustNotBeTooMany(Why.TOO_MANY_KITS, new Kits(in).count(), KitKeeping.MOST_KITS);
    mustNotBeTooMany(Why.TOO_MUCH_GEAR, new Gear(in).count(), GearKeeping.MOST_GEAR);
    mustNotBeTooMany(
        Why.TOO_MANY_LOCATIONS, new Locations(in).count(), LocationKeeping.MOST_LOCATIONS);
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
      throw new ImportJob.Failed(Why.PICTURE_TAKEN_AWAY);
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
                throw new ImportJob.Failed(Why.KIT_NOT_WHOLE, kit.written().name());
              });
    }
  }

  private static void mustNotBeTooMany(Why why, int count, int most) {
    if (count > most) {
      throw new ImportJob.Failed(why, count, most);
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

  private static ImportTrouble why(ImportJob job, Throwable thrown) {
    return switch (thrown) {
      case ImportJob.Stopped _ -> job.whyStopped();
      case ImportJob.Failed failed -> failed.trouble();
      case Refused refused -> ImportTrouble.of(refused.refusal());
      case NotEntered _ -> ImportTrouble.of(Why.NO_MEMBER);
      case DatabaseUnavailable _ -> ImportTrouble.of(Why.DATABASE_LOST);
      case PicturesUnavailable _ -> ImportTrouble.of(Why.PICTURES_LOST);
      case RuntimeException failure when Clashing.is(failure) ->
          ImportTrouble.of(Why.CHANGED_MEANWHILE);
      default -> {
        LOG.error("The import {} failed", job.id(), thrown);
        yield ImportTrouble.of(Why.NOT_BROUGHT_IN);
      }
    };
  }
}
