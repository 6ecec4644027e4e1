package lampwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class SettingsTest {

  @Test
  void nothingSetIsAServerOnLoopbackWithADatabaseOfItsOwn() {
    Settings settings = Settings.read(Map.of("PATH", "/bin"));
    assertEquals(8080, settings.port());
    assertEquals("127.0.0.1", settings.host());
    assertTrue(settings.database().isEmpty());
    assertFalse(settings.demo().isOpen());
    assertTrue(settings.firstOwner().isEmpty());
    assertTrue(settings.data().isAbsolute());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          LAMPWRIGHT_PORTS | 1 | LAMPWRIGHT_PORTS is no setting. Maybe LAMPWRIGHT_PORT?
          LAMPWRIGHT_PORT | 70000 | LAMPWRIGHT_PORT (70000) must be a whole number from 0 to 65535.
          LAMPWRIGHT_PORT | eighty | LAMPWRIGHT_PORT (eighty) must be a whole number
          LAMPWRIGHT_DEMO | yes | LAMPWRIGHT_DEMO (yes) must be true, few, false or removed. Maybe true?
          LAMPWRIGHT_HOST | no host at all | LAMPWRIGHT_HOST (no host at all) must be a name or address
          LAMPWRIGHT_PUBLIC_URL | ftp://light.example | LAMPWRIGHT_PUBLIC_URL (ftp://light.example) must be
          LAMPWRIGHT_PUBLIC_URL | https://light.example/a | LAMPWRIGHT_PUBLIC_URL (https://light.example/a) must
          LAMPWRIGHT_OWNER_EMAIL | a@light.example | LAMPWRIGHT_OWNER_EMAIL and LAMPWRIGHT_OWNER_PASSWORD belong
          LAMPWRIGHT_TLS_KEY | key.pem | LAMPWRIGHT_TLS_CERTIFICATE and LAMPWRIGHT_TLS_KEY belong together.
          LAMPWRIGHT_TLS_CERTIFICATE | a.pem | LAMPWRIGHT_TLS_CERTIFICATE and LAMPWRIGHT_TLS_KEY belong together.
          LAMPWRIGHT_LOG | xml | LAMPWRIGHT_LOG (xml) must be text or json.
          LAMPWRIGHT_SLOW_QUERY_MS | 0 | LAMPWRIGHT_SLOW_QUERY_MS (0) must be a whole number from 1
          LAMPWRIGHT_DRAIN_SECONDS | 301 | LAMPWRIGHT_DRAIN_SECONDS (301) must be a whole number from 0 to 300.
          LAMPWRIGHT_REQUESTS_AT_ONCE | many | LAMPWRIGHT_REQUESTS_AT_ONCE (many) must be a whole number
          LAMPWRIGHT_MEMBER_REQUESTS_PER_MINUTE | -1 | LAMPWRIGHT_MEMBER_REQUESTS_PER_MINUTE (-1) must be
          LAMPWRIGHT_METRICS_TOKEN | no-such-file | LAMPWRIGHT_METRICS_TOKEN (no-such-file) must be a file
          LAMPWRIGHT_S3_ENDPOINT | https://s3.example | LAMPWRIGHT_S3_ENDPOINT is for pictures in a bucket.
          LAMPWRIGHT_PICTURES | s3://No_Bucket/at all | LAMPWRIGHT_PICTURES (s3://No_Bucket/at all) must be
          LAMPWRIGHT_DATABASE_OWNER_URL | postgresql://a | LAMPWRIGHT_DATABASE_OWNER_URL names the owner
          LAMPWRIGHT_REPLICA_URL | postgresql://a | LAMPWRIGHT_REPLICA_URL names a replica of a database that is
          """)
  void aWrongSettingIsToldInOneLine(String key, String value, String told) {
    SettingRefused refused =
        assertThrows(SettingRefused.class, () -> Settings.read(Map.of(key, value)));
    assertTrue(String.valueOf(refused.getMessage()).startsWith(told), refused.getMessage());
    assertFalse(String.valueOf(refused.getMessage()).contains("\n"));
  }

  @Test
  void whoSpeaksTlsIsVisitedOverTlsAndBelievesNoProxy() {
    Map<String, String> tls = new HashMap<>();
    tls.put("LAMPWRIGHT_TLS_CERTIFICATE", "a.pem");
    tls.put("LAMPWRIGHT_TLS_KEY", "b.pem");
    assertTrue(Settings.read(tls).isSecure());
    tls.put("LAMPWRIGHT_PUBLIC_URL", "https://light.example");
    assertFalse(Settings.read(tls).isBehindProxy());
    tls.put("LAMPWRIGHT_PUBLIC_URL", "http://light.example");
    SettingRefused refused = assertThrows(SettingRefused.class, () -> Settings.read(tls));
    assertTrue(String.valueOf(refused.getMessage()).contains("must begin with https"));
    assertTrue(Settings.read(Map.of("LAMPWRIGHT_PUBLIC_URL", "https://a.example")).isBehindProxy());
  }

  @Test
  void theSecretOfAScraperIsLongAndNeverShown(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("metrics.token");
    Map<String, String> environment = Map.of("LAMPWRIGHT_METRICS_TOKEN", file.toString());
    for (String weak : List.of("", "too short", "with a space in it, but long enough otherwise")) {
      Files.writeString(file, weak);
      SettingRefused refused = assertThrows(SettingRefused.class, () -> Settings.read(environment));
      assertTrue(String.valueOf(refused.getMessage()).contains("32 letters and digits"));
      assertTrue(weak.isEmpty() || !String.valueOf(refused.getMessage()).contains(weak));
    }
    String secret = "0123456789abcdef".repeat(4);
    Files.writeString(file, secret + "\n");
    Running running = Settings.read(environment).running();
    assertEquals(Optional.of(secret), running.metricsToken());
    assertFalse(running.toString().contains(secret));
  }

  @Test
  void theDemoListensOnLoopbackOnly() {
    Map<String, String> open = Map.of("LAMPWRIGHT_DEMO", "true", "LAMPWRIGHT_HOST", "0.0.0.0");
    SettingRefused refused = assertThrows(SettingRefused.class, () -> Settings.read(open));
    assertTrue(String.valueOf(refused.getMessage()).contains("must be a loopback address"));
    assertTrue(
        Settings.read(Map.of("LAMPWRIGHT_DEMO", "true", "LAMPWRIGHT_HOST", "::1")).demo().isOpen());
  }

  @Test
  void noPasswordIsToldOrShown() {
    Map<String, String> owner = new HashMap<>();
    owner.put("LAMPWRIGHT_OWNER_EMAIL", "a@light.example");
    owner.put("LAMPWRIGHT_OWNER_PASSWORD", "too short");
    SettingRefused refused = assertThrows(SettingRefused.class, () -> Settings.read(owner));
    assertFalse(String.valueOf(refused.getMessage()).contains("too short"));
    owner.put("LAMPWRIGHT_OWNER_PASSWORD", "long enough for this");
    Settings settings = Settings.read(owner);
    assertFalse((settings + " " + settings.firstOwner()).contains("long enough"));
  }

  @ParameterizedTest
  @EnumSource(Setting.class)
  void everySettingSaysWhatItIs(Setting setting) {
    assertFalse(setting.unit().isBlank());
    assertTrue(setting.sentence().endsWith("."));
  }
}
