package lampwright.web.pages;

import java.util.List;

/**
 * The question before somebody leaves for good.
 *
 * @param action where the form posts to
 * @param csrfToken what the form must carry
 * @param name what others call the person now
 * @param names what they chose for their name; empty as long as they chose nothing
 * @param studios what they belong to, with their role
 * @param backPath where they change their mind
 */
public record LeavingQuestionPage(
    Layout layout,
    String action,
    String csrfToken,
    String name,
    String names,
    List<String> studios,
    String backPath,
    FormErrors errors) {

  public static final String PASSWORD = "password";
  public static final String NAMES = "names";
  public static final String KEEP = "keep";
  public static final String NAMELESS = "nameless";

  public LeavingQuestionPage {
    studios = List.copyOf(studios);
  }
}
