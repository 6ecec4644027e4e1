package lampwright.web.http;

import io.javalin.http.Context;
import java.util.Optional;
import lampwright.tasks.Caller;

/**
 * Looks who comes, and reads in the same step what they came for; whoever answers finds it there.
 */
@FunctionalInterface
public interface Glance {

  /**
   * Looks who comes.
   *
   * @param way how they come
   * @param secret of the session or token that they come by, good or not
   * @return empty for who cannot come in
   */
  Optional<Caller> look(Context context, Caller.Way way, String secret);
}
