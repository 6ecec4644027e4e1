package lampwright.search;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampwright.meaning.Meaning;
import lampwright.search.filter.Trait;
import lampwright.search.filter.Traits;

/**
 * What the index knows of one setup.
 *
 * <p>Texts longer than the index can use are cut, so that no document of a member can stop the
 * index.
 *
 * @param studio the owner; no answer ever crosses it
 * @param setup the setup's id
 * @param revision the revision that the texts were taken from; an older one never replaces a newer
 * @param changedAt when the setup changed last; what is listed without a text comes newest first
 * @param title the setup's title
 * @param intent what the picture should feel like
 * @param moods mood words, in lower case, spaces collapsed, each once
 * @param genre the kind of picture
 * @param placeName the location's name
 * @param placeKind the kind of place
 * @param written what people wrote elsewhere: reasons of lights, outcome, notes
 * @param gear names of heads, modifiers, gels, bodies, lenses
 * @param roles what the lights are for, in lower case, each once
 * @param lightCount number of lights
 * @param state the word for its state, as searches filter by it
 * @param archived whether it is put by
 * @param forAll whether those may see it who do not see everything
 * @param meaning of its text as a whole, where it is known by now
 * @param traits what it is filtered by and counted by; of the words and numbers above, those too
 * @param light what others are compared with it by
 * @param picture the same of its finished picture
 */
public record IndexEntry(
    String studio,
    String setup,
    int revision,
    Instant changedAt,
    String title,
    String intent,
    List<String> moods,
    Optional<String> genre,
    Optional<String> placeName,
    Optional<String> placeKind,
    List<String> written,
    List<String> gear,
    List<String> roles,
    int lightCount,
    String state,
    boolean archived,
    boolean forAll,
    Optional<Meaning> meaning,
    Traits traits,
    Optional<Packed> light,
    Optional<Packed> picture) {

  /** Characters of an id. */
  public static final int LONGEST_ID = 200;

  private static final int LONGEST_NAME = 200;
  private static final int LONGEST_TEXT = 20_000;
  private static final int MOST_TEXTS = 500;

  public IndexEntry {
    requireId("Studio", studio);
    requireId("Setup", setup);
    requireId("State", state);
    if (revision < 0) {
      throw new IllegalArgumentException("Revision (" + revision + ") must not be negative.");
    }
    title = cut(title.strip(), LONGEST_TEXT);
    intent = cut(intent, LONGEST_TEXT);
    moods =
        moods.stream()
            .map(IndexEntry::mood)
            .filter(mood -> !mood.isEmpty())
            .distinct()
            .limit(MOST_TEXTS)
            .toList();
    genre = name(genre);
    placeName = name(placeName);
    placeKind = name(placeKind);
    written = texts(written);
    gear = texts(gear);
    roles = texts(roles).stream().map(IndexEntry::role).distinct().toList();
  }

  /**
   * What the picture is about, as one text whose meaning can be told; the weightiest first, because
   * a model reads the beginning only.
   */
  public String about() {
    return Stream.of(
            Stream.of(title, intent, String.join(", ", moods)),
            placeName.stream(),
            placeKind.stream(),
            genre.stream(),
            written.stream())
        .flatMap(texts -> texts)
        .filter(text -> !text.isBlank())
        .map(String::strip)
        .collect(Collectors.joining(". "));
  }

  /** The same with what its text means. */
  public IndexEntry with(Meaning meaningNow) {
    return new IndexEntry(
        studio,
        setup,
        revision,
        changedAt,
        title,
        intent,
        moods,
        genre,
        placeName,
        placeKind,
        written,
        gear,
        roles,
        lightCount,
        state,
        archived,
        forAll,
        Optional.of(meaningNow),
        traits,
        light,
        picture);
  }

  /** Starts an entry with what every setup has. */
  public static Builder of(String studio, String setup, int revision, String title) {
    return new Builder(studio, setup, revision, title);
  }

  /** A mood word as the index counts it: lower case, spaces collapsed. */
  static String mood(String written) {
    return cut(written.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT), LONGEST_NAME);
  }

  private static String role(String name) {
    return name.strip().replace('_', ' ').toLowerCase(Locale.ROOT);
  }

  static void requireId(String name, String id) {
    if (id.isBlank() || id.length() > LONGEST_ID || id.indexOf('\0') >= 0) {
      throw new IllegalArgumentException(
          name + " id (" + id.length() + " characters) must have 1 to " + LONGEST_ID + ".");
    }
  }

  static String cut(String text, int longest) {
    if (text.length() <= longest) {
      return text;
    }
    boolean splitsPair = Character.isHighSurrogate(text.charAt(longest - 1));
    return text.substring(0, splitsPair ? longest - 1 : longest);
  }

  private static Optional<String> name(Optional<String> written) {
    return written.map(text -> cut(text.strip(), LONGEST_NAME)).filter(text -> !text.isEmpty());
  }

  private static List<String> texts(List<String> written) {
    return written.stream()
        .filter(text -> !text.isBlank())
        .map(text -> cut(text, LONGEST_TEXT))
        .limit(MOST_TEXTS)
        .toList();
  }

  /** Gathers an entry; what is not told stays empty. */
  public static final class Builder {
    private final String studio;
    private final String setup;
    private final int revision;
    private final String title;
    private Instant changedAt = Instant.EPOCH;
    private String intent = "";
    private List<String> moods = List.of();
    private Optional<String> genre = Optional.empty();
    private Optional<String> placeName = Optional.empty();
    private Optional<String> placeKind = Optional.empty();
    private final List<String> written = new ArrayList<>();
    private final List<String> gear = new ArrayList<>();
    private List<String> roles = List.of();
    private int lightCount;
    private String state = "proven";
    private boolean archived;
    private boolean forAll = true;
    private Optional<Meaning> meaning = Optional.empty();
    private Traits traits = Traits.NONE;
    private Optional<Packed> light = Optional.empty();
    private Optional<Packed> picture = Optional.empty();

    private Builder(String studio, String setup, int revision, String title) {
      this.studio = studio;
      this.setup = setup;
      this.revision = revision;
      this.title = title;
    }

    public Builder changedAt(Instant when) {
      changedAt = when;
      return this;
    }

    public Builder intent(String text) {
      intent = text;
      return this;
    }

    public Builder moods(List<String> words) {
      moods = words;
      return this;
    }

    public Builder genre(String name) {
      genre = Optional.of(name);
      return this;
    }

    public Builder placeName(String name) {
      placeName = Optional.of(name);
      return this;
    }

    public Builder placeKind(String kind) {
      placeKind = Optional.of(kind);
      return this;
    }

    /** Adds reasons, an outcome, notes: anything that people wrote. */
    public Builder written(List<String> texts) {
      written.addAll(texts);
      return this;
    }

    public Builder gear(List<String> names) {
      gear.addAll(names);
      return this;
    }

    public Builder roles(List<String> names) {
      roles = names;
      return this;
    }

    public Builder lightCount(int lights) {
      lightCount = lights;
      return this;
    }

    /** Where it stands; proven, not archived and for all to see where nothing is told. */
    public Builder standing(String word, boolean isArchived, boolean isForAll) {
      state = word;
      archived = isArchived;
      forAll = isForAll;
      return this;
    }

    public Builder meaning(Optional<Meaning> ofAll) {
      meaning = ofAll;
      return this;
    }

    /** What else it is filtered by; what the other methods take need not be told again. */
    public Builder traits(Traits others) {
      traits = others;
      return this;
    }

    /** What others are compared with it by. */
    public Builder light(Packed packed) {
      light = Optional.of(packed);
      return this;
    }

    /** The same of its finished picture. */
    public Builder picture(Packed packed) {
      picture = Optional.of(packed);
      return this;
    }

    private Traits allTraits() {
      Traits.Builder all = Traits.builder();
      all.words(Trait.MOOD, moods.stream().map(IndexEntry::mood).toList());
      all.words(Trait.GENRE, genre.stream().toList());
      all.words(Trait.PLACE, placeName.stream().toList());
      all.words(Trait.PLACE_KIND, placeKind.stream().toList());
      all.words(Trait.STATE, state);
      all.words(Trait.GEAR, gear);
      all.words(Trait.ROLE, roles.stream().map(IndexEntry::role).toList());
      if (lightCount > 0) {
        all.number(Trait.LIGHTS, lightCount);
      }
      traits.words().forEach(all::words);
      traits.numbers().forEach(all::number);
      traits.point().ifPresent(all::point);
      return all.build();
    }

    public IndexEntry build() {
      return new IndexEntry(
          studio,
          setup,
          revision,
          changedAt,
          title,
          intent,
          moods,
          genre,
          placeName,
          placeKind,
          written,
          gear,
          roles,
          lightCount,
          state,
          archived,
          forAll,
          meaning,
          allTraits(),
          light,
          picture);
    }
  }
}
