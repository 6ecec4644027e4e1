package lampwright.web.api;

import io.javalin.http.Context;
import java.util.Optional;
import lampwright.tasks.Message;

/** Why a change was made, as a program says it: {@code ?message=}. */
final class Messages {

  private static final String MESSAGE = "message";

  private Messages() {}

  /**
   * The message; none where it is left out.
   *
   * @throws lampwright.tasks.Refused Invalid where it is too long
   */
  static Message of(Context context) {
    return new Message(Optional.ofNullable(context.queryParam(MESSAGE)).orElse(""));
  }
}
