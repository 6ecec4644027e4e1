package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import lampwright.TestHouse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** A server that a scraper reads from another machine, through a proxy. */
class ScraperElsewhereTest {

  private static final String SECRET = "0123456789abcdef".repeat(4);

  @RegisterExtension
  static final TestHouse house = TestHouse.with(Map.of("LAMPWRIGHT_METRICS_TOKEN", token()));

  private static String token() {
    try {
      Path file = Files.createTempFile("lampwright-metrics", ".token");
      file.toFile().deleteOnExit();
      return Files.writeString(file, SECRET + "\n").toString();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static HttpResponse<String> scrape(String authorization) {
    return house
        .visitor()
        .with("X-Forwarded-For", "198.51.100.7")
        .with("Authorization", authorization)
        .get("/metrics");
  }

  @Test
  void whoHasTheSecretReadsFromAnywhereAndNobodyElse() {
    HttpResponse<String> answer = scrape("Bearer " + SECRET);
    assertEquals(200, answer.statusCode());
    assertTrue(answer.body().contains("process_cpu_usage"));
    for (String wrong :
        new String[] {"", "Bearer " + SECRET.substring(1), "Bearer ", SECRET, "Basic " + SECRET}) {
      assertEquals(404, scrape(wrong).statusCode(), wrong);
    }
  }
}
