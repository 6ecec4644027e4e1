package lampwright.web.http;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyStore;
import java.security.cert.Certificate;
import java.util.Base64;
import java.util.List;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;

/** A certificate that vouches for itself, made by the JDK's keytool, as PEM text. */
record TestCertificate(String certificatePem, String keyPem, Certificate certificate) {

  private static final String PASSWORD = "for the tests";

  /** Makes one for localhost. */
  static TestCertificate make(Path folder, String name, String algorithm) throws Exception {
    Path store = folder.resolve(name + ".p12");
    Process keytool =
        new ProcessBuilder(
                List.of(
                    Path.of(System.getProperty("java.home"), "bin", "keytool").toString(),
                    "-genkeypair",
                    "-alias",
                    "server",
                    "-keyalg",
                    algorithm,
                    "-dname",
                    "CN=" + name,
                    "-ext",
                    "san=dns:localhost,ip:127.0.0.1",
                    "-storetype",
                    "PKCS12",
                    "-storepass",
                    PASSWORD,
                    "-keystore",
                    store.toString()))
            .redirectErrorStream(true)
            .start();
    String said = new String(keytool.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, keytool.waitFor(), said);
    KeyStore keys = KeyStore.getInstance("PKCS12");
    try (InputStream in = Files.newInputStream(store)) {
      keys.load(in, PASSWORD.toCharArray());
    }
    Certificate certificate = keys.getCertificate("server");
    return new TestCertificate(
        pem("CERTIFICATE", certificate.getEncoded()),
        pem("PRIVATE KEY", keys.getKey("server", PASSWORD.toCharArray()).getEncoded()),
        certificate);
  }

  private static String pem(String label, byte[] encoded) {
    String text = Base64.getMimeEncoder(64, new byte[] {'\n'}).encodeToString(encoded);
    return "-----BEGIN " + label + "-----\n" + text + "\n-----END " + label + "-----\n";
  }

  /** Writes both files. */
  CertificateFiles write(Path folder) throws Exception {
    CertificateFiles files =
        new CertificateFiles(folder.resolve("certificate.pem"), folder.resolve("key.pem"));
    Files.writeString(files.certificate(), certificatePem);
    Files.writeString(files.key(), keyPem);
    return files;
  }

  /** What trusts this one and no other. */
  SSLContext trusting() throws Exception {
    KeyStore trusted = KeyStore.getInstance("PKCS12");
    trusted.load(null, new char[0]);
    trusted.setCertificateEntry("server", certificate);
    TrustManagerFactory managers =
        TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
    managers.init(trusted);
    SSLContext context = SSLContext.getInstance("TLS");
    context.init(null, managers.getTrustManagers(), null);
    return context;
  }
}
