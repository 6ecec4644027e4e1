package lampwright.web.api;

import io.javalin.http.Context;
import java.util.function.Supplier;
import lampwright.metrics.Metrics;

/** What is measured of the server, for whoever watches over it. */
public final class MetricsApi {

  private final Supplier<String> text;

  /**
   * @param text everything as it is now
   */
  public MetricsApi(Supplier<String> text) {
    this.text = text;
  }

  /** All of it, in the text format of Prometheus. */
  public void show(Context context) {
    context.header("Cache-Control", "no-store");
    context.result(text.get()).contentType(Metrics.MEDIA_TYPE);
  }
}
