package lampwright.store;

import java.util.Optional;
import lampwright.engine.sun.PlaceOnEarth;
import lampwright.meaning.Meaning;
import lampwright.people.PersonId;
import lampwright.people.StudioId;
import lampwright.setup.signature.Signature;

/**
 * A setup and whose it is, where many studios are read at once.
 *
 * @param author who made its first revision
 * @param meaning of its text or of an older revision's, where it was worked out by now
 * @param signature as it is stored; absent where none of this version of the computation is
 * @param tones of its finished picture, the JSON that is stored; absent where it has none, and
 *     where only the setup itself was read
 * @param location where the location is that it names; absent in the same way
 */
public record SetupOfStudio(
    StudioId studio,
    StoredSetup setup,
    PersonId author,
    Optional<Meaning> meaning,
    Optional<Signature> signature,
    Optional<String> tones,
    Optional<PlaceOnEarth> location) {

  SetupOfStudio with(Optional<String> tonesOfPicture, Optional<PlaceOnEarth> ofLocation) {
    return new SetupOfStudio(studio, setup, author, meaning, signature, tonesOfPicture, ofLocation);
  }
}
