package lampwright.web.api;

import io.javalin.http.Context;
import lampwright.tasks.DayPacking;
import lampwright.web.http.Door;

/** What a day with setups takes: what is carried, what is charged, and who does what when. */
public final class PackingApi {

  private final Door door;
  private final DayPacking packing;

  public PackingApi(Door door, DayPacking packing) {
    this.door = door;
    this.packing = packing;
  }

  /** Computes it; stores nothing: {@code ?setup=&setup=&kit=&hands=&ready_by=…}. */
  public void show(Context context) {
    DayPacking.Asked asked = PackingQuery.asked(context);
    context.json(
        PackingJson.of(packing.pack(door.caller(context), SetupApi.studio(context), asked)));
  }
}
