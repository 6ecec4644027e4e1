package lampwright.tasks;

import java.util.List;
import java.util.Locale;
import lampwright.language.Filling;
import lampwright.language.Said;

/**
 * Why an archive was not brought in, in nobody's language yet.
 *
 * @param parts names and numbers for the places of its phrase
 */
public record ImportTrouble(Why why, List<String> parts) {

  /** Copies the parts. */
  public ImportTrouble {
    parts = List.copyOf(parts);
  }

  /** The reasons. */
  public enum Why {
    /** Somebody stopped it. */
    STOPPED,
    ENDED_WITH_ITS_SERVER,
    /** Who sent it does not belong to the studio any more. */
    NO_MEMBER,
    /** Their role does not cover it. */
    NOT_ALLOWED,
    /** Somebody changed meanwhile what it would change. */
    CHANGED_MEANWHILE,
    PICTURE_TAKEN_AWAY,
    /** A kit would name gear that is not here; its name. */
    KIT_NOT_WHOLE,
    /** How many there would be, and how many at most. */
    TOO_MANY_KITS,
    /** The same. */
    TOO_MUCH_GEAR,
    /** The same. */
    TOO_MANY_LOCATIONS,
    DATABASE_LOST,
    PICTURES_LOST,
    /** A fault of ours before anything was done. */
    NOT_CHECKED,
    /** A fault of ours. */
    NOT_BROUGHT_IN
  }

  static ImportTrouble of(Why why, Object... parts) {
    return new ImportTrouble(why, List.of(parts).stream().map(Object::toString).toList());
  }

  /** What a refusal means to who sent the archive. */
  static ImportTrouble of(Refusal refusal) {
    return of(
        switch (refusal) {
          case Refusal.NotAllowed _ -> Why.NOT_ALLOWED;
          case Refusal.NotFound _, Refusal.NotSignedIn _ -> Why.NO_MEMBER;
          default -> Why.NOT_BROUGHT_IN;
        });
  }

  /** The sentence for who reads it. */
  public Said said() {
    return Said.of(
        "studio.trouble." + why.name().toLowerCase(Locale.ROOT),
        parts.stream().map(Filling::text).toArray(Filling[]::new));
  }
}
