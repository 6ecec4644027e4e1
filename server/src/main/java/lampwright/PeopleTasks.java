package lampwright;

import java.time.Clock;
import lampwright.people.Ids;
import lampwright.people.Seal;
import lampwright.store.Database;
import lampwright.tasks.AccountKeeping;
import lampwright.tasks.Auditing;
import lampwright.tasks.Closed;
import lampwright.tasks.DemoStudio;
import lampwright.tasks.FailedSignIns;
import lampwright.tasks.FirstOwner;
import lampwright.tasks.Glancing;
import lampwright.tasks.Inviting;
import lampwright.tasks.Leaving;
import lampwright.tasks.MemberKeeping;
import lampwright.tasks.PasswordResetting;
import lampwright.tasks.Passwords;
import lampwright.tasks.Preferring;
import lampwright.tasks.SecondFactorKeeping;
import lampwright.tasks.SessionKeeping;
import lampwright.tasks.Sharing;
import lampwright.tasks.SigningIn;
import lampwright.tasks.StudioKeeping;
import lampwright.tasks.Studios;
import lampwright.tasks.Tokens;
import lampwright.web.pages.AccountPages;

/** What the people of this server do about themselves and each other: the tasks, built once. */
final class PeopleTasks {

  private final FailedSignIns failures;
  private final SigningIn signingIn;
  private final AccountPages.Tasks own;
  private final Tokens tokens;
  private final Glancing glancing;
  private final Leaving leaving;
  private final FirstOwner firstOwner;
  private final DemoStudio demoStudio;
  private final Studios studios;
  private final StudioKeeping studioKeeping;
  private final MemberKeeping members;
  private final Inviting inviting;
  private final PasswordResetting resetting;
  private final Auditing auditing;
  private final Sharing sharing;
  private final Preferring preferring;

  /**
   * @param closed whom this server lets do nothing
   * @param seal what the keys of second factors are kept under
   */
  PeopleTasks(
      Database database, Ids ids, Passwords passwords, Closed closed, Seal seal, Clock clock) {
    auditing = new Auditing(database);
    failures = new FailedSignIns(database, clock);
    signingIn = new SigningIn(database, ids, passwords, failures, closed, seal);
    own =
        new AccountPages.Tasks(
            new AccountKeeping(database, ids, passwords, failures, closed),
            new SessionKeeping(database),
            new SecondFactorKeeping(database, ids, passwords, failures, closed, seal),
            auditing);
    tokens = new Tokens(database, ids, closed);
    glancing = new Glancing(database, closed);
    leaving = new Leaving(database, passwords, failures, closed);
    firstOwner = new FirstOwner(database, ids, passwords, signingIn);
    demoStudio = new DemoStudio(database, ids, passwords);
    studios = new Studios(database);
    studioKeeping = new StudioKeeping(database, ids);
    members = new MemberKeeping(database);
    inviting = new Inviting(database, ids, passwords, signingIn);
    resetting = new PasswordResetting(database, ids, passwords);
    sharing = new Sharing(database, ids, closed);
    preferring = new Preferring(database);
  }

  /** How many passwords and codes were wrong since the start. */
  long failedSignIns() {
    return failures.failed();
  }

  SigningIn signingIn() {
    return signingIn;
  }

  AccountPages.Tasks own() {
    return own;
  }

  Tokens tokens() {
    return tokens;
  }

  Glancing glancing() {
    return glancing;
  }

  Leaving leaving() {
    return leaving;
  }

  FirstOwner firstOwner() {
    return firstOwner;
  }

  DemoStudio demoStudio() {
    return demoStudio;
  }

  Studios studios() {
    return studios;
  }

  StudioKeeping studioKeeping() {
    return studioKeeping;
  }

  MemberKeeping members() {
    return members;
  }

  Inviting inviting() {
    return inviting;
  }

  PasswordResetting resetting() {
    return resetting;
  }

  Auditing auditing() {
    return auditing;
  }

  Sharing sharing() {
    return sharing;
  }

  Preferring preferring() {
    return preferring;
  }
}
