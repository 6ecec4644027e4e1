package lampwright.web.http;

import io.javalin.http.Context;
import io.javalin.router.Endpoint;
import java.util.Optional;
import lampwright.tasks.Caller;

/** Stands at the door, before anything of a body is read. */
final class Gate {

  private final Traffic traffic;
  private final Visitors visitors;

  Gate(Traffic traffic, Visitors visitors) {
    this.traffic = traffic;
    this.visitors = visitors;
  }

  /**
   * Lets a request in, perhaps after a while.
   *
   * @throws lampwright.tasks.Refused Unavailable where no place comes free, NotFound for who asks
   *     for what only watchers are told
   */
  void enter(Context context, Access access) {
    if (access.equals(Access.Outside.WATCHER)) {
      traffic.watchers().mustWatch(context);
    }
    traffic.admission().enter(context, lane(context));
  }

  /**
   * Counts a request of somebody.
   *
   * @param caller who comes; empty where nobody need say
   * @throws lampwright.tasks.Refused TooMany for who comes too often
   */
  void count(Context context, Optional<Caller> caller) {
    traffic.limits().count(context, caller, visitors.addressOf(context), lane(context));
  }

  private Lane lane(Context context) {
    Endpoint matched = context.endpoints().matchedHttpEndpoint();
    return matched == null ? Lane.LIGHT : traffic.lane(context.method().name(), matched.path);
  }
}
