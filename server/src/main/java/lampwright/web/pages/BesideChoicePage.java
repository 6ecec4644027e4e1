package lampwright.web.pages;

import java.util.List;

/**
 * Where one chooses the setup that shall stand beside another.
 *
 * @param action where the search for one is sent to
 * @param asked the words of that search; may be empty
 * @param kin what it was made from and what was made from it; may be empty
 * @param found by the words; without words those whose light is most alike
 */
public record BesideChoicePage(
    Layout layout,
    String title,
    String setupPath,
    String action,
    String asked,
    List<Link> kin,
    List<Choice> found) {

  public static final String WITH = "with";
  public static final String WORDS = "q";

  public BesideChoicePage {
    kin = List.copyOf(kin);
    found = List.copyOf(found);
  }

  /**
   * One that may be chosen.
   *
   * @param placeAndDate where and when it was; may be empty
   * @param reasons why it was found, in words; may be empty
   */
  public record Choice(String title, String path, String placeAndDate, String reasons) {}
}
