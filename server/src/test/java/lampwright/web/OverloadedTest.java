package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import lampwright.TestHouse;
import lampwright.Visitor;
import lampwright.schema.WorkingDatabase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.extension.RegisterExtension;

/** A whole server with three places, whose database stands still for a while. */
@Timeout(120)
class OverloadedTest {

  private static final String SETUPS = "/api/studios/demo/setups";
  private static final int WRITERS = 60;

  @RegisterExtension
  static final TestHouse house =
      TestHouse.with(
          Map.of(
              "LAMPWRIGHT_DEMO",
              "few",
              "LAMPWRIGHT_DEMO_PASSWORD",
              TestHouse.PASSWORD,
              "LAMPWRIGHT_REQUESTS_AT_ONCE",
              "3"));

  @Test
  void whatIsAcknowledgedIsThereWhatIsRefusedIsNotAndItRecoversByItself() throws Exception {
    Visitor author = house.withToken("author@demo.example");
    List<Future<HttpResponse<String>>> sent = new ArrayList<>();
    WorkingDatabase where = house.database().where();
    try (ExecutorService threads = Executors.newVirtualThreadPerTaskExecutor()) {
      try (Connection holding =
              DriverManager.getConnection(where.jdbcUrl(), where.user(), where.password());
          Statement statement = holding.createStatement()) {
        statement.execute("select pg_advisory_lock(1)");
        // Whoever writes a setup writes a line here too, and waits as long as this one waits for
        // us.
        Future<List<String>> lock =
            threads.submit(
                () ->
                    house
                        .database()
                        .sqlAsSuperuser(
                            "begin",
                            "lock table lampwright.change_log in share row exclusive mode",
                            "select pg_advisory_xact_lock(1)",
                            "commit"));
        for (int i = 0; i < WRITERS; i++) {
          String document = Documents.json(Documents.setup("Written in a rush " + i));
          sent.add(threads.submit(() -> author.post(SETUPS, document)));
        }
        while (refused() < WRITERS / 3.0) {
          Thread.onSpinWait();
        }
        assertEquals(200, house.visitor().get("/health/live").statusCode());
        HttpResponse<String> ready = house.visitor().get("/health/ready");
        assertEquals(503, ready.statusCode());
        assertTrue(ready.body().contains("\"name\":\"load\""), ready.body());
        statement.execute("select pg_advisory_unlock(1)");
        var _ = lock.get(60, TimeUnit.SECONDS);
      }
      Set<String> acknowledged = new HashSet<>();
      for (Future<HttpResponse<String>> one : sent) {
        HttpResponse<String> answer = one.get(60, TimeUnit.SECONDS);
        if (answer.statusCode() == 201) {
          acknowledged.add(answer.headers().firstValue("Location").orElseThrow());
        } else {
          assertEquals(503, answer.statusCode(), answer.body());
          assertTrue(answer.headers().firstValue("Retry-After").isPresent());
        }
      }
      assertTrue(acknowledged.size() >= 3, acknowledged.size() + " of " + WRITERS);
      for (String setup : acknowledged) {
        assertEquals(200, author.get(setup).statusCode());
      }
      assertEquals(
          List.of(Integer.toString(acknowledged.size())),
          house
              .database()
              .sqlAsSuperuser(
                  "select count(*) from lampwright.setup where title like 'Written in a rush%'"));
      assertEquals(
          201, author.post(SETUPS, Documents.json(Documents.setup("Afterwards"))).statusCode());
    }
  }

  private static double refused() {
    return house
        .visitor()
        .get("/metrics")
        .body()
        .lines()
        .filter(line -> line.startsWith("lampwright_lane_refused_total{lane=\"light\"}"))
        .mapToDouble(line -> Double.parseDouble(line.substring(line.lastIndexOf(' ') + 1)))
        .sum();
  }
}
