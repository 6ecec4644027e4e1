package lampwright;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.zip.GZIPInputStream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;

/**
 * What pages weigh as they go over the line, without their pictures: the page, its style and
 * scripts, and every face of type that its style names, whether or not a browser would need it.
 */
final class PageWeight {

  private static final Pattern NAMED = Pattern.compile("url\\(\"([^\"]+)\"\\)");

  private final Visitor visitor;
  private final Map<String, Integer> assets = new LinkedHashMap<>();

  PageWeight(Visitor visitor) {
    this.visitor = visitor.with("Accept-Encoding", "gzip");
  }

  /** The bytes of a page and of all that it needs. */
  int bytes(String path) {
    HttpResponse<byte[]> page = got(path);
    Document document = Jsoup.parse(text(page));
    int bytes = page.body().length;
    for (String asset :
        document.select("link[href^=/assets/]").stream().map(e -> e.attr("href")).toList()) {
      bytes += asset(asset);
      if (asset.endsWith(".css")) {
        for (String named : named(asset)) {
          bytes += asset(named);
        }
      }
    }
    for (String script :
        document.select("script[src^=/assets/]").stream().map(e -> e.attr("src")).toList()) {
      bytes += asset(script);
    }
    return bytes;
  }

  /** How many assets were asked for so far. */
  int assets() {
    return assets.size();
  }

  private int asset(String path) {
    return assets.computeIfAbsent(path, of -> got(of).body().length);
  }

  private List<String> named(String style) {
    List<String> named = new ArrayList<>();
    NAMED
        .matcher(text(got(style)))
        .results()
        .map((MatchResult one) -> URI.create(style).resolve(one.group(1)).toString())
        .forEach(named::add);
    return named;
  }

  private HttpResponse<byte[]> got(String path) {
    HttpResponse<byte[]> answer = visitor.bytes(path);
    if (answer.statusCode() != 200) {
      throw new AssertionError(path + " was answered " + answer.statusCode());
    }
    return answer;
  }

  private static String text(HttpResponse<byte[]> answer) {
    boolean isPacked = answer.headers().firstValue("Content-Encoding").orElse("").equals("gzip");
    if (!isPacked) {
      throw new AssertionError(answer.uri() + " comes without compression");
    }
    try (var in = new GZIPInputStream(new ByteArrayInputStream(answer.body()))) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
