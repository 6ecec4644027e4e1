package lampwright.web.pages;

/**
 * Where a studio is taken out as an archive, and where an archive comes in.
 *
 * @param takeOutPath to the archive; empty for who may not take the studio out
 * @param indexPath to the page of the search index; empty for who may not look after it
 * @param bringIn the form; its action is empty for who may not bring anything in
 * @param errors why the archive that was sent was not taken
 */
public record ArchivePage(
    Layout layout, String takeOutPath, String indexPath, BringIn bringIn, FormErrors errors) {

  static final String FILE = "file";
  static final String CLASHES = "clashes";

  /**
   * The form with the file.
   *
   * @param largest the most that an archive may have ("2 GB")
   */
  public record BringIn(String action, String csrfToken, String largest) {}
}
