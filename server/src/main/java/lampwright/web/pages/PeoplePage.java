package lampwright.web.pages;

import java.util.List;

/**
 * Who belongs to the studio, and what each role may do.
 *
 * @param roles the heads of the table's columns
 * @param permissions one row each
 */
public record PeoplePage(
    Layout layout, List<One> people, List<String> roles, List<Row> permissions) {

  public PeoplePage {
    people = List.copyOf(people);
    roles = List.copyOf(roles);
    permissions = List.copyOf(permissions);
  }

  /** A member. */
  public record One(String name, String role, boolean isMe) {}

  /**
   * What a member may do.
   *
   * @param may for each role
   */
  public record Row(String what, List<Boolean> may) {

    public Row {
      may = List.copyOf(may);
    }
  }
}
