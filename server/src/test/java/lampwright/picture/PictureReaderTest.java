package lampwright.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.zip.DeflaterOutputStream;
import javax.imageio.ImageIO;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.ShutterTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

final class PictureReaderTest {

  private static final long SEED = 20261126;

  /** Two greens side by side, 40 by 30, in each format. */
  private static byte[] file(PictureFormat format) {
    BufferedImage halves = Drawn.image(40, 30, (x, y) -> Drawn.rgb(200, x < 20 ? 90 : 180, 50));
    return switch (format) {
      case JPEG -> Drawn.jpeg(halves, 0.95);
      case PNG -> Drawn.png(halves);
      case WEBP -> Drawn.webp(40, 30, 90, 180);
      case TIFF -> Drawn.tiff(halves);
    };
  }

  private static Picture read(byte[] file) {
    return assertInstanceOf(
        Picture.class,
        PictureReader.read(ByteBuffer.wrap(file)),
        () -> PictureReader.read(ByteBuffer.wrap(file)).toString());
  }

  private static Unusable refused(byte[] file) {
    return assertInstanceOf(Unusable.class, PictureReader.read(ByteBuffer.wrap(file)));
  }

  private static BufferedImage shown(Picture picture, PictureSize size) {
    try {
      return ImageIO.read(
          new ByteArrayInputStream(Objects.requireNonNull(picture.sizes().get(size))));
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static void assertNear(int expected, int rgb, int most) {
    for (int shift = 0; shift <= 16; shift += 8) {
      int difference = Math.abs(((expected >> shift) & 0xff) - ((rgb >> shift) & 0xff));
      assertTrue(difference <= most, "%06x is not %06x".formatted(rgb & 0xffffff, expected));
    }
  }

  @ParameterizedTest
  @EnumSource(PictureFormat.class)
  void theBytesTellTheFormatAndTheSizeAndTheColours(PictureFormat format) {
    Picture picture = read(file(format));
    assertEquals(format, picture.format());
    assertEquals(List.of(40, 30), List.of(picture.width(), picture.height()));
    BufferedImage screen = shown(picture, PictureSize.SCREEN);
    assertNear(Drawn.rgb(200, 90, 50), screen.getRGB(5, 15), 8);
    assertNear(Drawn.rgb(200, 180, 50), screen.getRGB(34, 15), 8);
  }

  @Test
  void aTiffWhoseTagsAllSpanTheWholeFileAsksForNoMemory() {
    int size = 8 << 20;
    ByteBuffer file = ByteBuffer.allocate(size);
    file.put((byte) 'M').put((byte) 'M').putShort((short) 42).putInt(8).putShort((short) 202);
    file.putShort((short) 0x100).putShort((short) 4).putInt(1).putInt(10);
    file.putShort((short) 0x101).putShort((short) 4).putInt(1).putInt(10);
    for (int tag = 0; tag < 200; tag++) {
      file.putShort((short) (0x9000 + tag))
          .putShort((short) 7)
          .putInt(size - 100_000)
          .putInt(50_000);
    }
    assertTrue(
        PictureReader.read(file.clear()) instanceof Unusable unusable
            && unusable.sentence().contains("tells more beside its picture"));
  }

  @Test
  void sizesAreNeverLargerThanThePictureAndKeepItsShape() {
    Picture picture = read(Drawn.jpeg(Drawn.scene(1600, 900), 0.9));
    BufferedImage thumbnail = shown(picture, PictureSize.THUMBNAIL);
    assertEquals(List.of(320, 180), List.of(thumbnail.getWidth(), thumbnail.getHeight()));
    assertEquals(1280, shown(picture, PictureSize.SCREEN).getWidth());
    assertEquals(1600, shown(picture, PictureSize.LARGE_SCREEN).getWidth());
  }

  @Test
  void aPictureOfMorePixelsThanAreHeldIsReadInSteps() {
    // 27.04 million pixels, more than the 26 that are held.
    BufferedImage large = new BufferedImage(5200, 5200, BufferedImage.TYPE_BYTE_GRAY);
    Picture picture = read(Drawn.png(large));
    assertEquals(5200, picture.width());
    assertEquals(2560, shown(picture, PictureSize.LARGE_SCREEN).getWidth());
  }

  /** Exif 3.0, 4.6.5.1 (tag 0x0112): where the stored picture's first row and column are shown. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void aTurnedPictureIsShownUprightAsExifSays(int orientation) {
    // Stored: its corner of row 0, column 0 is red, the rest of row 0 green, of column 0 blue.
    BufferedImage stored =
        Drawn.image(
            64,
            48,
            (x, y) ->
                (x < 16 && y < 16) ? 0xff0000 : y < 16 ? 0x00ff00 : x < 16 ? 0x0000ff : 0x808080);
    Picture picture =
        read(Drawn.withExif(Drawn.jpeg(stored, 0.95), ExifWriter.turned(orientation)));
    boolean swapped = orientation >= 5;
    assertEquals(swapped ? 48 : 64, picture.width());
    BufferedImage upright = shown(picture, PictureSize.SCREEN);
    // Side of row 0 and of column 0, in the standard's words.
    List<List<String>> sides =
        List.of(
            List.of("top", "left"),
            List.of("top", "right"),
            List.of("bottom", "right"),
            List.of("bottom", "left"),
            List.of("left", "top"),
            List.of("right", "top"),
            List.of("right", "bottom"),
            List.of("left", "bottom"));
    List<String> words = sides.get(orientation - 1);
    int width = upright.getWidth();
    int height = upright.getHeight();
    int middleOfRow0 = at(upright, words.get(0), width, height);
    int middleOfColumn0 = at(upright, words.get(1), width, height);
    assertNear(0x00ff00, middleOfRow0, 12);
    assertNear(0x0000ff, middleOfColumn0, 12);
  }

  private static int at(BufferedImage image, String side, int width, int height) {
    return switch (side) {
      case "top" -> image.getRGB(width / 2, 4);
      case "bottom" -> image.getRGB(width / 2, height - 5);
      case "left" -> image.getRGB(4, height / 2);
      default -> image.getRGB(width - 5, height / 2);
    };
  }

  @Test
  void whatTheCameraWroteIsRead() {
    ExifFacts facts =
        read(Drawn.withExif(Drawn.jpeg(Drawn.scene(60, 40), 0.9), ExifWriter.full(1))).exif();
    assertEquals(Optional.of(FNumber.ofMark(5.6)), facts.fNumber());
    assertEquals(Optional.of(ShutterTime.parse("1/60")), facts.time());
    assertEquals(Optional.of(new Iso(200)), facts.iso());
    assertEquals(85, facts.focalLength().orElseThrow().value());
    assertEquals(Optional.of(LocalDateTime.of(2026, 10, 3, 17, 45, 10)), facts.takenAt());
    assertEquals(Optional.of(ZoneOffset.ofHours(1)), facts.utcOffset());
    assertEquals(Optional.of(new ExifFacts.Size(6000, 4000)), facts.size());
    assertEquals(54.51, facts.place().orElseThrow().latitude().value(), 1e-9);
    assertEquals(-3.25, facts.place().orElseThrow().longitude().value(), 1e-9);
  }

  @Test
  void rubbishInsteadOfWhatACameraWritesLeavesThePicture() {
    Random random = new Random(SEED);
    byte[] plain = Drawn.jpeg(Drawn.scene(32, 24), 0.8);
    for (int i = 0; i < 2000; i++) {
      byte[] exif = ExifWriter.full(1);
      for (int j = 0; j < 1 + i % 20; j++) {
        exif[random.nextInt(exif.length)] = (byte) random.nextInt(256);
      }
      ExifFacts facts = ExifReader.read(new Bytes(ByteBuffer.wrap(exif)));
      assertTrue(facts.orientation().tag() <= 8);
    }
    byte[] noise = new byte[5000];
    random.nextBytes(noise);
    assertEquals(ExifFacts.NONE, read(Drawn.withExif(plain, noise)).exif());
  }

  /** The four-character colour columns of sRGB's own profile, red's and green's exchanged. */
  @Test
  void aPictureWithAnotherProfileIsShownInSrgb() throws IOException {
    byte[] profile = ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();
    String text = new String(profile, StandardCharsets.ISO_8859_1);
    int red = text.indexOf("rXYZ");
    int green = text.indexOf("gXYZ");
    profile[red] = 'g';
    profile[green] = 'r';
    byte[] exchanged = profile;
    BufferedImage image = Drawn.image(40, 30, (x, y) -> Drawn.rgb(200, 60, 30));

    byte[] png = Drawn.withChunk(Drawn.png(image), "iCCP", packed(exchanged));
    assertNear(Drawn.rgb(60, 200, 30), shown(read(png), PictureSize.SCREEN).getRGB(20, 15), 8);

    byte[] segment =
        ByteBuffer.allocate(14 + exchanged.length)
            .put("ICC_PROFILE\0".getBytes(StandardCharsets.US_ASCII))
            .put((byte) 1)
            .put((byte) 1)
            .put(exchanged)
            .array();
    byte[] jpeg = Drawn.withSegment(Drawn.jpeg(image, 0.95), 0xe2, segment);
    assertNear(Drawn.rgb(60, 200, 30), shown(read(jpeg), PictureSize.SCREEN).getRGB(20, 15), 10);
  }

  private static byte[] packed(byte[] profile) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes("other\0\0".getBytes(StandardCharsets.US_ASCII));
    try (DeflaterOutputStream deflater = new DeflaterOutputStream(out)) {
      deflater.write(profile);
    }
    return out.toByteArray();
  }

  @Test
  void aFewBytesThatPromiseVeryManyPixelsAreRefusedBeforeTheyAreDecoded() {
    byte[] png = Drawn.png(Drawn.scene(8, 8));
    ByteBuffer.wrap(png).putInt(16, 65_535).putInt(20, 65_535);
    assertEquals(Unusable.Reason.TOO_MANY_PIXELS, refused(png).reason());
    assertTrue(refused(png).sentence().contains("65535 by 65535"), refused(png).sentence());

    byte[] jpeg = Drawn.jpeg(Drawn.scene(8, 8), 0.8);
    int frame = new String(jpeg, StandardCharsets.ISO_8859_1).indexOf("\u00ff\u00c0");
    ByteBuffer.wrap(jpeg).putShort(frame + 5, (short) 65_535).putShort(frame + 7, (short) 65_535);
    assertEquals(Unusable.Reason.TOO_MANY_PIXELS, refused(jpeg).reason());
  }

  @Test
  void whatIsNoPictureIsToldWhatItIs() {
    assertEquals(Unusable.Reason.NOT_A_PICTURE, refused(new byte[0]).reason());
    byte[] svg = "<svg><script>alert(1)</script></svg>".getBytes(StandardCharsets.UTF_8);
    assertEquals(Unusable.Reason.NOT_A_PICTURE, refused(svg).reason());
    assertTrue(refused(svg).sentence().contains("SVG"), refused(svg).sentence());
    byte[] gif = Drawn.gif(Drawn.scene(8, 8));
    assertTrue(refused(gif).sentence().contains("a GIF"), refused(gif).sentence());
  }

  @ParameterizedTest
  @EnumSource(PictureFormat.class)
  void aFileThatIsCutOffIsNoPicture(PictureFormat format) {
    byte[] whole = file(format);
    for (int length = 12; length < whole.length; length += Math.max(1, whole.length / 40)) {
      PictureReading reading = PictureReader.read(ByteBuffer.wrap(Arrays.copyOf(whole, length)));
      assertTrue(
          reading instanceof Unusable || format == PictureFormat.TIFF,
          format + " cut at " + length);
    }
  }

  @ParameterizedTest
  @EnumSource(PictureFormat.class)
  void ofAnyDamageComesAPictureOrARefusal(PictureFormat format) {
    Random random = new Random(SEED + format.name().length());
    byte[] whole = file(format);
    // Its decoder needs seconds for a size that a damaged head claims.
    int rounds = format == PictureFormat.WEBP ? 100 : 300;
    for (int i = 0; i < rounds; i++) {
      byte[] damaged = whole.clone();
      for (int j = 0; j < 1 + i % 5; j++) {
        damaged[random.nextInt(damaged.length)] ^= (byte) (1 << random.nextInt(8));
      }
      if (i % 3 == 0) {
        damaged = Arrays.copyOf(damaged, random.nextInt(damaged.length));
      }
      try {
        PictureReader.read(ByteBuffer.wrap(damaged));
      } catch (RuntimeException e) {
        throw new AssertionError("Seed " + (SEED + format.name().length()) + ", round " + i, e);
      }
    }
  }
}
