package lampwright.benchmarks.load;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import io.javalin.Javalin;
import io.javalin.http.Context;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.concurrent.CountDownLatch;
import lampwright.document.Json;

/**
 * What the server is compared with: the same web framework on virtual threads and the same pool,
 * and nothing else. No door, no leave, no row-level security (it reads as the owner of the
 * cluster), no log, no headers: what a good engineer writes who only wants to be fast.
 *
 * <p>In the environment: {@code BARE_JDBC}, {@code BARE_USER}, {@code BARE_PASSWORD}.
 */
final class BareServer {

  private static final int CONNECTIONS = 8;
  private static final String TEXT_ONLY =
      """
      select id, title from bare.setup_text where words @@ to_tsquery('english', ?)
      order by ts_rank(words, to_tsquery('english', ?)) desc, id limit 20
      """;
  private static final String WITH_COUNTS =
      """
      with hit as materialized (
        select id, title, words, moods, place, kind, state from bare.setup_text
        where words @@ to_tsquery('english', ?)),
      top as (
        select 'top' as what, id || ' ' || title as value, 0::bigint as many from hit
        order by ts_rank(words, to_tsquery('english', ?)) desc, id limit 20)
      select * from top
      union all select 'mood', mood, count(*) from hit, unnest(moods) as mood group by mood
      union all select 'place', place, count(*) from hit group by place
      union all select 'kind', kind, count(*) from hit group by kind
      union all select 'state', state, count(*) from hit group by state
      """;

  private final HikariDataSource pool;

  private BareServer(HikariDataSource pool) {
    this.pool = pool;
  }

  public static void main(String[] arguments) throws InterruptedException {
    HikariConfig config = new HikariConfig();
    config.setJdbcUrl(System.getenv("BARE_JDBC"));
    config.setUsername(System.getenv("BARE_USER"));
    config.setPassword(System.getenv("BARE_PASSWORD"));
    config.setMaximumPoolSize(CONNECTIONS);
    BareServer server = new BareServer(new HikariDataSource(config));
    Javalin javalin =
        Javalin.create(
            set -> {
              set.startup.showJavalinBanner = false;
              set.startup.showOldJavalinVersionWarning = false;
              set.startup.startupWatcherEnabled = false;
              set.concurrency.useVirtualThreads = true;
              set.routes.get("/hello", context -> context.result("hello"));
              set.routes.get("/studios/{studio}/setups/{setup}", server::setup);
              set.routes.get("/text", context -> server.search(context, TEXT_ONLY));
              set.routes.get("/counted", context -> server.search(context, WITH_COUNTS));
            });
    javalin.start("127.0.0.1", 0);
    System.out.println("Bare at http://127.0.0.1:" + javalin.port() + "/");
    new CountDownLatch(1).await();
  }

  /** One select by key; where the asker has that revision, a select of the revision alone. */
  private void setup(Context context) throws SQLException {
    String known = context.header("If-None-Match");
    String columns = known == null ? "revision, changed_at, state, document" : "revision";
    try (Connection connection = pool.getConnection();
        PreparedStatement select =
            connection.prepareStatement(
                "select "
                    + columns
                    + " from lampwright.setup where studio_id = ? and id = ?"
                    + " and deleted_at is null")) {
      select.setString(1, context.pathParam("studio"));
      select.setString(2, context.pathParam("setup"));
      try (ResultSet found = select.executeQuery()) {
        if (!found.next()) {
          context.status(404);
          return;
        }
        String tag = "\"" + found.getInt(1) + "\"";
        context.header("ETag", tag);
        if (tag.equals(known)) {
          context.status(304);
          return;
        }
        context
            .contentType("application/json")
            .result(
                "{\"id\":\"%s\",\"revision\":%d,\"changed_at\":\"%s\",\"state\":\"%s\",\"document\":%s}"
                    .formatted(
                        context.pathParam("setup"),
                        found.getInt(1),
                        found.getString(2),
                        found.getString(3),
                        found.getString(4)));
      }
    }
  }

  private void search(Context context, String sql) throws SQLException {
    String asked = String.valueOf(context.queryParam("q")).strip().replaceAll("\\s+", " | ");
    StringBuilder answer = new StringBuilder("[");
    try (Connection connection = pool.getConnection();
        PreparedStatement select = connection.prepareStatement(sql)) {
      select.setString(1, asked);
      select.setString(2, asked);
      try (ResultSet found = select.executeQuery()) {
        while (found.next()) {
          answer.append(answer.length() == 1 ? "" : ",").append(Json.print(found.getString(2)));
        }
      }
    }
    context.contentType("application/json").result(answer.append(']').toString());
  }
}
