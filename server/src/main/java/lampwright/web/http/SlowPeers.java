package lampwright.web.http;

import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.time.Duration;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.eclipse.jetty.io.Connection;
import org.eclipse.jetty.io.EndPoint;
import org.eclipse.jetty.io.ssl.SslConnection;
import org.eclipse.jetty.util.component.AbstractLifeCycle;

/**
 * Cuts off who is too slow, and who has too many connections already. The network library ends a
 * connection on which nothing moves; who sends a byte now and then (slow head, slow body, slow
 * reader) would hold one for days.
 */
final class SlowPeers extends AbstractLifeCycle implements Connection.Listener {

  private final Patience patience;
  private final boolean behindProxy;
  private final Set<Wait> waits = ConcurrentHashMap.newKeySet();
  private final Set<Connection> open = ConcurrentHashMap.newKeySet();
  private final Map<Connection, Wait> heads = new ConcurrentHashMap<>();
  private final Map<Connection, InetAddress> counted = new ConcurrentHashMap<>();
  private final Map<InetAddress, Integer> counts = new ConcurrentHashMap<>();
  private final ScheduledExecutorService looking =
      Executors.newSingleThreadScheduledExecutor(
          Thread.ofPlatform().name("slow-peers").daemon().factory());

  /**
   * @param behindProxy whether all visitors may come from this machine's own address
   */
  SlowPeers(Patience patience, boolean behindProxy) {
    this.patience = patience;
    this.behindProxy = behindProxy;
  }

  /** What somebody is waited for: until when. */
  final class Wait {

    private final EndPoint end;
    private final long begun = System.nanoTime();
    private final long allowedNanos;

    private Wait(EndPoint end, long allowedNanos) {
      this.end = end;
      this.allowedNanos = allowedNanos;
    }

    /** It is over; tells how long it was. */
    long over() {
      waits.remove(this);
      return System.nanoTime() - begun;
    }

    private void cutWhereTooLong() {
      if (!end.isOpen()) {
        waits.remove(this);
      } else if (System.nanoTime() - begun > allowedNanos) {
        waits.remove(this);
        end.close(new TimeoutException("The other side is too slow."));
      }
    }
  }

  Patience patience() {
    return patience;
  }

  /** Waits for the other side of a connection for so long. */
  Wait wait(Connection connection, long allowedNanos) {
    Wait wait = new Wait(connection.getEndPoint(), allowedNanos);
    waits.add(wait);
    return wait;
  }

  /** The head of a request is there. */
  void headIsThere(Connection connection) {
    Wait head = heads.remove(connection);
    if (head != null) {
      head.over();
    }
  }

  /** The next request may come. */
  void awaitHead(Connection connection) {
    Wait head = wait(connection, patience.head().toNanos());
    Wait before = heads.put(connection, head);
    if (before != null) {
      before.over();
    }
    if (!connection.getEndPoint().isOpen()) {
      headIsThere(connection);
    }
  }

  @Override
  public void onOpened(Connection connection) {
    // TLS is a connection around the one that requests come by, which is looked at.
    if (connection instanceof SslConnection) {
      return;
    }
    open.add(connection);
    awaitHead(connection);
    if (!isCounted(connection)) {
      connection.getEndPoint().close();
    }
  }

  /**
   * Ends the connections on which no request has begun for so long; of a younger one the request
   * may be on its way.
   *
   * @return whether others are there still
   */
  boolean endIdle(Duration time) {
    heads.forEach(
        (connection, head) -> {
          if (System.nanoTime() - head.begun > time.toNanos()) {
            connection.getEndPoint().close();
          }
        });
    return !open.isEmpty();
  }

  /** Whether it is one of those that its address may have. */
  private boolean isCounted(Connection connection) {
    if (!(connection.getEndPoint().getRemoteSocketAddress() instanceof InetSocketAddress remote)
        || (behindProxy && remote.getAddress().isLoopbackAddress())) {
      return true;
    }
    InetAddress from = remote.getAddress();
    if (counts.merge(from, 1, Integer::sum) > patience.fromOneAddress()) {
      forget(from);
      return false;
    }
    // One that is closed does not tell any more where it came from.
    counted.put(connection, from);
    return true;
  }

  private void forget(InetAddress from) {
    counts.computeIfPresent(from, (_, count) -> count > 1 ? count - 1 : null);
  }

  @Override
  public void onClosed(Connection connection) {
    if (connection instanceof SslConnection) {
      return;
    }
    open.remove(connection);
    headIsThere(connection);
    InetAddress from = counted.remove(connection);
    if (from != null) {
      forget(from);
    }
  }

  @Override
  protected void doStart() {
    long between = patience.betweenLooks().toMillis();
    var _ =
        looking.scheduleWithFixedDelay(
            () -> waits.forEach(Wait::cutWhereTooLong), between, between, TimeUnit.MILLISECONDS);
  }

  @Override
  protected void doStop() {
    looking.shutdownNow();
  }
}
