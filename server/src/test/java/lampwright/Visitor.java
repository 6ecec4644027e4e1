package lampwright;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublisher;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lampwright.document.Json;

/** Somebody who comes to a {@link TestHouse} by HTTP, with the headers that they always send. */
public final class Visitor {

  private static final Duration PATIENCE = Duration.ofSeconds(30);

  private final HttpClient client;
  private final URI base;
  private final Map<String, String> headers;

  public Visitor(URI base) {
    this(HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build(), base, Map.of());
  }

  private Visitor(HttpClient client, URI base, Map<String, String> headers) {
    this.client = client;
    this.base = base;
    this.headers = headers;
  }

  /** The same visitor, who sends one more header; an empty value takes it away. */
  public Visitor with(String header, String value) {
    Map<String, String> more = new LinkedHashMap<>(headers);
    more.remove(header);
    if (!value.isEmpty()) {
      more.put(header, value);
    }
    return new Visitor(client, base, more);
  }

  /** The same visitor at another server. */
  public Visitor at(URI other) {
    return new Visitor(client, other, headers);
  }

  /** The address of a path on this server. */
  public URI address(String path) {
    return base.resolve(path);
  }

  public HttpResponse<String> get(String path) {
    return send("GET", path, BodyPublishers.noBody());
  }

  public HttpResponse<String> post(String path, String json) {
    return with("Content-Type", "application/json")
        .send("POST", path, BodyPublishers.ofString(json));
  }

  public HttpResponse<String> put(String path, String json) {
    return with("Content-Type", "application/json")
        .send("PUT", path, BodyPublishers.ofString(json));
  }

  /** Sends a JSON merge patch. */
  public HttpResponse<String> patch(String path, String json) {
    return with("Content-Type", "application/merge-patch+json")
        .send("PATCH", path, BodyPublishers.ofString(json));
  }

  public HttpResponse<String> delete(String path) {
    return send("DELETE", path, BodyPublishers.noBody());
  }

  /** Sends a form; its fields must be encoded already. */
  public HttpResponse<String> postForm(String path, String fields) {
    return with("Content-Type", "application/x-www-form-urlencoded")
        .send("POST", path, BodyPublishers.ofString(fields));
  }

  public HttpResponse<String> send(String method, String path, BodyPublisher body) {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(address(path)).timeout(PATIENCE).method(method, body);
    headers.forEach(request::header);
    try {
      return client.send(request.build(), BodyHandlers.ofString());
    } catch (IOException e) {
      throw new UncheckedIOException(method + " " + path, e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  /** What they always send under this name. */
  public String header(String name) {
    return headers.getOrDefault(name, "");
  }

  /** Gets what is no text. */
  public HttpResponse<byte[]> bytes(String path) {
    HttpRequest.Builder request = HttpRequest.newBuilder(address(path)).timeout(PATIENCE);
    headers.forEach(request::header);
    try {
      return client.send(request.build(), BodyHandlers.ofByteArray());
    } catch (IOException e) {
      throw new UncheckedIOException("GET " + path, e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  /** The JSON object that an answer holds. */
  public static Map<?, ?> object(HttpResponse<String> answer) {
    return (Map<?, ?>) Json.parse(answer.body());
  }

  /** The items of the list that an answer holds. */
  public static List<?> items(HttpResponse<String> answer) {
    if (object(answer).get("items") instanceof List<?> items) {
      return items;
    }
    throw new IllegalArgumentException("No items in " + answer.body());
  }
}
