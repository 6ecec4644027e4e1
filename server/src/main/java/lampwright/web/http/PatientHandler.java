package lampwright.web.http;

import java.nio.ByteBuffer;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.io.Connection;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.eclipse.jetty.util.IteratingNestedCallback;
import org.jspecify.annotations.Nullable;

/**
 * Waits for bodies to arrive and for answers to be taken, as long as {@link Patience} says. Only
 * the time that the other side takes is counted, not what our own work takes.
 */
final class PatientHandler extends Handler.Wrapper {

  private static final int PIECE_BYTES = 64 * 1024;

  private final SlowPeers peers;

  PatientHandler(SlowPeers peers) {
    this.peers = peers;
  }

  @Override
  public boolean handle(Request request, Response response, Callback callback) throws Exception {
    Connection connection = request.getConnectionMetaData().getConnection();
    peers.headIsThere(connection);
    Request.addCompletionListener(request, _ -> peers.awaitHead(connection));
    Request arriving = new Arriving(request, connection);
    return super.handle(arriving, new Leaving(arriving, response, connection), callback);
  }

  private final class Arriving extends Request.Wrapper {

    private final Connection connection;
    private long bytes;
    private long waitedNanos;

    Arriving(Request request, Connection connection) {
      super(request);
      this.connection = connection;
    }

    @Override
    public Content.@Nullable Chunk read() {
      Content.Chunk chunk = super.read();
      if (chunk != null) {
        bytes += chunk.remaining();
      }
      return chunk;
    }

    @Override
    public void demand(Runnable then) {
      SlowPeers.Wait wait = peers.wait(connection, peers.patience().nanosFor(bytes) - waitedNanos);
      super.demand(
          () -> {
            waitedNanos += wait.over();
            then.run();
          });
    }
  }

  private final class Leaving extends Response.Wrapper {

    private final Connection connection;
    private long bytes;
    private long waitedNanos;

    Leaving(Request request, Response response, Connection connection) {
      super(request, response);
      this.connection = connection;
    }

    @Override
    public void write(boolean last, @Nullable ByteBuffer content, Callback callback) {
      if (content == null || content.remaining() <= PIECE_BYTES) {
        writePiece(last, content, callback);
        return;
      }
      if (last && !isCommitted() && !getHeaders().contains(HttpHeader.CONTENT_LENGTH)) {
        getHeaders().put(HttpHeader.CONTENT_LENGTH, content.remaining());
      }
      new InPieces(last, content, callback).iterate();
    }

    private void writePiece(boolean last, @Nullable ByteBuffer piece, Callback callback) {
      bytes += piece == null ? 0 : piece.remaining();
      SlowPeers.Wait wait = peers.wait(connection, peers.patience().nanosFor(bytes) - waitedNanos);
      super.write(last, piece, Callback.from(() -> waitedNanos += wait.over(), callback));
    }

    /** Much at once would be waited for as long as much may take, before anything is looked at. */
    private final class InPieces extends IteratingNestedCallback {

      private final boolean last;
      private final ByteBuffer content;
      private boolean written;

      InPieces(boolean last, ByteBuffer content, Callback callback) {
        super(callback);
        this.last = last;
        this.content = content;
      }

      @Override
      protected Action process() {
        if (written) {
          return Action.SUCCEEDED;
        }
        int length = Math.min(content.remaining(), PIECE_BYTES);
        ByteBuffer piece = content.slice(content.position(), length);
        content.position(content.position() + length);
        written = !content.hasRemaining();
        writePiece(last && written, piece, this);
        return Action.SCHEDULED;
      }
    }
  }
}
