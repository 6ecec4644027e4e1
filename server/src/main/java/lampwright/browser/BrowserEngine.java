package lampwright.browser;

import org.teavm.jso.JSExport;

/** What the ES module exports. */
public final class BrowserEngine {

  private BrowserEngine() {}

  /**
   * Reads a setup and tells what the engine finds; see {@link Answers}.
   *
   * @param requestJson the request as JSON text
   * @return the answer as JSON text
   */
  @JSExport
  public static String answer(String requestJson) {
    return BrowserJson.print(Answers.to(BrowserJson.parse(requestJson)));
  }
}
