package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import lampwright.Visitor;

/** Calls a setup proven, so that readers may see it. */
final class Proven {

  private Proven() {}

  /**
   * Calls it so, whatever revision it has.
   *
   * @param path of the setup for programs, or of anything below it
   */
  static void by(Visitor author, String path) {
    String setup = path.replaceFirst("(/setups/[0-9a-z]+).*", "$1");
    assertEquals(
        200,
        author
            .with("If-Match", "*")
            .put(setup + "/state", "{\"state\":\"proven\",\"archived\":false}")
            .statusCode());
  }
}
