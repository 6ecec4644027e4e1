package lampwright.web.pages;

import io.javalin.http.Context;
import java.util.Optional;
import lampwright.tasks.Audited;
import lampwright.tasks.Auditing;
import lampwright.tasks.Listed;
import lampwright.web.http.Door;

/** The page on which one reads what happened with one's own account: {@code /account/events}. */
public final class AccountEventPages {

  static final String PATH = AccountPages.PATH + "/events";

  private static final int LINES = 50;

  private final Door door;
  private final Auditing auditing;
  private final Templates templates;
  private final OwnLayouts layouts;

  public AccountEventPages(Door door, Auditing auditing, Templates templates, OwnLayouts layouts) {
    this.door = door;
    this.auditing = auditing;
    this.templates = templates;
    this.layouts = layouts;
  }

  /** Shows it. */
  public void show(Context context) {
    Optional<String> cursor =
        Optional.ofNullable(context.queryParam("cursor")).filter(text -> !text.isBlank());
    Listed<Audited> found = auditing.listOwn(door.caller(context), new Listed.Wish(cursor, LINES));
    Layout layout = layouts.named(context, "account.events.title");
    templates.show(
        context,
        "accountEvents",
        new AccountEventsPage(
            layout,
            AccountPages.PATH,
            new AccountEventWords(layout.words()).days(found.items()),
            found.next().map(next -> Address.of(PATH).with("cursor", next).text()).orElse("")));
  }
}
