package lampwright.tasks;

import java.util.Optional;

/**
 * How somebody comes who wants to sign in, or to prove again who they are.
 *
 * @param address the network address that it is tried from
 * @param device what their browser or program calls itself; may be empty
 * @param cameWith the secret of the session that the browser came with, good or not
 * @param knownBy the secret that a browser keeps in which somebody has signed in before
 */
public record Visit(
    String address, String device, Optional<String> cameWith, Optional<String> knownBy) {

  private static final int LONGEST_DEVICE = 200;

  public Visit {
    device = device.replaceAll("\\p{C}+", " ").strip();
    if (device.length() > LONGEST_DEVICE) {
      device = device.substring(0, LONGEST_DEVICE);
    }
  }

  /** Of somebody of whom only the address is known. */
  public static Visit from(String address) {
    return new Visit(address, "", Optional.empty(), Optional.empty());
  }

  /** No record's text may carry a secret into a log. */
  @Override
  public String toString() {
    return "Visit";
  }
}
