package lampwright.tasks;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lampwright.document.Problem;

/** Who somebody wants to be, who has no account yet. */
public record NewAccount(String name, String email, String password) {

  /** The most characters of a name, a person's or a studio's. */
  public static final int LONGEST_NAME = 200;

  /** The most characters of an e-mail address. */
  public static final int LONGEST_EMAIL = 320;

  public NewAccount {
    name = name.strip();
    email = email.strip().toLowerCase(Locale.ROOT);
  }

  /** No record's text may carry a password into a log. */
  @Override
  public String toString() {
    return "NewAccount";
  }

  /**
   * What is wrong with it.
   *
   * @param studio the name of the studio that it begins in
   */
  List<Problem> problems(String studio, Passwords passwords) {
    List<Problem> problems = new ArrayList<>();
    bounded(problems, "/name", "Your name", name, LONGEST_NAME);
    bounded(problems, "/email", "E-mail", email, LONGEST_EMAIL);
    if (!email.isEmpty() && !email.matches("[^@\\s]+@[^@\\s]+")) {
      problems.add(
          new Problem(
              "/email", "E-mail (%s) must have one @ with words around it.".formatted(email)));
    }
    if (DemoStudio.EMAILS.contains(email)) {
      problems.add(new Problem("/email", "E-mail is the demo's own. Take another."));
    }
    passwords
        .findFault(password, email, name, studio)
        .ifPresent(fault -> problems.add(new Problem("/password", fault)));
    return problems;
  }

  static void bounded(
      List<Problem> problems, String pointer, String label, String text, int longest) {
    if (text.isEmpty()) {
      problems.add(new Problem(pointer, label + " is missing. Type it in."));
    } else if (text.length() > longest) {
      problems.add(
          new Problem(
              pointer,
              "%s (%d characters) must have at most %d. Shorten it."
                  .formatted(label, text.length(), longest)));
    }
  }
}
