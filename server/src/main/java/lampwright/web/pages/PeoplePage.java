package lampwright.web.pages;

import java.util.List;
import java.util.Optional;

/**
 * Who belongs to the studio, and what each role may do.
 *
 * @param roles the heads of the table's columns
 * @param permissions one row each
 * @param managing what an owner does here; empty for everybody else
 */
public record PeoplePage(
    Layout layout,
    List<One> people,
    List<String> roles,
    List<Row> permissions,
    Optional<Managing> managing) {

  public static final String ROLE = "role";
  public static final String REVISION = "revision";
  public static final String MEANT_FOR = "meant_for";
  public static final String DAYS = "days";

  public PeoplePage {
    people = List.copyOf(people);
    roles = List.copyOf(roles);
    permissions = List.copyOf(permissions);
  }

  /**
   * A member.
   *
   * @param role in words
   * @param word the role as forms send it
   * @param path where what is done about them posts to
   */
  public record One(
      String name, String role, boolean isMe, String word, int revision, String path) {}

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

  /** A role to choose. */
  public record Choice(String word, String label) {}

  /** An open invitation. */
  public record Open(String meantFor, String role, String until, String path) {}

  /** A link that is shown this once. */
  public record Handed(String label, String address) {}

  /**
   * What an owner does here.
   *
   * @param path where an invitation is made
   * @param handed the link that was just made
   */
  public record Managing(
      String csrfToken,
      String auditPath,
      String path,
      List<Choice> choices,
      List<Open> open,
      Optional<Handed> handed,
      String meantFor,
      String days,
      FormErrors errors) {

    public Managing {
      choices = List.copyOf(choices);
      open = List.copyOf(open);
    }
  }
}
