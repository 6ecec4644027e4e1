package lampwright.benchmarks.relevance;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampwright.search.IndexEntry;

/**
 * PostgreSQL's own full text search over the same texts, with the same weights in spirit: title and
 * moods A, the intent B, place, genre, notes, gear and lights C, in a stored vector with a GIN
 * index. Words are joined by "or" and ranked by {@code ts_rank}: with "and" a sentence finds hardly
 * anything.
 */
final class FullText implements Ranker {

  private static final String QUERY =
      """
      select id from relevance, (
        select to_tsquery('english', string_agg(quote_literal(lexeme), ' | ')) as asked
        from unnest(to_tsvector('english', ?))) as question
      where words @@ asked
      order by ts_rank(words, asked, 1) desc, id limit 100
      """;

  private final Connection connection;

  private FullText(Connection connection) {
    this.connection = connection;
  }

  static FullText of(Connection connection, List<IndexEntry> entries) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute("drop table if exists relevance");
      statement.execute("create table relevance (id text primary key, words tsvector)");
    }
    try (PreparedStatement insert =
        connection.prepareStatement(
            "insert into relevance values (?, setweight(to_tsvector('english', ?), 'A') ||"
                + " setweight(to_tsvector('english', ?), 'B') ||"
                + " setweight(to_tsvector('english', ?), 'C'))")) {
      for (IndexEntry entry : entries) {
        insert.setString(1, entry.setup());
        insert.setString(2, entry.title() + " " + String.join(", ", entry.moods()));
        insert.setString(3, entry.intent());
        insert.setString(4, rest(entry));
        insert.addBatch();
      }
      insert.executeBatch();
    }
    try (Statement statement = connection.createStatement()) {
      statement.execute("create index relevance_words on relevance using gin (words)");
      statement.execute("analyze relevance");
    }
    return new FullText(connection);
  }

  private static String rest(IndexEntry entry) {
    return Stream.of(
            entry.placeName().stream(),
            entry.placeKind().stream(),
            entry.genre().stream(),
            entry.written().stream(),
            entry.gear().stream(),
            entry.roles().stream())
        .flatMap(texts -> texts)
        .collect(Collectors.joining(". "));
  }

  @Override
  public String name() {
    return "PostgreSQL";
  }

  @Override
  public List<String> rank(String question) {
    try (PreparedStatement select = connection.prepareStatement(QUERY)) {
      select.setString(1, question);
      List<String> ids = new ArrayList<>();
      try (ResultSet rows = select.executeQuery()) {
        while (rows.next()) {
          ids.add(rows.getString(1));
        }
      }
      return ids;
    } catch (SQLException e) {
      throw new IllegalStateException("PostgreSQL failed on: " + question, e);
    }
  }
}
