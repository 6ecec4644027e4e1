package lampwright.search;

import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lampwright.meaning.Meaning;
import lampwright.search.filter.EarthPoint;
import lampwright.search.filter.Traits;

/**
 * The SHA-256 of all that an entry says, 64 hexadecimal digits: two entries with the same one are
 * the same, in whatever process they were made.
 */
final class Fingerprint {

  private Fingerprint() {}

  static String of(IndexEntry entry) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      try (DataOutputStream out =
          new DataOutputStream(new DigestOutputStream(OutputStream.nullOutputStream(), digest))) {
        write(out, entry);
      }
      return HexFormat.of().formatHex(digest.digest());
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java knows SHA-256.", e);
    } catch (IOException e) {
      throw new UncheckedIOException("Nothing is written anywhere.", e);
    }
  }

  private static void write(DataOutputStream out, IndexEntry entry) throws IOException {
    out.writeUTF(entry.studio());
    out.writeUTF(entry.setup());
    out.writeInt(entry.revision());
    out.writeUTF(entry.changedAt().toString());
    out.writeUTF(entry.title());
    out.writeUTF(entry.intent());
    write(out, entry.moods());
    write(out, entry.genre().stream().toList());
    write(out, entry.placeName().stream().toList());
    write(out, entry.placeKind().stream().toList());
    write(out, entry.written());
    write(out, entry.gear());
    write(out, entry.roles());
    out.writeInt(entry.lightCount());
    out.writeUTF(entry.state());
    out.writeBoolean(entry.archived());
    out.writeBoolean(entry.forAll());
    Optional<byte[]> meaning = entry.meaning().map(Meaning::toBytes);
    out.writeInt(meaning.map(bytes -> bytes.length).orElse(-1));
    if (meaning.isPresent()) {
      out.write(meaning.get());
    }
    write(out, entry.traits());
    for (Optional<Packed> facts : List.of(entry.light(), entry.picture())) {
      byte[] bytes = facts.map(Packed::toBytes).orElseGet(() -> new byte[0]);
      out.writeInt(bytes.length);
      out.write(bytes);
    }
  }

  private static void write(DataOutputStream out, Traits traits) throws IOException {
    out.writeInt(traits.words().size());
    for (Map.Entry<?, List<String>> words : new TreeMap<>(traits.words()).entrySet()) {
      out.writeUTF(words.getKey().toString());
      write(out, words.getValue());
    }
    out.writeInt(traits.numbers().size());
    for (Map.Entry<?, Double> number : new TreeMap<>(traits.numbers()).entrySet()) {
      out.writeUTF(number.getKey().toString());
      out.writeDouble(number.getValue());
    }
    Optional<EarthPoint> point = traits.point();
    out.writeBoolean(point.isPresent());
    if (point.isPresent()) {
      out.writeDouble(point.get().latitudeDeg());
      out.writeDouble(point.get().longitudeDeg());
    }
  }

  private static void write(DataOutputStream out, List<String> texts) throws IOException {
    out.writeInt(texts.size());
    for (String text : texts) {
      out.writeUTF(text);
    }
  }
}
