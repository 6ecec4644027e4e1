package lampwright.web.http;

import io.javalin.http.Context;
import java.time.Duration;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import lampwright.tasks.Refused;

/**
 * How much is worked on at once. A request has a place while the server works on it, and none while
 * it waits for the other side: for a body to arrive, or an answer to be taken. So those who are
 * slow keep nobody out.
 */
public final class Admission {

  /** Where the request's pass lies, for whoever ends the request. */
  static final String PASS = "lampwright.pass";

  private static final Duration RETRY = Duration.ofSeconds(1);

  private final Map<Lane, Places> lanes = new EnumMap<>(Lane.class);

  public Admission(Capacity capacity) {
    capacity
        .lanes()
        .forEach((lane, bound) -> lanes.put(lane, new Places(bound, capacity.longestWait())));
  }

  /** What one request holds: a place, or none for now. Of the request's thread only. */
  static final class Pass {

    private final Places places;
    private boolean isHeld = true;

    private Pass(Places places) {
      this.places = places;
    }

    /** Gives the place back, if it is held. */
    void leave() {
      if (isHeld) {
        isHeld = false;
        places.leave();
      }
    }

    private void enterAgain() {
      if (!places.enterAgain()) {
        throw Refused.unavailable(RETRY);
      }
      isHeld = true;
    }
  }

  /**
   * Takes a place for a request, perhaps after a while.
   *
   * @throws Refused Unavailable where too many wait already, or it waited too long
   */
  void enter(Context context, Lane lane) {
    Places places = lanes.get(lane);
    if (places == null) {
      return;
    }
    if (!places.enter()) {
      // What the body brings would be read only to be thrown away.
      context.header("Connection", "close");
      throw Refused.unavailable(RETRY);
    }
    context.attribute(PASS, new Pass(places));
  }

  /** Gives the request's place back: what is left to do waits for the other side. */
  public static void leave(Context context) {
    find(context).ifPresent(Pass::leave);
  }

  /**
   * Lets others work while something arrives.
   *
   * @throws Refused Unavailable where it then waited too long for a place
   */
  static <T> T meanwhile(Context context, Supplier<T> arriving) {
    Optional<Pass> pass = find(context).filter(held -> held.isHeld);
    pass.ifPresent(Pass::leave);
    T arrived = arriving.get();
    pass.ifPresent(Pass::enterAgain);
    return arrived;
  }

  private static Optional<Pass> find(Context context) {
    return Optional.ofNullable(context.attribute(PASS));
  }

  /** How many requests of a kind are worked on now. */
  public int working(Lane lane) {
    Places places = lanes.get(lane);
    return places == null ? 0 : places.working();
  }

  /** How many may be. */
  public int atOnce(Lane lane) {
    Places places = lanes.get(lane);
    return places == null ? 0 : places.atOnce();
  }

  /** How many wait. */
  public int waiting(Lane lane) {
    Places places = lanes.get(lane);
    return places == null ? 0 : places.waiting();
  }

  /** How many were refused since the start. */
  public long refused(Lane lane) {
    Places places = lanes.get(lane);
    return places == null ? 0 : places.refused();
  }

  /** Whether a light request was refused within so long. */
  public boolean isOverloaded(Duration within) {
    Places light = lanes.get(Lane.LIGHT);
    return light != null && light.hasRefusedWithin(within);
  }
}
