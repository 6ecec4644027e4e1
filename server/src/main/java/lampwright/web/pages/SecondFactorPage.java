package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import lampwright.drawing.Svg;

/**
 * A person's second factor.
 *
 * @param email what the person signs in by: a keeper of passwords finds theirs by it
 * @param accountPath where it leads back to
 * @param offer the secret that waits for its first code; empty where none does
 * @param since when it was switched on; empty where it is off
 * @param recoveryCodesLeft how many are still good
 * @param newRecoveryCodes shown this once, where it was just switched on or they were made anew
 * @param wereMadeAnew whether they took the place of others
 */
public record SecondFactorPage(
    Layout layout,
    String csrfToken,
    String email,
    String accountPath,
    Optional<Offered> offer,
    String since,
    int recoveryCodesLeft,
    List<String> newRecoveryCodes,
    boolean wereMadeAnew,
    FormErrors errors) {

  public static final String PASSWORD = "password";
  public static final String CODE = "code";

  /** Before the names of the fields by which recovery codes are made anew. */
  public static final String ANEW = "anew-";

  public SecondFactorPage {
    newRecoveryCodes = List.copyOf(newRecoveryCodes);
  }

  /**
   * A secret for a device to take.
   *
   * @param code its address, to be read by a camera
   * @param groups the secret, to be typed in
   * @param address the same as a link, for a device that shows this page itself
   */
  public record Offered(Svg code, List<String> groups, String address) {

    public Offered {
      groups = List.copyOf(groups);
    }

    /** No record's text may carry a secret into a log. */
    @Override
    public String toString() {
      return "Offered";
    }
  }

  /** No record's text may carry a secret into a log. */
  @Override
  public String toString() {
    return "SecondFactorPage";
  }
}
