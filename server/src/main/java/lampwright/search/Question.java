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
 * @param standing which setups are looked at at all
 */
public record Question(
    String studio,
    String text,
    Set<String> moods,
    Optional<String> place,
    Optional<String> placeKind,
    int limit,
    Optional<String> cursor,
    Optional<Set<String>> onlyThese,
    StandingWanted standing) {

  /** The longest page. */
  public static final int LARGEST_LIMIT = 100;

  /** Characters that are read; more says nothing about what is wanted. */
  private static final int LONGEST_TEXT = 2_000;

  /**
   * By where setups stand.
   *
   * @param state the word for it, as {@link IndexEntry#state}; empty: any
   * @param archived only those that are put by, or only those that are not
   * @param onlyForAll only those that everybody may see: others are not even counted, and no word
   *     of theirs counts in a score
   */
  public record StandingWanted(Optional<String> state, boolean archived, boolean onlyForAll) {

    /** Whatever is not put by. */
    public static final StandingWanted ANY = new StandingWanted(Optional.empty(), false, false);
  }

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
        Optional.empty(),
        StandingWanted.ANY);
  }

  public Question withMoods(Set<String> words) {
    return new Question(studio, text, words, place, placeKind, limit, cursor, onlyThese, standing);
  }

  public Question withPlace(String name) {
    return new Question(
        studio, text, moods, Optional.of(name), placeKind, limit, cursor, onlyThese, standing);
  }

  public Question withPlaceKind(String kind) {
    return new Question(
        studio, text, moods, place, Optional.of(kind), limit, cursor, onlyThese, standing);
  }

  public Question withLimit(int hits) {
    return new Question(studio, text, moods, place, placeKind, hits, cursor, onlyThese, standing);
  }

  public Question withCursor(String start) {
    return new Question(
        studio, text, moods, place, placeKind, limit, Optional.of(start), onlyThese, standing);
  }

  public Question withOnlyThese(Set<String> setups) {
    return new Question(
        studio, text, moods, place, placeKind, limit, cursor, Optional.of(setups), standing);
  }

  public Question withStanding(StandingWanted wanted) {
    return new Question(studio, text, moods, place, placeKind, limit, cursor, onlyThese, wanted);
  }

  /** The same question by somebody who sees only what all may see. */
  public Question onlyForAll() {
    return withStanding(new StandingWanted(standing.state(), standing.archived(), true));
  }
}
