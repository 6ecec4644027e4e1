package lampwright.web.pages;

import java.util.List;
import java.util.Optional;

/**
 * What an adaptation is asked for, as a form whose answer has an address of its own.
 *
 * @param action the address that answers
 * @param common the few fields that nearly everybody wants
 * @param groups the rest, folded
 * @param kept what the address says beside the fields, sent along unseen
 * @param errors what is wrong with what was sent
 */
public record WishesForm(
    String action, List<Field> common, List<Group> groups, List<Kept> kept, FormErrors errors) {

  public WishesForm {
    common = List.copyOf(common);
    groups = List.copyOf(groups);
    kept = List.copyOf(kept);
  }

  /**
   * Fields of one subject.
   *
   * @param isUsed whether one of them says something, so that it stands open
   */
  public record Group(String title, String hint, boolean isUsed, List<Field> fields) {
    public Group {
      fields = List.copyOf(fields);
    }
  }

  /** How a field is filled in. */
  public enum Kind {
    NUMBER,
    TEXT,
    DATE,
    TIME_OF_DAY,
    TICK,
    CHOICE
  }

  /**
   * One field.
   *
   * @param value as it was sent; of a tick what it sends
   * @param unit beside it; may be empty
   * @param usual what is taken where it is left empty; may be empty
   * @param ticked of a tick
   * @param choices of a choice
   */
  public record Field(
      String id,
      String name,
      String label,
      Kind kind,
      String value,
      String unit,
      String usual,
      boolean ticked,
      List<Choice> choices,
      Optional<String> error) {
    public Field {
      choices = List.copyOf(choices);
    }
  }

  /** One of a choice. */
  public record Choice(String value, String words, boolean chosen) {}

  /** A name and its value. */
  public record Kept(String name, String value) {}
}
