package lampwright.web.pages;

import java.util.List;
import lampwright.wording.Figure;

/**
 * How flash and ambient hang together on one exposure.
 *
 * @param theme the rule, in a sentence
 * @param balance how they stand; may be empty
 * @param dials what a stop on each dial does
 * @param missing what is missing for more; may be empty
 */
public record DialsInShort(String theme, List<Figure> balance, FiguresTable dials, String missing) {

  public DialsInShort {
    balance = List.copyOf(balance);
  }
}
