package lampwright.web.http;

import java.time.Duration;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.eclipse.jetty.server.SslConnectionFactory;
import org.eclipse.jetty.util.component.AbstractLifeCycle;
import org.eclipse.jetty.util.ssl.SslContextFactory;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * TLS 1.2 and 1.3 with the network library's own means, and no plugin over them: what we want of it
 * is a few lines. Only suites with forward secrecy and authenticated encryption (RFC 9325, section
 * 4.2). The files are looked at again and again, and renewed ones are taken for the connections
 * that follow; those that are no good are told in the log, and the old ones stay.
 */
final class Tls extends AbstractLifeCycle {

  private final Logger log = LoggerFactory.getLogger(Tls.class);
  private final CertificateFiles files;
  private final Duration betweenLooks;
  private final SslContextFactory.Server context = new SslContextFactory.Server();
  private final ScheduledExecutorService looking =
      Executors.newSingleThreadScheduledExecutor(
          Thread.ofPlatform().name("tls-renewal").daemon().factory());
  private int mark;

  /**
   * @param betweenLooks how often the files are looked at
   * @throws CertificateUnusable where the files cannot be worked with
   */
  Tls(CertificateFiles files, Duration betweenLooks) {
    this.files = files;
    this.betweenLooks = betweenLooks;
    CertificateFiles.Read read = files.read();
    mark = read.mark();
    context.setKeyStore(read.keys());
    context.setKeyStorePassword("");
    context.setIncludeProtocols("TLSv1.3", "TLSv1.2");
    context.setIncludeCipherSuites(
        "TLS_AES_.*",
        "TLS_CHACHA20_POLY1305_SHA256",
        "TLS_ECDHE_.*_WITH_AES_.*_GCM_.*",
        "TLS_ECDHE_.*_WITH_CHACHA20_POLY1305_SHA256");
    context.setRenegotiationAllowed(false);
  }

  /** What a connection begins with, before HTTP. */
  SslConnectionFactory before(String next) {
    return new SslConnectionFactory(context, next);
  }

  @Override
  protected void doStart() {
    long between = betweenLooks.toMillis();
    var _ = looking.scheduleWithFixedDelay(this::look, between, between, TimeUnit.MILLISECONDS);
  }

  @Override
  protected void doStop() {
    looking.shutdownNow();
  }

  private void look() {
    try {
      int now = files.mark();
      if (now == mark) {
        return;
      }
      mark = now;
      CertificateFiles.Read read = files.read();
      context.reload(factory -> factory.setKeyStore(read.keys()));
      log.info("The renewed certificate is in use.");
    } catch (CertificateUnusable e) {
      log.warn("The certificate in use stays. {}", e.getMessage());
    } catch (Exception e) {
      log.error("The renewed certificate cannot be taken", e);
    }
  }
}
