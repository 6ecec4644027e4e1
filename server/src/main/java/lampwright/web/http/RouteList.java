package lampwright.web.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Handler;

/** Takes the routes. What answers GET answers HEAD too: the same without the body. */
public final class RouteList {

  private final RoutesConfig routes;

  RouteList(RoutesConfig routes) {
    this.routes = routes;
  }

  public void get(String path, Handler handler, Access access) {
    routes.get(path, handler, access);
    routes.head(path, handler, access);
  }

  public void post(String path, Handler handler, Access access) {
    routes.post(path, handler, access);
  }

  public void put(String path, Handler handler, Access access) {
    routes.put(path, handler, access);
  }

  public void patch(String path, Handler handler, Access access) {
    routes.patch(path, handler, access);
  }

  public void delete(String path, Handler handler, Access access) {
    routes.delete(path, handler, access);
  }
}
