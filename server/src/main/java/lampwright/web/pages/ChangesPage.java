package lampwright.web.pages;

import java.util.List;
import java.util.Optional;

/**
 * What differs between two revisions, as one would tell a colleague.
 *
 * @param historyPath back to all revisions
 * @param between "Revision 3 against revision 1"
 * @param groups of sentences; none where both say the same
 * @param overlay both on one plan; absent where nothing moved
 */
public record ChangesPage(
    Layout layout,
    String title,
    String historyPath,
    String between,
    List<Group> groups,
    Optional<DrawingView> overlay) {

  public ChangesPage {
    groups = List.copyOf(groups);
  }

  /** The sentences about one part of the setup. */
  public record Group(String name, List<String> sentences) {

    public Group {
      sentences = List.copyOf(sentences);
    }
  }
}
