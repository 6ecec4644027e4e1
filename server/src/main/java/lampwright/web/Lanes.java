package lampwright.web;

import static lampwright.web.http.Lane.COMPUTING;
import static lampwright.web.http.Lane.FILES;
import static lampwright.web.http.Lane.OPEN;
import static lampwright.web.http.Lane.PASSWORD;
import static lampwright.web.http.Lane.PRINTING;

import java.util.HashMap;
import java.util.Map;
import lampwright.web.http.Lane;

/** Which routes are more than light work. The server does not start where one of them is none. */
public final class Lanes {

  private static final String API = " /api/studios/{studio}";
  private static final String SETUP_API = API + "/setups/{setup}";
  private static final String STUDIO = " /studios/{studio}";
  private static final String SETUP = STUDIO + "/setups/{setup}";

  private Lanes() {}

  /** Every such route, by verb and path. */
  public static Map<String, Lane> byRoute() {
    Map<String, Lane> lanes = new HashMap<>();
    put(lanes, OPEN, "GET /health/live", "GET /health/ready", "GET /metrics");
    put(lanes, OPEN, "GET /assets/{hash}/<name>", "GET /worker.js");
    put(lanes, PASSWORD, "POST /api/session", "POST /sign-in", "POST /sign-in/code");
    put(lanes, PASSWORD, "PUT /api/account/password", "POST /account/password");
    put(lanes, PASSWORD, "POST /password-reset/{secret}", "POST /first-owner/{secret}");
    put(lanes, PASSWORD, "POST /api/invitations/{secret}", "POST /invitations/{secret}");
    put(lanes, PASSWORD, "PATCH /api/account", "DELETE /api/account");
    put(lanes, PASSWORD, "POST /account/details", "POST /account/leaving/question");
    for (String step : new String[] {"", "/confirmation", "/recovery-codes", "/removal"}) {
      put(lanes, PASSWORD, "POST /api/account/second-factor" + step);
      put(lanes, PASSWORD, "POST /account/second-factor" + step);
    }
    put(lanes, COMPUTING, "POST" + SETUP_API + "/adaptations", "POST" + API + "/adaptations");
    put(lanes, COMPUTING, "POST" + SETUP_API + "/reading-maps", "POST" + API + "/reading-maps");
    put(lanes, COMPUTING, "POST" + SETUP_API + "/reactions", "POST" + API + "/reactions");
    put(lanes, COMPUTING, "POST" + API + "/calibrations", "GET" + API + "/packing");
    put(lanes, COMPUTING, "GET" + SETUP + "/adapted", "POST" + SETUP + "/adapted");
    put(lanes, COMPUTING, "GET" + SETUP + "/now", "GET" + STUDIO + "/packing");
    put(lanes, PRINTING, "GET" + SETUP_API + "/sheet.pdf", "GET" + SETUP + "/sheet.pdf");
    // How much room there is on the printed sheet is found by laying it out.
    put(lanes, PRINTING, "GET" + SETUP + "/sheet");
    put(lanes, FILES, "POST" + SETUP_API + "/pictures", "POST" + SETUP + "/pictures");
    put(lanes, FILES, "POST" + API + "/shown-pictures", "POST" + STUDIO + "/shown-pictures");
    put(lanes, FILES, "GET" + API + "/archive", "GET" + SETUP_API + "/archive");
    put(lanes, FILES, "POST" + API + "/imports", "POST" + STUDIO + "/archive");
    put(lanes, FILES, "GET /api/account/data");
    return lanes;
  }

  private static void put(Map<String, Lane> lanes, Lane lane, String... routes) {
    for (String route : routes) {
      lanes.put(route, lane);
    }
  }
}
