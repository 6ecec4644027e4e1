package lampwright.search;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What somebody wants to find.
 *
 * @param studio the studio that is searched; always applied
 * @param text words and "phrases in quotes"; blank lists everything, newest change first
 * @param moods a setup must have one of them; empty: any
 * @param place the location's name, as written
 * @param placeKind the kind of place, as written
 * @param limit 1 to 100 hits a page
 * @param cursor where the page starts: {@link SearchResult.Answer#next} of the page before
 * @param onlyThese only setups with these ids, for what was decided elsewhere
 */
public record Question(
    String studio,
    String text,
    Set<String> moods,
    Optional<String> place,
    Optional<String> placeKind,
    int limit,
    Optional<String> cursor,
    Optional<Set<String>> onlyThese) {

  /** The longest page. */
  public static final int LARGEST_LIMIT = 100;

  /** Characters that are read; more says nothing about what is wanted. */
  private static final int LONGEST_TEXT = 2_000;

  public Question {
    IndexEntry.requireId("Studio", studio);
    if (limit < 1 || limit > LARGEST_LIMIT) {
      throw new IllegalArgumentException(
          "Limit (" + limit + ") must be 1 to " + LARGEST_LIMIT + ". Maybe 20?");
    }
    text = IndexEntry.cut(text, LONGEST_TEXT);
    moods = moods.stream().map(IndexEntry::mood).collect(Collectors.toUnmodifiableSet());
    onlyThese = onlyThese.map(Set::copyOf);
  }

  /** A question with nothing but a text, for a first page of 20. */
  public static Question of(String studio, String text) {
    return new Question(
        studio,
        text,
        Set.of(),
        Optional.empty(),
        Optional.empty(),
        20,
        Optional.empty(),
        Optional.empty());
  }

  public Question withMoods(Set<String> words) {
    return new Question(studio, text, words, place, placeKind, limit, cursor, onlyThese);
  }

  public Question withPlace(String name) {
    return new Question(
        studio, text, moods, Optional.of(name), placeKind, limit, cursor, onlyThese);
  }

  public Question withPlaceKind(String kind) {
    return new Question(studio, text, moods, place, Optional.of(kind), limit, cursor, onlyThese);
  }

  public Question withLimit(int hits) {
    return new Question(studio, text, moods, place, placeKind, hits, cursor, onlyThese);
  }

  public Question withCursor(String start) {
    return new Question(
        studio, text, moods, place, placeKind, limit, Optional.of(start), onlyThese);
  }

  public Question withOnlyThese(Set<String> setups) {
    return new Question(studio, text, moods, place, placeKind, limit, cursor, Optional.of(setups));
  }
}
