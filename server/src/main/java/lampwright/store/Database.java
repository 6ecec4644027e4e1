package lampwright.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import lampwright.people.Asker;
import lampwright.people.StudioId;
import lampwright.schema.WorkingDatabase;
import org.jooq.Configuration;
import org.jooq.DSLContext;
import org.jooq.SQLDialect;
import org.jooq.conf.Settings;
import org.jooq.impl.DSL;
import org.jooq.impl.DefaultConfiguration;
import org.jooq.impl.DefaultConnectionProvider;

/**
 * The way in: opens a transaction for somebody and hands it on. Every row of a studio is read and
 * written inside {@link #inStudio}; row-level security holds even where a query forgets.
 *
 * <p>Each method throws {@link DatabaseUnavailable} when the database cannot be used. What the
 * function throws ends the transaction without a trace and is passed on.
 */
public final class Database implements AutoCloseable {

  /** How many connections a server has where nothing else is said. */
  public static final int CONNECTIONS = 8;

  private static final Duration WAIT_FOR_CONNECTION = Duration.ofSeconds(5);

  /** A replica that does not answer is not waited for longer than this. */
  private static final Duration WAIT_FOR_REPLICA = Duration.ofSeconds(1);

  private final WorkingDatabase where;
  private final HikariDataSource pool;
  private final Optional<Replica> replica;
  private final DatabaseWatch watch;
  private final Map<Working, Configuration> configurations = new EnumMap<>(Working.class);
  private final Clock clock;

  /** As whom a transaction is open; what the log calls it. */
  private enum Working {
    MEMBER,
    PERSON,
    READER,
    SERVER,
    NOBODY,
    INDEXER;

    private String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** The same, watched by nobody but the log. */
  public Database(WorkingDatabase where, int connections, Clock clock) {
    this(where, connections, clock, DatabaseWatch.unmetered());
  }

  /**
   * Where to work.
   *
   * @param replica of it, to read from
   */
  public record Places(WorkingDatabase database, Optional<WorkingDatabase> replica) {}

  /** Connects lazily; {@link WorkingDatabase} has proved who we work as. */
  public Database(WorkingDatabase where, int connections, Clock clock, DatabaseWatch watch) {
    this(new Places(where, Optional.empty()), connections, clock, watch);
  }

  /**
   * The same with a replica.
   *
   * @param connections at most, with each of them
   */
  public Database(Places places, int connections, Clock clock, DatabaseWatch watch) {
    this.where = places.database();
    this.watch = watch;
    this.pool = new HikariDataSource(poolOf(where, connections, watch));
    this.clock = clock;
    SetupDocuments documents = new SetupDocuments();
    for (Working as : Working.values()) {
      Configuration configuration =
          new DefaultConfiguration()
              .set(SQLDialect.POSTGRES)
              .set(new Settings().withExecuteLogging(false))
              .set(() -> new StatementTime(watch, as.word()));
      configuration.data(SetupDocuments.class, documents);
      configurations.put(as, configuration);
    }
    this.replica =
        places
            .replica()
            .map(
                there ->
                    Replica.open(
                        new HikariDataSource(poolOfReplica(there, connections, watch)),
                        connection -> sql(connection, Working.READER),
                        this));
  }

  private static HikariConfig poolOf(WorkingDatabase where, int connections, DatabaseWatch watch) {
    HikariConfig config = new HikariConfig();
    watch.meters().ifPresent(config::setMetricRegistry);
    config.setPoolName("lampwright");
    config.setJdbcUrl(where.jdbcUrl());
    config.setUsername(where.user());
    config.setPassword(where.password());
    config.setMaximumPoolSize(connections);
    config.setAutoCommit(false);
    config.setConnectionTimeout(WAIT_FOR_CONNECTION.toMillis());
    config.setInitializationFailTimeout(-1);
    config.setConnectionInitSql(
        "set statement_timeout = '30s'; set idle_in_transaction_session_timeout = '5min'");
    config.addDataSourceProperty("ApplicationName", "lampwright");
    config.addDataSourceProperty("connectTimeout", "5");
    config.addDataSourceProperty("socketTimeout", "60");
    config.addDataSourceProperty("tcpKeepAlive", "true");
    // What a refused row held stays out of the exception, and so out of the log.
    config.addDataSourceProperty("logServerErrorDetail", "false");
    return config;
  }

  private static HikariConfig poolOfReplica(
      WorkingDatabase where, int connections, DatabaseWatch watch) {
    HikariConfig config = poolOf(where, connections, watch);
    config.setPoolName("lampwright-replica");
    config.setMinimumIdle(1);
    config.setConnectionTimeout(WAIT_FOR_REPLICA.toMillis());
    config.setConnectionInitSql("set statement_timeout = '4s'");
    config.addDataSourceProperty("connectTimeout", "1");
    config.addDataSourceProperty("socketTimeout", "5");
    return config;
  }

  /** The replica, where there is one, for whoever watches how it holds up. */
  public Optional<Replica> replica() {
    return replica;
  }

  /**
   * For a person in a studio. Who has come only to read may be read for from a replica; the work
   * may be done again then, and only its last result counts.
   *
   * @throws NotEntered where they do not belong to it; nothing is done then
   */
  public <T> T inStudio(StudioId studio, Asker asker, Function<StudioTransaction, T> work) {
    return replica
        .flatMap(
            there ->
                asker
                    .seen()
                    .filter(seen -> seen.studio().equals(studio))
                    .flatMap(
                        seen ->
                            there.read(
                                seen,
                                sql -> StudioTransaction.ofMember(sql, now(), studio, asker),
                                work)))
        .map(Replica.Read::what)
        .orElseGet(() -> inDatabase(studio, asker, work));
  }

  private <T> T inDatabase(StudioId studio, Asker asker, Function<StudioTransaction, T> work) {
    return transact(
        Working.MEMBER, sql -> work.apply(StudioTransaction.ofMember(sql, now(), studio, asker)));
  }

  /** The same, where everything is read as it was at one moment, whatever others change. */
  public <T> T inStudioAtOneMoment(
      StudioId studio, Asker asker, Function<StudioTransaction, T> work) {
    return transact(
        Working.MEMBER,
        sql -> {
          sql.execute("set transaction isolation level repeatable read");
          return work.apply(StudioTransaction.ofMember(sql, now(), studio, asker));
        });
  }

  /** For a person who has not chosen a studio. */
  public <T> T asPerson(Asker asker, Function<PersonTransaction, T> work) {
    return transact(Working.PERSON, sql -> work.apply(new PersonTransaction(sql, now(), asker)));
  }

  /** For the server itself in a studio. */
  public <T> T inStudioForUpkeep(StudioId studio, Function<UpkeepTransaction, T> work) {
    return transact(Working.SERVER, sql -> work.apply(new UpkeepTransaction(sql, now(), studio)));
  }

  /** For nobody yet. */
  public <T> T anonymous(Function<AnonymousTransaction, T> work) {
    return transact(Working.NOBODY, sql -> work.apply(new AnonymousTransaction(sql, now())));
  }

  /**
   * For nobody yet, each statement by itself: what one statement does needs no second round trip to
   * be kept.
   */
  public <T> T eachByItself(Function<AnonymousTransaction, T> work) {
    try (Connection connection = connection(Working.NOBODY)) {
      connection.setAutoCommit(true);
      return work.apply(new AnonymousTransaction(sql(connection, Working.NOBODY), now()));
    } catch (SQLException e) {
      throw DatabaseUnavailable.of(e);
    } catch (RuntimeException e) {
      throw DatabaseUnavailable.orElse(e);
    }
  }

  /** For the search index. */
  public <T> T asIndexer(Function<IndexerTransaction, T> work) {
    try (IndexerTransaction transaction = beginAsIndexer()) {
      return work.apply(transaction);
    } catch (RuntimeException e) {
      throw DatabaseUnavailable.orElse(e);
    }
  }

  /** For the search index, which closes it when it has read enough. */
  public IndexerTransaction beginAsIndexer() {
    Connection connection = connection(Working.INDEXER);
    try {
      return new IndexerTransaction(connection, sql(connection, Working.INDEXER), now());
    } catch (RuntimeException e) {
      rollBackAndClose(connection, e);
      throw DatabaseUnavailable.orElse(e);
    }
  }

  /** Waits for changes on a connection of its own. */
  public ChangeListener listen() {
    return ChangeListener.on(where, ChangeListener.CHANNEL);
  }

  /** Waits for orders about imports on a connection of its own. */
  public ChangeListener listenForImports() {
    return ChangeListener.on(where, ChangeListener.IMPORTS);
  }

  /** Returns when the database answers; for the readiness check. */
  public void check() {
    anonymous(transaction -> transaction.sql().selectOne().fetch());
  }

  private <T> T transact(Working as, Function<DSLContext, T> work) {
    try (Connection connection = connection(as)) {
      T result;
      try {
        result = work.apply(sql(connection, as));
      } catch (RuntimeException | Error e) {
        rollBack(connection, e);
        throw e;
      }
      connection.commit();
      return result;
    } catch (SQLException e) {
      throw DatabaseUnavailable.of(e);
    } catch (RuntimeException e) {
      throw DatabaseUnavailable.orElse(e);
    }
  }

  private Connection connection(Working as) {
    long begun = System.nanoTime();
    try {
      return pool.getConnection();
    } catch (SQLException e) {
      throw DatabaseUnavailable.of(e);
    } finally {
      watch.waited(as.word(), System.nanoTime() - begun);
    }
  }

  private static void rollBackAndClose(Connection connection, Throwable reason) {
    try (connection) {
      rollBack(connection, reason);
    } catch (SQLException e) {
      reason.addSuppressed(e);
    }
  }

  private static void rollBack(Connection connection, Throwable reason) {
    try {
      connection.rollback();
    } catch (SQLException e) {
      reason.addSuppressed(e);
    }
  }

  private DSLContext sql(Connection connection, Working as) {
    return DSL.using(
        Objects.requireNonNull(configurations.get(as))
            .derive(new DefaultConnectionProvider(connection)));
  }

  /** PostgreSQL keeps microseconds; what we return must equal what is read again. */
  public Instant now() {
    return clock.instant().truncatedTo(ChronoUnit.MICROS);
  }

  @Override
  public void close() {
    replica.ifPresent(Replica::close);
    pool.close();
  }
}
