package lampwright.people;

import java.util.Optional;

/**
 * What those are called in a studio who do not belong to it. The words are English, as programs,
 * searches and archives have them; pages say them in their reader's language.
 */
public final class FormerName {

  /** Whoever is not named any more. */
  public static final String UNNAMED = "a former member";

  private static final String FROM_AN_ARCHIVE = " (from an archive)";

  private FormerName() {}

  /** Of whom nothing is known but the name that an archive told. */
  public static String archived(String name) {
    return name + FROM_AN_ARCHIVE;
  }

  /** The name that an archive told, where {@link #archived} made this of it. */
  public static Optional<String> findArchived(String called) {
    return called.endsWith(FROM_AN_ARCHIVE)
        ? Optional.of(called.substring(0, called.length() - FROM_AN_ARCHIVE.length()))
        : Optional.empty();
  }
}
