package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import lampwright.drawing.FlipBook;

/** The words of the trade, explained, group by group. */
public record GlossaryPage(Layout layout, List<Group> groups) {

  public GlossaryPage {
    groups = List.copyOf(groups);
  }

  /** Some terms and what they are about; the anchor leads to it. */
  public record Group(String anchor, String name, List<Entry> entries) {

    public Group {
      entries = List.copyOf(entries);
    }
  }

  /**
   * A term.
   *
   * @param anchor leads to it
   * @param text what it means, in one to three sentences
   * @param here how it stands in this program
   * @param see the terms that its reader may want next
   * @param book the drawing that shows it
   */
  public record Entry(
      String anchor,
      String name,
      String text,
      String here,
      List<Link> see,
      Optional<FlipBook> book) {

    public Entry {
      see = List.copyOf(see);
    }
  }
}
