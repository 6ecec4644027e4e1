package lampwright.web.api;

import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import lampwright.people.StudioId;
import lampwright.tasks.Caller;
import lampwright.tasks.PictureAdding;
import lampwright.tasks.PictureShowing;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.web.http.Body;
import lampwright.web.http.Door;

/** A picture that is shown, not kept, to find setups whose finished picture looks like it. */
public final class ShownPictureApi {

  private final Door door;
  private final PictureAdding adding;
  private final PictureShowing showing;

  public ShownPictureApi(Door door, PictureAdding adding, PictureShowing showing) {
    this.door = door;
    this.adding = adding;
    this.showing = showing;
  }

  /**
   * How it looks, and where those like it are.
   *
   * @param tones for {@code like_tones} of a search
   * @param setups the address of that search
   */
  private record ShownJson(String tones, String setups, SignatureJson.PictureJson picture) {}

  /** Reads one: {@code POST /api/studios/{studio}/shown-pictures} with its bytes. */
  public void show(Context context) {
    Caller caller = door.caller(context);
    StudioId studio = SetupApi.studio(context);
    showing.askToShow(caller, studio);
    String type = Optional.ofNullable(context.contentType()).orElse("").strip();
    if (!type.toLowerCase(Locale.ROOT).startsWith("image/")) {
      throw new Refused(new Refusal.WrongContentType("image/jpeg, image/png, image/webp"));
    }
    if (context.req().getContentLengthLong() > PictureAdding.MOST_BYTES) {
      throw new Refused(new Refusal.TooLarge(PictureAdding.MOST_BYTES));
    }
    try (PictureAdding.Received received = adding.receive(Body.stream(context))) {
      PictureShowing.Shown shown = showing.show(received);
      String setups =
          "/api/studios/"
              + studio.text()
              + "/setups?like_tones="
              + URLEncoder.encode(shown.tones(), StandardCharsets.UTF_8);
      context.json(
          new ShownJson(shown.tones(), setups, SignatureJson.PictureJson.of(shown.look())));
    }
  }
}
