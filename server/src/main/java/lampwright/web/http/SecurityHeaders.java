package lampwright.web.http;

import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.Map;

/** What each answer tells the browser not to do. */
final class SecurityHeaders {

  private static final String CONTENT_SECURITY_POLICY =
      "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self' data:;"
          + " font-src 'self'; connect-src 'self'; form-action 'self'; frame-ancestors 'none';"
          + " base-uri 'none'; manifest-src 'self'; worker-src 'self'";

  private final Map<String, String> headers = new LinkedHashMap<>();

  /**
   * @param secure whether visitors come over TLS
   */
  SecurityHeaders(boolean secure) {
    headers.put("Content-Security-Policy", CONTENT_SECURITY_POLICY);
    headers.put("X-Content-Type-Options", "nosniff");
    headers.put("Referrer-Policy", "same-origin");
    headers.put(
        "Permissions-Policy", "camera=(), geolocation=(), microphone=(), payment=(), usb=()");
    headers.put("Cross-Origin-Opener-Policy", "same-origin");
    headers.put("Cross-Origin-Resource-Policy", "same-origin");
    // What may be kept says so itself; by default an answer is one person's.
    headers.put("Cache-Control", "no-store");
    headers.put("Vary", "Accept-Encoding, Accept, Authorization, Cookie");
    if (secure) {
      headers.put("Strict-Transport-Security", "max-age=31536000");
    }
  }

  void set(Context context) {
    headers.forEach(context::header);
  }

  Map<String, String> all() {
    return Map.copyOf(headers);
  }
}
