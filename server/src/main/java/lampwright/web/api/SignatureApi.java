package lampwright.web.api;

import io.javalin.http.Context;
import lampwright.tasks.Signing;
import lampwright.web.http.Door;

/** How the light of a setup is. */
public final class SignatureApi {

  private final Door door;
  private final Signing signing;

  public SignatureApi(Door door, Signing signing) {
    this.door = door;
    this.signing = signing;
  }

  /** As it is now, with how its finished picture looks. */
  public void get(Context context) {
    context.json(
        SignatureJson.of(
            signing.get(door.caller(context), SetupApi.studio(context), SetupApi.setup(context))));
  }

  /** As it was at a revision. */
  public void getOfRevision(Context context) {
    context.json(
        SignatureJson.of(
            signing.get(
                door.caller(context),
                SetupApi.studio(context),
                SetupApi.setup(context),
                HistoryApi.revision(context))));
  }
}
