package lampwright.web.api;

import java.util.List;
import lampwright.search.Instead;
import lampwright.search.filter.Filter;

/**
 * Another search that finds something where one found nothing.
 *
 * @param words what there is none of, and what there is
 * @param q the other search's words
 * @param filters all of its filters, as brackets have them
 */
record InsteadJson(String words, String q, List<String> filters, long total) {

  static InsteadJson of(Instead instead) {
    return new InsteadJson(
        instead.words(),
        instead.text(),
        instead.filters().stream().map(Filter::bracket).toList(),
        instead.total());
  }
}
