package lampwright.tasks;

import lampwright.people.Permission;
import lampwright.people.StudioId;
import lampwright.picture.ToneStatistics;
import lampwright.setup.signature.PictureSignature;
import lampwright.store.Database;

/** Reads a picture that somebody shows to find others that look like it. Nothing of it is kept. */
public final class PictureShowing {

  private final Database database;
  private final PictureAdding adding;

  public PictureShowing(Database database, PictureAdding adding) {
    this.database = database;
    this.adding = adding;
  }

  /**
   * What was shown.
   *
   * @param tones what a search for pictures like it says in its address
   */
  public record Shown(String tones, PictureSignature look) {}

  /**
   * Whether somebody may search the studio at all; asked before the picture's bytes are taken in.
   *
   * @throws Refused NotFound
   */
  public void askToShow(Caller caller, StudioId studio) {
    database.inStudio(studio, caller.asker(), in -> Leave.ask(in, Permission.READ_SETUPS));
  }

  /**
   * Reads it.
   *
   * @throws Refused Invalid where it is no picture that can be used, with the reason
   */
  public Shown show(PictureAdding.Received received) {
    ToneStatistics tones = adding.tones(received);
    return new Shown(LikeTones.brief(tones).text(), Signing.of(tones));
  }
}
