package lampwright.web.pages;

import io.javalin.http.Context;
import lampwright.tasks.Refused;

/** Serves the style sheet, fonts and scripts; what an address gives never changes. */
public final class AssetFiles {

  private final Assets assets;

  public AssetFiles(Assets assets) {
    this.assets = assets;
  }

  /** One of them. */
  public void show(Context context) {
    Assets.Asset asset =
        assets
            .find(context.pathParam("hash"), context.pathParam("name"))
            .orElseThrow(Refused::notFound);
    context.header("Cache-Control", "public, max-age=31536000, immutable");
    context.result(asset.open()).contentType(asset.mediaType());
  }
}
