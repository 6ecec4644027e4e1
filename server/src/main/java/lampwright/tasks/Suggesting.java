package lampwright.tasks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import lampwright.people.PersonId;
import lampwright.people.StudioId;
import lampwright.search.MoodFamilies;
import lampwright.search.Question;
import lampwright.search.Search;
import lampwright.search.SearchResult;
import lampwright.search.Suggestions;
import lampwright.search.filter.Filter;
import lampwright.search.filter.Trait;
import lampwright.setup.SetupId;
import lampwright.store.Database;
import lampwright.store.StudioTransaction;

/** Suggests how a search that is being typed may go on, of what its asker may see. */
public final class Suggesting {

  private static final int MOST_TITLES = 3;

  private final Database database;
  private final Search search;
  private final Suggestions suggestions;
  private final MoodFamilies moods = new MoodFamilies();

  public Suggesting(Database database, Search search, Suggestions suggestions) {
    this.database = database;
    this.search = search;
    this.suggestions = suggestions;
  }

  /**
   * At most so many, those of most setups first; setups by their titles come last.
   *
   * @param text of the search as far as it is typed; blank asks for what is used most
   */
  public List<Suggestion> suggest(Caller caller, StudioId studio, String text, int limit) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Sight sight = Sight.ask(in);
          Asked asked =
              new Asked(in, sight, new Suggestions.Asker(studio.text(), !sight.isWhole()), limit);
          List<Suggestion> all =
              text.isBlank()
                  ? mostUsed(asked)
                  : Typing.isInBracket(text)
                      ? inBracket(asked, Typing.ofBracket(text))
                      : words(asked, text);
          return all.stream().limit(limit).toList();
        });
  }

  private record Asked(StudioTransaction in, Sight sight, Suggestions.Asker asker, int limit) {}

  private List<Suggestion> mostUsed(Asked asked) {
    int each = (asked.limit() + 1) / 2;
    Typing nothing = new Typing("", "");
    return Stream.of(Trait.MOOD, Trait.PLACE_KIND)
        .flatMap(trait -> mostUsed(asked, nothing, trait).stream().limit(each))
        .toList();
  }

  private List<Suggestion> mostUsed(Asked asked, Typing cut, Trait trait) {
    Question everything =
        Question.of(asked.asker().studio(), "").withFacets(Set.of(trait)).withLimit(1);
    SearchResult result =
        search.search(asked.asker().onlyForAll() ? everything.onlyForAll() : everything);
    return result instanceof SearchResult.Answer answer
        ? answer.facets().of(trait).stream()
            .map(count -> mark(cut, count.filter(), count.value(), count.count()))
            .toList()
        : List.of();
  }

  private List<Suggestion> words(Asked asked, String text) {
    Map<String, Suggestion> found = new LinkedHashMap<>();
    List<Typing> cuts = Typing.ofWords(text);
    for (Typing cut : cuts) {
      List<Suggestion> here = new ArrayList<>();
      suggestions
          .values(asked.asker(), cut.beginning(), trait -> true, asked.limit())
          .forEach(value -> here.add(mark(cut, value)));
      here.addAll(authors(asked, cut, cut.beginning()));
      String key = Filter.key(cut.beginning());
      here.sort(
          Comparator.comparing((Suggestion one) -> !Filter.key(one.words()).startsWith(key))
              .thenComparing(Suggesting::count, Comparator.reverseOrder()));
      here.forEach(one -> found.putIfAbsent(one.kind() + one.words(), one));
    }
    addNeighbours(asked, cuts, found);
    List<Suggestion> titles =
        cuts.isEmpty() ? List.of() : titles(asked, cuts.getFirst().beginning());
    int room = Math.max(0, asked.limit() - titles.size());
    return Stream.concat(found.values().stream().limit(room), titles.stream()).toList();
  }

  private static long count(Suggestion suggestion) {
    return suggestion instanceof Suggestion.Text text ? text.count().orElse(0) : 0;
  }

  private void addNeighbours(Asked asked, List<Typing> cuts, Map<String, Suggestion> found) {
    for (Typing cut : cuts) {
      for (String near : moods.neighbours(cut.beginning())) {
        for (Suggestions.Value value : suggestions.exactly(asked.asker(), Trait.MOOD, near)) {
          Suggestion one = mark(cut, value);
          found.putIfAbsent(one.kind() + one.words(), one);
        }
      }
    }
  }

  private List<Suggestion> titles(Asked asked, String beginning) {
    List<SetupId> ids =
        suggestions.titles(asked.asker(), beginning, MOST_TITLES).stream()
            .map(SetupId::new)
            .toList();
    // Read again under the database's own locks, and only where something was found.
    Map<SetupId, Catalogued> living =
        ids.isEmpty() ? Map.of() : Cataloguing.listOf(asked.in(), asked.sight(), ids);
    return ids.stream()
        .flatMap(id -> Optional.ofNullable(living.get(id)).stream())
        .<Suggestion>map(setup -> new Suggestion.Setup(setup.document().title(), setup.id().text()))
        .toList();
  }

  private List<Suggestion> authors(Asked asked, Typing cut, String beginning) {
    Map<PersonId, String> names = Cataloguing.names(asked.in());
    Authors authors = new Authors(names);
    String key = Filter.key(beginning);
    List<Suggestion> found = new ArrayList<>();
    for (String name : new TreeSet<>(names.values())) {
      if (Arrays.stream(Filter.key(name).split(" ")).anyMatch(word -> word.startsWith(key))
          || Filter.key(name).startsWith(key)) {
        Filter filter = Filter.OneOf.of(Trait.AUTHOR, name);
        long count = suggestions.count(asked.asker(), authors.toIds(filter));
        if (count > 0) {
          found.add(mark(cut, filter, name, count));
        }
      }
    }
    return found;
  }

  private List<Suggestion> inBracket(Asked asked, Typing cut) {
    String typed = cut.beginning();
    String key = Filter.key(typed);
    String start = typed.replace('_', ' ').toLowerCase(Locale.ROOT);
    Optional<Trait> named =
        Arrays.stream(Trait.values())
            .filter(trait -> trait.kind() == Trait.Kind.WORDS)
            .filter(trait -> (start + " ").startsWith(trait.word() + " "))
            .max(Comparator.comparingInt(trait -> trait.word().length()));
    List<Suggestion> found = new ArrayList<>();
    Arrays.stream(Trait.values())
        .filter(trait -> SuggestedMarks.begins(trait, key))
        .map(
            trait ->
                new Suggestion.Text(
                    trait.word(), "Mark", cut.with("[" + trait.word() + " "), OptionalLong.empty()))
        .forEach(found::add);
    if (named.isPresent()) {
      String value = typed.substring(named.get().word().length()).strip();
      if (named.get() == Trait.AUTHOR) {
        found.addAll(authors(asked, cut, value));
      } else if (value.isEmpty()) {
        found.addAll(mostUsed(asked, cut, named.get()));
      } else {
        suggestions
            .values(asked.asker(), value, trait -> trait == named.get(), asked.limit())
            .forEach(one -> found.add(mark(cut, one)));
      }
    }
    if (found.isEmpty()) {
      suggestions
          .values(asked.asker(), typed, trait -> true, asked.limit())
          .forEach(one -> found.add(mark(cut, one)));
    }
    return found;
  }

  private static Suggestion mark(Typing cut, Suggestions.Value value) {
    return mark(cut, Filter.OneOf.of(value.trait(), value.value()), value.value(), value.count());
  }

  private static Suggestion mark(Typing cut, Filter filter, String words, long count) {
    return new Suggestion.Text(
        words,
        filter.trait().label(),
        cut.with("[" + filter.bracket() + "]"),
        OptionalLong.of(count));
  }
}
