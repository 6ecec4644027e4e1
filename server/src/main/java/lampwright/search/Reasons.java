package lampwright.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lampwright.language.Filling;
import lampwright.language.Said;
import org.apache.lucene.document.Document;
import org.jspecify.annotations.Nullable;

/** Says in plain words which of the wishes a setup grants, and where. */
final class Reasons {

  private static final int LONGEST_QUOTE = 60;

  /** Where a wish is found word by word, no lighter field has stronger evidence. */
  private static final List<TextField> HEAVIEST_FIRST =
      Arrays.stream(TextField.values())
          .sorted(Comparator.comparingInt((TextField field) -> field.times).reversed())
          .toList();

  private static final Comparator<Evidence> STRONGEST_THEN_LONGEST =
      Comparator.comparingDouble(Evidence::weight)
          .thenComparingInt(evidence -> evidence.quote().length());

  private final Words words;

  /** What a setup says at one place that grants a wish. */
  private record Evidence(TextField field, Text text, Found found, Kind kind, double weight) {

    String quote() {
      return found.quote();
    }
  }

  /** What granted a wish in a text, and which words of it exactly. */
  private record Found(String quote, List<MarkedText.Mark> marks) {}

  /**
   * Why a setup was found.
   *
   * @param reasons one for each wish that it grants, in the order of the question
   * @param why the texts that say so, each once, with the words marked
   */
  record Why(List<Said> reasons, List<MarkedText> why) {}

  private enum Kind {
    LITERAL,
    NEAR,
    SPELLED
  }

  /** A text cut into words, with the places of each. */
  private record Cut(List<Words.Word> words, Map<String, List<Words.Word>> byTerm) {}

  /** One text of a setup, which is cut when somebody looks into it. */
  private final class Text {

    private final String text;
    private @Nullable Cut cut;

    Text(String text) {
      this.text = text;
    }

    String text() {
      return text;
    }

    private Cut cut() {
      if (cut == null) {
        List<Words.Word> found = words.of(text);
        Map<String, List<Words.Word>> byTerm = new HashMap<>();
        for (Words.Word word : found) {
          byTerm.computeIfAbsent(word.term(), _ -> new ArrayList<>()).add(word);
        }
        cut = new Cut(found, byTerm);
      }
      return cut;
    }

    Optional<Found> find(Phrase phrase) {
      Map<String, List<Words.Word>> byTerm = cut().byTerm();
      for (Words.Word first : byTerm.getOrDefault(phrase.terms().getFirst(), List.of())) {
        Words.Word last = first;
        List<MarkedText.Mark> marks = new ArrayList<>(mark(first));
        boolean whole = true;
        for (int i = 1; i < phrase.terms().size() && whole; i++) {
          int position = first.position() + phrase.positions().get(i);
          Optional<Words.Word> next =
              byTerm.getOrDefault(phrase.terms().get(i), List.of()).stream()
                  .filter(word -> word.position() == position)
                  .findFirst();
          whole = next.isPresent();
          last = next.orElse(last);
          next.ifPresent(word -> marks.addAll(mark(word)));
        }
        if (whole) {
          return Optional.of(new Found(slice(first.start(), last.end()), marks));
        }
      }
      return Optional.empty();
    }

    Optional<Found> findSlip(String term) {
      return cut().words().stream()
          .filter(word -> Slip.isOneApart(word.term(), term))
          .findFirst()
          .map(word -> new Found(slice(word.start(), word.end()), mark(word)));
    }

    private List<MarkedText.Mark> mark(Words.Word word) {
      int from = Math.clamp(word.start(), 0, text.length());
      int to = Math.clamp(word.end(), from, text.length());
      return from < to ? List.of(new MarkedText.Mark(from, to)) : List.of();
    }

    private String slice(int start, int end) {
      int from = Math.clamp(start, 0, text.length());
      String quote = text.substring(from, Math.clamp(end, from, text.length())).strip();
      return IndexEntry.cut(quote.replaceAll("\\s+", " "), LONGEST_QUOTE);
    }
  }

  Reasons(Words words) {
    this.words = words;
  }

  Why of(List<Wish> wishes, List<QueryPlan.Rarity> rarities, Document setup) {
    Map<TextField, List<Text>> texts = new EnumMap<>(TextField.class);
    for (TextField field : TextField.values()) {
      List<Text> read = new ArrayList<>();
      for (String text : setup.getValues(field.lucene())) {
        read.add(new Text(text));
      }
      texts.put(field, read);
    }
    List<Said> reasons = new ArrayList<>();
    Map<List<Object>, MarkedText> marked = new LinkedHashMap<>();
    for (int i = 0; i < wishes.size(); i++) {
      Wish wish = wishes.get(i);
      Optional<Evidence> evidence = best(wish, rarities.get(i).misspelt(), texts);
      evidence
          .map(best -> sentence(wish, best))
          .filter(reason -> !reasons.contains(reason))
          .ifPresent(reasons::add);
      evidence.ifPresent(
          best ->
              marked.merge(
                  List.of(best.field(), best.text().text()),
                  new MarkedText(best.field().label, best.text().text(), best.found().marks()),
                  (one, other) -> one.and(other.marks())));
    }
    return new Why(reasons, List.copyOf(marked.values()));
  }

  /** Why a setup was found none of whose words grants a wish: it begins so. */
  static Said nearInMeaning(Document setup) {
    String begins =
        Stream.of(TextField.INTENT, TextField.TITLE)
            .flatMap(field -> Arrays.stream(setup.getValues(field.lucene())))
            .filter(text -> !text.isBlank())
            .findFirst()
            .orElse("");
    return Said.of(
        "finding.reason.nearInMeaning",
        Filling.text(IndexEntry.cut(begins.strip().replaceAll("\\s+", " "), LONGEST_QUOTE)));
  }

  private static Optional<Evidence> best(
      Wish wish, boolean misspelt, Map<TextField, List<Text>> texts) {
    List<Evidence> found = new ArrayList<>();
    double strongest = 0;
    for (TextField field : HEAVIEST_FIRST) {
      if (strongest > strength(field)) {
        break;
      }
      for (Text text : texts.getOrDefault(field, List.of())) {
        Optional<Found> literal = text.find(wish.literal());
        if (literal.isPresent()) {
          strongest = strength(field);
          found.add(new Evidence(field, text, literal.get(), Kind.LITERAL, strongest));
        }
        QueryPlan.others(wish, misspelt)
            .forEach(
                (other, weight) ->
                    text.find(other)
                        .ifPresent(
                            here ->
                                found.add(
                                    new Evidence(
                                        field, text, here, Kind.NEAR, weight * field.times))));
        if (misspelt) {
          text.findSlip(wish.literal().terms().getFirst())
              .ifPresent(
                  here -> found.add(new Evidence(field, text, here, Kind.SPELLED, field.times)));
        }
      }
    }
    if (found.isEmpty() && !wish.literal().isOneWord()) {
      findWordsApart(wish.literal(), texts).ifPresent(found::add);
    }
    return found.stream().max(STRONGEST_THEN_LONGEST);
  }

  /** Of a wish that a field grants word by word; any other way is weaker. */
  private static double strength(TextField field) {
    return 10 * field.times;
  }

  /** A phrase whose words stand here and there: the place of the first is told. */
  private static Optional<Evidence> findWordsApart(
      Phrase phrase, Map<TextField, List<Text>> texts) {
    Optional<Evidence> first = Optional.empty();
    for (String term : phrase.terms()) {
      Optional<Evidence> here = Optional.empty();
      for (Map.Entry<TextField, List<Text>> field : texts.entrySet()) {
        for (Text text : field.getValue()) {
          if (here.isEmpty()) {
            here =
                text.find(new Phrase(List.of(term), List.of(0)))
                    .map(found -> new Evidence(field.getKey(), text, found, Kind.NEAR, 1));
          }
        }
      }
      if (here.isEmpty()) {
        return Optional.empty();
      }
      if (first.isEmpty()) {
        first = here;
      }
    }
    return first;
  }

  private static Said sentence(Wish wish, Evidence evidence) {
    Filling field = Said.of("finding.field." + evidence.field().label).asFilling();
    Filling quote = Filling.text(evidence.quote());
    String said = IndexEntry.cut(wish.spoken().replaceAll("\\s+", " "), LONGEST_QUOTE);
    Filling typed = Filling.text(said);
    return switch (evidence.kind()) {
      case LITERAL -> Said.of("finding.reason.literal", field, quote);
      case NEAR -> Said.of("finding.reason.near", field, typed, quote);
      case SPELLED -> Said.of("finding.reason.spelled", field, typed, quote);
    };
  }
}
