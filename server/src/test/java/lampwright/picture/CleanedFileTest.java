package lampwright.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.Directory;
import com.drew.metadata.Tag;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import com.drew.metadata.exif.GpsDirectory;
import com.drew.metadata.xmp.XmpDirectory;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What is left in a cleaned file, as a reader that is not ours tells it. */
final class CleanedFileTest {

  private static final String NOTE = "<x:xmpmeta>Somebody Invented was here</x:xmpmeta>";
  private static final List<String> PERSONAL =
      List.of("Somebody", "SERIAL-0815", "xmpmeta", "hidden behind the end");

  private static byte[] telling(PictureFormat format) {
    byte[] exif = ExifWriter.full(6);
    byte[] note = NOTE.getBytes(StandardCharsets.UTF_8);
    BufferedImage scene = Drawn.scene(64, 48);
    byte[] told =
        switch (format) {
          case JPEG -> {
            byte[] jpeg = Drawn.withExif(Drawn.jpeg(scene, 0.9), exif);
            byte[] xmp = ("http://ns.adobe.com/xap/1.0/\0" + NOTE).getBytes(StandardCharsets.UTF_8);
            byte[] more = Drawn.withSegment(Drawn.withSegment(jpeg, 0xe1, xmp), 0xfe, note);
            yield Drawn.withSegment(more, 0xed, note);
          }
          case PNG ->
              Drawn.withChunk(
                  Drawn.withChunk(Drawn.png(scene), "eXIf", exif),
                  "tEXt",
                  "Author\0Somebody Invented".getBytes(StandardCharsets.ISO_8859_1));
          case WEBP -> Drawn.webpWith(Drawn.webp(40, 30, 90, 180), 40, 30, exif, NOTE);
          case TIFF -> throw new IllegalArgumentException("A TIFF is made anew");
        };
    return ByteBuffer.allocate(told.length + 21)
        .put(told)
        .put("hidden behind the end".getBytes(StandardCharsets.UTF_8))
        .array();
  }

  private static byte[] cleaned(byte[] file) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    for (ByteBuffer piece : CleanedFile.of(ByteBuffer.wrap(file))) {
      byte[] bytes = new byte[piece.remaining()];
      piece.get(bytes);
      out.writeBytes(bytes);
    }
    return out.toByteArray();
  }

  @ParameterizedTest
  @EnumSource(value = PictureFormat.class, names = "TIFF", mode = EnumSource.Mode.EXCLUDE)
  void nothingThatTellsOfPlacesAndPeopleIsLeftAndThePixelsAreTheSame(PictureFormat format)
      throws Exception {
    byte[] file = telling(format);
    byte[] clean = cleaned(file);

    assertFalse(directories(file, GpsDirectory.class).isEmpty(), "the test's own file tells it");
    assertTrue(directories(clean, GpsDirectory.class).isEmpty());
    assertTrue(directories(clean, XmpDirectory.class).isEmpty());
    assertTrue(directories(clean, ExifSubIFDDirectory.class).isEmpty());
    List<ExifIFD0Directory> left = directories(clean, ExifIFD0Directory.class);
    assertEquals(1, left.size());
    assertEquals(List.of(0x0112), left.getFirst().getTags().stream().map(Tag::getTagType).toList());
    assertEquals(6, left.getFirst().getInt(0x0112));
    String bytes = new String(clean, StandardCharsets.ISO_8859_1);
    for (String word : PERSONAL) {
      assertFalse(bytes.contains(word), format + " still holds " + word);
    }
    assertArrayEquals(pixels(file), pixels(clean));
    assertArrayEquals(clean, cleaned(clean));
  }

  private static <T extends Directory> List<T> directories(byte[] file, Class<T> kind)
      throws Exception {
    return List.copyOf(
        ImageMetadataReader.readMetadata(new ByteArrayInputStream(file))
            .getDirectoriesOfType(kind));
  }

  private static int[] pixels(byte[] file) throws Exception {
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(file));
    return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
  }
}
