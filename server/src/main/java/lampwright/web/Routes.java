package lampwright.web;

import lampwright.web.http.RouteList;

/**
 * The URLs of one room: verb, path, handler, and who may come in. No logic. All records that
 * implement it stand beside it; together they are every URL there is.
 */
public interface Routes {

  void addTo(RouteList routes);
}
