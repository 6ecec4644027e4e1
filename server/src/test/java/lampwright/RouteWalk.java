package lampwright;

import java.util.List;
import lampwright.web.http.ServedRoute;

/** Every route that a house really serves. */
public final class RouteWalk {

  private RouteWalk() {}

  /** One of them. */
  public record Step(String verb, String template, boolean isForMembers) {

    /** An address of it, with one text for every part that varies. */
    public String path(String part) {
      return template.replaceAll("[{<][^}>]*[}>]", part);
    }

    public boolean changes() {
      return !List.of("GET", "HEAD").contains(verb);
    }

    public boolean isForPrograms() {
      return template.startsWith("/api")
          || template.startsWith("/health")
          || template.equals("/metrics");
    }

    @Override
    public String toString() {
      return verb + " " + template;
    }
  }

  public static List<Step> of(TestHouse house) {
    List<ServedRoute> routes = house.routes();
    return routes.stream()
        .map(route -> new Step(route.verb(), route.path(), !route.access().isOpen()))
        .toList();
  }
}
