package lampwright.browser;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import lampwright.language.Notation;
import lampwright.setup.SetupDocument;

/** Requests as the pages send them. */
public final class Requests {

  private Requests() {}

  /** A request for every part of the answer. */
  public static Map<String, Object> of(SetupDocument setup, Notation notation) {
    return ofPlain(SetupDocument.FORM.write(setup), notation);
  }

  /** A request for some parts about what may be no setup. */
  static Map<String, Object> ofPlain(Object document, Notation notation, Part... parts) {
    Map<String, Object> request = ofPlain(document, notation);
    request.put("want", Arrays.stream(parts).map(Part::key).toList());
    return request;
  }

  private static Map<String, Object> ofPlain(Object document, Notation notation) {
    Map<String, Object> request = new LinkedHashMap<>();
    request.put("document", document);
    request.put("language", notation.language().tag());
    request.put("lengths", notation.lengths().key());
    request.put("stops", notation.stops().key());
    request.put("phrases", notation.phrases().byKey());
    return request;
  }
}
