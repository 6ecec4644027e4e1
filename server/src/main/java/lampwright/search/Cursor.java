package lampwright.search;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32C;
import lampwright.search.filter.Filter;

/**
 * Where a page ended, and how rare the question's words were when the first page was made.
 *
 * <p>It is opaque to the outside but no secret: whoever forges one harms only their own pages.
 *
 * @param question what the cursor belongs to, as a checksum of the question's text and filters
 * @param setups how many setups the studio had
 * @param rarities one for each wish
 * @param scale by which scores become shares
 * @param rank the last hit's rank
 * @param setup the last hit
 */
record Cursor(
    long question,
    int setups,
    List<QueryPlan.Rarity> rarities,
    Fusion.Scale scale,
    long rank,
    String setup) {

  private static final byte VERSION = 2;
  private static final int LONGEST = 4_000;

  /** What must be alike for a cursor to go on: everything but the page's length. */
  static long checksum(Question question) {
    StringBuilder all = new StringBuilder();
    append(all, question.studio());
    append(all, question.text());
    append(all, question.standing().toString());
    append(all, question.order().name());
    question.filters().stream().map(Filter::bracket).sorted().forEach(f -> append(all, f));
    question
        .like()
        .ifPresent(
            like -> {
              append(all, like.setup().orElse(""));
              append(all, like.by().name());
              append(all, HexFormat.of().formatHex(like.asked().toBytes()));
            });
    CRC32C checksum = new CRC32C();
    for (int i = 0; i < all.length(); i++) {
      checksum.update(all.charAt(i) >> 8);
      checksum.update(all.charAt(i));
    }
    return checksum.getValue();
  }

  private static void append(StringBuilder all, String part) {
    all.append(part.length()).append(':').append(part);
  }

  String write() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (DataOutputStream out = new DataOutputStream(bytes)) {
      out.writeByte(VERSION);
      out.writeLong(question);
      out.writeInt(setups);
      out.writeByte(rarities.size());
      for (QueryPlan.Rarity rarity : rarities) {
        out.writeInt(rarity.setups());
        out.writeBoolean(rarity.misspelt());
      }
      out.writeDouble(scale.words());
      out.writeDouble(scale.meaning());
      out.writeDouble(scale.share());
      out.writeLong(rank);
      out.writeUTF(setup);
    } catch (IOException e) {
      throw new UncheckedIOException("A cursor in memory could not be written", e);
    }
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes.toByteArray());
  }

  /** Reads a cursor of this question, or nothing where it is of another or was tampered with. */
  static Optional<Cursor> find(String text, Question question, int wishes) {
    if (text.length() > LONGEST) {
      return Optional.empty();
    }
    try (DataInputStream in =
        new DataInputStream(new ByteArrayInputStream(Base64.getUrlDecoder().decode(text)))) {
      if (in.readByte() != VERSION) {
        return Optional.empty();
      }
      long of = in.readLong();
      int setups = in.readInt();
      int count = in.readUnsignedByte();
      List<QueryPlan.Rarity> rarities = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        rarities.add(new QueryPlan.Rarity(in.readInt(), in.readBoolean()));
      }
      Fusion.Scale scale = new Fusion.Scale(in.readDouble(), in.readDouble(), in.readDouble());
      Cursor cursor =
          new Cursor(of, setups, List.copyOf(rarities), scale, in.readLong(), in.readUTF());
      boolean sound =
          of == checksum(question)
              && count == wishes
              && setups >= 0
              && scale.isSound()
              && rarities.stream().allMatch(rarity -> rarity.setups() >= 0)
              && in.read() < 0;
      return sound ? Optional.of(cursor) : Optional.empty();
    } catch (IOException | IllegalArgumentException _) {
      return Optional.empty();
    }
  }
}
