package lampwright.benchmarks.relevance;

import java.util.List;
import lampwright.meaning.Meanings;
import lampwright.search.Question;
import lampwright.search.Search;
import lampwright.search.SearchResult;
import lampwright.search.SetupIndex;

/** The product's search, with or without what texts mean. */
record Ours(String name, Search search) implements Ranker {

  static Ours of(String name, SetupIndex index, Meanings meanings) {
    return new Ours(name, new Search(index, meanings));
  }

  @Override
  public List<String> rank(String question) {
    SearchResult result =
        search.search(Question.of(OwnSet.STUDIO, question).withLimit(Question.LARGEST_LIMIT));
    return switch (result) {
      case SearchResult.Answer answer ->
          answer.items().stream().map(SearchResult.Hit::setup).toList();
      case SearchResult.UnreadableCursor _ -> List.of();
    };
  }
}
