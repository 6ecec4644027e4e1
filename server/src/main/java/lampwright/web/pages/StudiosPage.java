package lampwright.web.pages;

import java.util.List;

/**
 * The studios that one belongs to.
 *
 * @param mayFound whether one may found another
 */
public record StudiosPage(
    Layout layout, String csrfToken, List<One> studios, boolean mayFound, FormErrors errors) {

  public static final String PATH = "/studios";
  public static final String NAME = "name";
  public static final String REVISION = "revision";

  public StudiosPage {
    studios = List.copyOf(studios);
  }

  /**
   * One of them.
   *
   * @param role what one is there, in words
   * @param namePath where another name for it is sent; empty for who may not
   * @param revision of its name
   */
  public record One(String name, String path, String role, String namePath, int revision) {}
}
