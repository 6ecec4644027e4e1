package lampwright.web.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLException;
import javax.net.ssl.SSLParameters;
import javax.net.ssl.SSLSocket;
import lampwright.metrics.Metrics;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The server's own TLS, spoken to with the JDK's. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class TlsTest {

  private static final Patience QUICK =
      new Patience(
          Duration.ofSeconds(20), Duration.ofSeconds(2), Duration.ofSeconds(20), 1024, 256, 4000);

  @TempDir static Path folder;

  private TestCertificate first;
  private TestCertificate second;

  @BeforeAll
  void twoCertificatesAreMade() throws Exception {
    first = TestCertificate.make(folder, "first", "EC");
    second = TestCertificate.make(folder, "second", "RSA");
  }

  private CertificateFiles files(String name, TestCertificate certificate) throws Exception {
    return certificate.write(Files.createDirectories(folder.resolve(name)));
  }

  private static HttpServer start(CertificateFiles files) {
    Door door =
        new Door(
            _ -> Optional.empty(),
            _ -> Optional.empty(),
            Optional.empty(),
            (_, _, _) -> {},
            new SessionCookie(true),
            new CsrfTokens(new SecureRandom()));
    return HttpServer.start(
        new HttpServer.Place(
            "127.0.0.1", 0, true, new HostNames(List.of()), false, Optional.of(files), QUICK),
        door,
        (problem, _) -> problem.kind().slug(),
        new SecureRandom(),
        Traffic.unbounded(new Metrics()),
        routes ->
            routes.get(
                "/api/begin",
                context -> {
                  door.begin(context, "secret", Duration.ofDays(1));
                  context.result(context.scheme());
                },
                Access.Outside.ANYONE));
  }

  private static HttpResponse<String> get(HttpServer server, SSLContext trusting, String version)
      throws Exception {
    SSLParameters parameters = new SSLParameters();
    parameters.setProtocols(new String[] {version});
    try (HttpClient client =
        HttpClient.newBuilder().sslContext(trusting).sslParameters(parameters).build()) {
      return client.send(
          HttpRequest.newBuilder(URI.create("https://localhost:" + server.port() + "/api/begin"))
              .build(),
          HttpResponse.BodyHandlers.ofString());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"TLSv1.3", "TLSv1.2"})
  void visitorsComeOverTlsAndTheBrowserKeepsToIt(String version) throws Exception {
    HttpServer server = start(files("plain" + version, first));
    try {
      HttpResponse<String> answer = get(server, first.trusting(), version);
      assertEquals("https", answer.body());
      assertEquals(
          "max-age=31536000",
          answer.headers().firstValue("Strict-Transport-Security").orElseThrow());
      String cookie = answer.headers().firstValue("Set-Cookie").orElseThrow();
      assertTrue(cookie.startsWith("__Host-lampwright_session=secret;"), cookie);
      assertTrue(cookie.contains("Secure"), cookie);
      assertEquals(version, answer.sslSession().orElseThrow().getProtocol());
    } finally {
      server.close();
    }
  }

  @Test
  void suitesWithoutForwardSecrecyAndPlainHttpAreNotSpoken() throws Exception {
    HttpServer server = start(files("weak", second));
    try {
      try (SSLSocket socket =
          (SSLSocket)
              second.trusting().getSocketFactory().createSocket("127.0.0.1", server.port())) {
        socket.setEnabledProtocols(new String[] {"TLSv1.2"});
        // The mandatory suite of TLS 1.2 (RFC 5246, section 9): no forward secrecy.
        String weak = "TLS_RSA_WITH_AES_128_CBC_SHA";
        String other = "TLS_ECDHE_RSA_WITH_AES_128_CBC_SHA256";
        socket.setEnabledCipherSuites(new String[] {other});
        assertThrows(SSLException.class, socket::startHandshake, weak);
      }
      try (Socket plain = new Socket(InetAddress.getLoopbackAddress(), server.port())) {
        plain.setSoTimeout(20_000);
        plain
            .getOutputStream()
            .write(
                "GET /api/begin HTTP/1.1\r\nHost: localhost\r\n\r\n"
                    .getBytes(StandardCharsets.US_ASCII));
        String answer = read(plain);
        assertFalse(answer.contains("HTTP/1.1 200"), answer);
        assertFalse(answer.contains("Set-Cookie"), answer);
      }
    } finally {
      server.close();
    }
  }

  private static String read(Socket socket) {
    try {
      return new String(socket.getInputStream().readAllBytes(), StandardCharsets.ISO_8859_1);
    } catch (IOException reset) {
      return "";
    }
  }

  @Test
  void renewedFilesAreTakenWithoutANewStartAndBrokenOnesAreNot() throws Exception {
    CertificateFiles files = files("renewed", first);
    HttpServer server = start(files);
    try {
      assertEquals(200, get(server, first.trusting(), "TLSv1.3").statusCode());
      Files.writeString(files.key(), "half a key");
      assertEquals(200, get(server, first.trusting(), "TLSv1.3").statusCode());
      Files.writeString(files.certificate(), second.certificatePem());
      Files.writeString(files.key(), second.keyPem());
      assertEquals(200, untilTaken(server).statusCode());
      assertThrows(IOException.class, () -> get(server, first.trusting(), "TLSv1.3"));
    } finally {
      server.close();
    }
  }

  private HttpResponse<String> untilTaken(HttpServer server) throws Exception {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(20);
    while (true) {
      try {
        return get(server, second.trusting(), "TLSv1.3");
      } catch (IOException e) {
        if (System.nanoTime() > end) {
          throw e;
        }
      }
    }
  }

  @Test
  void whatCannotBeWorkedWithIsToldInOneLineWithoutTheKey() throws Exception {
    CertificateFiles good = files("good", first);
    CertificateFiles other = files("other", second);
    Path text = Files.writeString(folder.resolve("text.pem"), "no certificate");
    Path old =
        Files.writeString(
            folder.resolve("old.pem"), first.keyPem().replace("PRIVATE KEY", "EC PRIVATE KEY"));
    Path missing = folder.resolve("missing.pem");
    refuses(new CertificateFiles(missing, good.key()), "LAMPWRIGHT_TLS_CERTIFICATE", "is no file");
    refuses(new CertificateFiles(good.certificate(), missing), "LAMPWRIGHT_TLS_KEY", "is no file");
    refuses(new CertificateFiles(text, good.key()), "LAMPWRIGHT_TLS_CERTIFICATE", "holds no");
    refuses(new CertificateFiles(good.certificate(), text), "LAMPWRIGHT_TLS_KEY", "PKCS #8");
    refuses(new CertificateFiles(good.certificate(), old), "LAMPWRIGHT_TLS_KEY", "PKCS #8");
    refuses(
        new CertificateFiles(good.certificate(), other.key()), "LAMPWRIGHT_TLS_KEY", "no EC key");
    TestCertificate third = TestCertificate.make(folder, "third", "EC");
    CertificateFiles thirds = files("third", third);
    refuses(
        new CertificateFiles(good.certificate(), thirds.key()),
        "LAMPWRIGHT_TLS_KEY",
        "is not the key of the first certificate");
  }

  private static void refuses(CertificateFiles files, String setting, String told) {
    CertificateUnusable refused = assertThrows(CertificateUnusable.class, () -> start(files));
    String message = String.valueOf(refused.getMessage());
    assertTrue(message.startsWith(setting + " ("), message);
    assertTrue(message.contains(told), message);
    assertFalse(message.contains("\n"), message);
  }
}
