package lampwright.web.api;

import io.javalin.http.Context;
import lampwright.tasks.SunWatching;
import lampwright.web.http.Door;

/** The sun of a setup, and when it stands so again. */
public final class SunApi {

  private final Door door;
  private final SunWatching watching;

  public SunApi(Door door, SunWatching watching) {
    this.door = door;
    this.watching = watching;
  }

  /** Where the sun stood, and when it stands so again, at the setup's place or another one. */
  public void show(Context context) {
    SunWatching.Wishes wishes = SunQuery.wishes(context);
    context.json(
        SunJson.of(
            watching.watch(
                door.caller(context), SetupApi.studio(context), SetupApi.setup(context), wishes)));
  }
}
