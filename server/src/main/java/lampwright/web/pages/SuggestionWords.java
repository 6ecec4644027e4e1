package lampwright.web.pages;

import java.util.Arrays;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampwright.search.filter.Trait;
import lampwright.wording.Wording;

/** What the list of suggestions says to a person, as its script reads it from the box. */
public final class SuggestionWords {

  private SuggestionWords() {}

  /** Lines: the list's name, how many there are, then each kind as programs and people call it. */
  public static String of(Wording words) {
    Stream<String> first =
        Stream.of("list", "one", "many", "none").map(key -> words.say("finding.suggest." + key));
    Stream<String> kinds =
        Stream.concat(
            Arrays.stream(Trait.values())
                .map(trait -> trait.label() + "=" + words.say("finding.trait." + trait.name('_'))),
            Stream.of(
                "Mark=" + words.say("finding.suggest.mark"),
                "Setup=" + words.say("finding.suggest.setup")));
    return Stream.concat(first, kinds).collect(Collectors.joining("\n"));
  }
}
