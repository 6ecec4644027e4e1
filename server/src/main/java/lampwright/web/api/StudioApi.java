package lampwright.web.api;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import lampwright.tasks.Studios;
import lampwright.web.http.Door;

/** The studios that a person belongs to. */
public final class StudioApi {

  private final Door door;
  private final Studios studios;

  public StudioApi(Door door, Studios studios) {
    this.door = door;
    this.studios = studios;
  }

  private record Studio(String id, String name, String role) {}

  private record All(List<Studio> items, Optional<String> next) {}

  /** Lists them, each with the person's role there. */
  public void list(Context context) {
    context.json(
        new All(
            studios.list(door.caller(context)).stream()
                .map(
                    membership ->
                        new Studio(
                            membership.studio().text(),
                            membership.studioName(),
                            membership.role().word()))
                .toList(),
            Optional.empty()));
  }
}
