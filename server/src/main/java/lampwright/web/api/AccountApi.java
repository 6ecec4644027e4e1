package lampwright.web.api;

import io.javalin.http.Context;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import lampwright.document.Form;
import lampwright.tasks.AccountKeeping;
import lampwright.tasks.Caller;
import lampwright.tasks.SessionKeeping;
import lampwright.web.http.Door;
import lampwright.web.http.Entrance;
import lampwright.web.http.Preconditions;

/** A person's own account, and where they are signed in. */
public final class AccountApi {

  private static final int NO_CONTENT = 204;

  private final Door door;
  private final Entrance entrance;
  private final AccountKeeping accounts;
  private final SessionKeeping sessions;

  public AccountApi(
      Door door, Entrance entrance, AccountKeeping accounts, SessionKeeping sessions) {
    this.door = door;
    this.entrance = entrance;
    this.accounts = accounts;
    this.sessions = sessions;
  }

  /** What is read here. */
  static List<Form<?>> forms() {
    // What a merge patch changes has no schema of its own.
    return List.of(AccountKeeping.PASSWORD_FORM);
  }

  private record AccountView(String id, String name, String email) {

    static AccountView of(AccountKeeping.Account account) {
      return new AccountView(
          account.person().id().text(), account.person().name(), account.person().email());
    }
  }

  /** What the changes of a session must carry that goes on under another token. */
  record GoesOn(String csrfToken) {}

  private record SessionView(
      String id,
      String device,
      Instant createdAt,
      Instant lastUsedAt,
      Instant expiresAt,
      boolean current) {

    static SessionView of(SessionKeeping.OwnSession session) {
      return new SessionView(
          session.id(),
          session.device(),
          session.begunAt(),
          session.usedAt(),
          session.expiresAt(),
          session.isThisOne());
    }
  }

  private record All(List<SessionView> items, Optional<String> next) {}

  /** Who one is. */
  public void get(Context context) {
    AccountKeeping.Account account = accounts.get(door.caller(context));
    if (!Preconditions.isKnown(context, account.revision())) {
      context.json(AccountView.of(account));
    }
  }

  /** Changes name and e-mail. */
  public void change(Context context) {
    Caller caller = door.caller(context);
    int based = Preconditions.based(context, () -> accounts.get(caller).revision());
    AccountKeeping.Account before = accounts.get(caller);
    AccountKeeping.Wish wish =
        Documents.changed(
            context,
            AccountKeeping.FORM,
            based,
            before.revision(),
            new AccountKeeping.Wish(
                before.person().name(), before.person().email(), Optional.empty()));
    AccountKeeping.Account account = accounts.change(caller, based, wish, entrance.visit(context));
    Preconditions.show(context, account.revision());
    context.json(AccountView.of(account));
  }

  /** Changes the password; the session goes on under another token. */
  public void changePassword(Context context) {
    String token =
        accounts.changePassword(
            door.caller(context),
            entrance.session(context),
            Documents.read(context, AccountKeeping.PASSWORD_FORM),
            entrance.visit(context));
    context.json(new GoesOn(entrance.goOn(context, token)));
  }

  /** Where one is signed in. */
  public void listSessions(Context context) {
    context.json(
        new All(
            sessions.list(door.caller(context), entrance.session(context)).stream()
                .map(SessionView::of)
                .toList(),
            Optional.empty()));
  }

  /** Signs out in one place. */
  public void endSession(Context context) {
    sessions.end(door.caller(context), context.pathParam("session"));
    context.status(NO_CONTENT);
  }

  /** Signs out everywhere else. */
  public void endOtherSessions(Context context) {
    sessions.endOthers(door.caller(context), entrance.session(context));
    context.status(NO_CONTENT);
  }
}
