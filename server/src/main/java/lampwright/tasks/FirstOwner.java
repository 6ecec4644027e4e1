package lampwright.tasks;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lampwright.document.Problem;
import lampwright.people.Ids;
import lampwright.people.Person;
import lampwright.people.PersonId;
import lampwright.people.SecretHash;
import lampwright.people.StudioId;
import lampwright.store.AnonymousTransaction;
import lampwright.store.Database;
import lampwright.store.FirstStartLinks;
import lampwright.store.Members;
import lampwright.store.People;

/**
 * How an empty server gets its first studio and owner: from the settings, or by a link that works
 * once. The demo's members do not count; they own nothing but the demo.
 */
public final class FirstOwner {

  private static final Duration LINK_LASTS = Duration.ofHours(24);

  private final Database database;
  private final Ids ids;
  private final Passwords passwords;
  private final SigningIn signingIn;

  public FirstOwner(Database database, Ids ids, Passwords passwords, SigningIn signingIn) {
    this.database = database;
    this.ids = ids;
    this.passwords = passwords;
    this.signingIn = signingIn;
  }

  /** Who somebody wants to be, and what their studio is called. */
  public record Wish(String studio, String name, String email, String password) {

    public Wish {
      studio = studio.strip();
      name = name.strip();
      email = email.strip().toLowerCase(Locale.ROOT);
    }

    /** No record's text may carry a password into a log. */
    @Override
    public String toString() {
      return "Wish[" + studio + "]";
    }

    private List<Problem> problems(Passwords passwords) {
      List<Problem> problems = new ArrayList<>();
      NewAccount.bounded(
          problems, "/studio", "Name of the studio", studio, NewAccount.LONGEST_NAME);
      problems.addAll(new NewAccount(name, email, password).problems(studio, passwords));
      return problems;
    }
  }

  /** Whether the server has nobody in it yet. */
  public boolean isMissing() {
    return database.anonymous(FirstOwner::isMissing);
  }

  private static boolean isMissing(AnonymousTransaction in) {
    return new People(in).isNobodyBut(DemoStudio.EMAILS);
  }

  /**
   * Makes the owner whom the settings name, where the server has nobody in it yet.
   *
   * @throws Refused when the wish has a problem
   */
  public void ensure(Wish wish) {
    if (isMissing()) {
      String hash = hash(wish);
      database.anonymous(
          in -> isMissing(in) ? Optional.of(create(in, wish, hash)) : Optional.empty());
    }
  }

  /** Makes a link's secret; the link works once and for a day. */
  public String invite() {
    String secret = ids.nextSecret();
    database.anonymous(
        in -> {
          new FirstStartLinks(in).issue(SecretHash.of(secret), in.now().plus(LINK_LASTS));
          return secret;
        });
    return secret;
  }

  /**
   * Lets a link's bearer see the form.
   *
   * @throws Refused when the link does not work, or no longer
   */
  public void mustBeOpen(String secret) {
    boolean open =
        database.anonymous(
            in -> new FirstStartLinks(in).isValid(SecretHash.of(secret)) && isMissing(in));
    if (!open) {
      throw Refused.notFound();
    }
  }

  /**
   * Makes a link's bearer the first owner, and signs them in.
   *
   * @throws Refused when the link does not work, or no longer, or the wish has a problem
   */
  public SigningIn.Session become(String secret, Wish wish) {
    mustBeOpen(secret);
    String hash = hash(wish);
    Person owner =
        database.anonymous(
            in -> {
              if (!new FirstStartLinks(in).consume(SecretHash.of(secret)) || !isMissing(in)) {
                throw Refused.notFound();
              }
              return create(in, wish, hash);
            });
    return signingIn.begin(owner);
  }

  private String hash(Wish wish) {
    List<Problem> problems = wish.problems(passwords);
    if (!problems.isEmpty()) {
      throw Refused.invalid(problems);
    }
    return passwords.hash(wish.password());
  }

  private Person create(AnonymousTransaction in, Wish wish, String hash) {
    Person owner =
        new People(in)
            .create(new PersonId(ids.next()), wish.email(), wish.name(), hash)
            .orElseThrow(() -> Refused.invalid("/email", "E-mail belongs to somebody already."));
    new Members(in.enter(new StudioId(ids.next()), owner.id())).found(wish.studio());
    return owner;
  }
}
