package lampwright.benchmarks.crash;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import lampwright.document.Json;

/** The server as a program sees it: JSON over HTTP, by a token. */
final class Api {

  /** The server itself gives up on a database that says nothing after 60 s (its socket timeout). */
  private static final Duration PATIENCE = Duration.ofSeconds(75);

  private static final int TOO_SOON = 429;

  private final HttpClient client = HttpClient.newHttpClient();
  private final String address;
  private final String token;

  Api(String address, String token) {
    this.address = address;
    this.token = token;
  }

  /** An answer; the body as plain JSON where it is some. */
  record Answer(int status, Map<String, String> headers, byte[] bytes) {

    String text() {
      return new String(bytes, StandardCharsets.UTF_8);
    }

    /** What stands at a name in the answer. */
    Object at(String name) {
      return Json.parse(text()) instanceof Map<?, ?> object && object.get(name) != null
          ? object.get(name)
          : "";
    }

    int number(String name) {
      return at(name) instanceof Number number ? number.intValue() : -1;
    }

    List<?> items() {
      return at("items") instanceof List<?> items ? items : List.of();
    }

    Optional<String> location() {
      return Optional.ofNullable(headers.get("location"));
    }
  }

  String address() {
    return address;
  }

  Answer get(String path) throws IOException {
    return send("GET", path, new byte[0], Map.of());
  }

  Answer post(String path, Object json, Map<String, String> headers) throws IOException {
    return send("POST", path, Json.print(json).getBytes(StandardCharsets.UTF_8), headers);
  }

  /**
   * Sends a request; where it came too soon after others, waits as it was told to and asks again.
   */
  Answer send(String verb, String path, byte[] body, Map<String, String> headers)
      throws IOException {
    Answer answer = sendOnce(verb, path, body, headers);
    while (answer.status() == TOO_SOON) {
      try {
        TimeUnit.SECONDS.sleep(Long.parseLong(answer.headers().getOrDefault("retry-after", "1")));
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        throw new IOException("Interrupted", e);
      }
      answer = sendOnce(verb, path, body, headers);
    }
    return answer;
  }

  private Answer sendOnce(String verb, String path, byte[] body, Map<String, String> headers)
      throws IOException {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create(address + path))
            .timeout(PATIENCE)
            .method(verb, HttpRequest.BodyPublishers.ofByteArray(body));
    if (!token.isEmpty()) {
      request.header("Authorization", "Bearer " + token);
    }
    if (body.length > 0 && !headers.containsKey("Content-Type")) {
      request.header("Content-Type", "application/json");
    }
    headers.forEach(request::header);
    try {
      HttpResponse<byte[]> answer =
          client.send(request.build(), HttpResponse.BodyHandlers.ofByteArray());
      Map<String, String> told = new TreeMap<>();
      answer.headers().map().forEach((name, values) -> told.put(name, values.getFirst()));
      return new Answer(answer.statusCode(), told, answer.body());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("Interrupted", e);
    }
  }
}
