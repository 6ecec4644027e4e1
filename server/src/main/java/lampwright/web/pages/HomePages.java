package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import lampwright.people.Membership;
import lampwright.people.StudioId;
import lampwright.tasks.Caller;
import lampwright.tasks.Studios;
import lampwright.web.http.Door;

/** The first page: leads everybody to where they begin. */
public final class HomePages {

  private final Door door;
  private final Studios studios;
  private final Function<StudioId, String> firstPage;

  /**
   * @param firstPage the address of a studio's first page
   */
  public HomePages(Door door, Studios studios, Function<StudioId, String> firstPage) {
    this.door = door;
    this.studios = studios;
    this.firstPage = firstPage;
  }

  /** To one's studio; to the list of them where there are several or none; or to the sign-in. */
  public void show(Context context) {
    Optional<Caller> caller = door.findCaller(context);
    if (caller.isEmpty()) {
      context.redirect("/sign-in", HttpStatus.SEE_OTHER);
      return;
    }
    List<Membership> all = studios.list(caller.get());
    context.redirect(
        all.size() == 1 ? firstPage.apply(all.getFirst().studio()) : StudiosPage.PATH,
        HttpStatus.SEE_OTHER);
  }
}
