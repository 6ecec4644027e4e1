package lampwright.web.pages;

import java.util.List;

/**
 * Where one adds a picture, or says something else of one.
 *
 * @param revision that was looked at; 0 for a new one
 * @param kinds that this member may choose
 * @param mayShowPlace whether the file may be given out with where it was taken
 */
public record PictureForm(
    String action,
    String csrfToken,
    int revision,
    List<Kind> kinds,
    String caption,
    boolean mayShowPlace,
    FormErrors errors) {

  public static final String FILE = "file";
  public static final String KIND = "kind";
  public static final String CAPTION = "caption";
  public static final String MAY_SHOW_PLACE = "may_show_place";
  public static final String REVISION = "revision";

  /** One kind of picture. */
  public record Kind(String word, String words, boolean chosen) {}

  public PictureForm {
    kinds = List.copyOf(kinds);
  }
}
