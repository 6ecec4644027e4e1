package lampwright.web.pages;

import java.util.Arrays;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import lampwright.language.Language;
import lampwright.language.Notation;
import lampwright.language.PhraseFiles;
import lampwright.language.Phrases;
import lampwright.language.Preferences;

/** How each person reads pages: the phrases of every language, read once. */
public final class Notations {

  private final Map<Language, Phrases> phrases;

  private Notations(Map<Language, Phrases> phrases) {
    this.phrases = Map.copyOf(phrases);
  }

  /** Reads the files of phrases that are in the program. */
  public static Notations fromClassPath() {
    return new Notations(
        Arrays.stream(Language.values())
            .collect(Collectors.toMap(Function.identity(), PhraseFiles::read)));
  }

  /** The words and figures of who prefers them so. */
  public Notation of(Preferences preferences) {
    return new Notation(
        Objects.requireNonNull(phrases.get(preferences.language())),
        preferences.lengths(),
        preferences.stops());
  }
}
