package lampwright.setup.signature;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampwright.engine.colour.Lab;
import lampwright.engine.colour.Srgb;

/**
 * The tones of a picture in so few words that they stand in an address, {@code
 * 2.8.20.41.63.80.95~1b2a3c.60~c08040.22}: percentiles of lightness, then each main colour with its
 * share. So a picture is searched with that nobody keeps.
 *
 * @param lightness {@link #PERCENTILES} of L*, whole, 0 to 100, ascending
 * @param shades up to {@link #MOST_SHADES} main colours, their shares in whole hundredths
 */
public record BriefTones(List<Integer> lightness, List<PictureSignature.Shade> shades) {

  /** The 2nd, 10th, 25th, 50th, 75th, 90th and 98th. */
  public static final int PERCENTILES = 7;

  public static final int MOST_SHADES = 6;

  /** Of one colour in bytes: L*, a*, b* and its share. */
  static final int BYTES_OF_SHADE = 4;

  private static final Pattern WRITTEN =
      Pattern.compile("\\d{1,3}(?:\\.\\d{1,3}){6}(?:~[0-9a-f]{6}\\.\\d{1,3}){1,6}");

  /** Shares that were rounded one by one may come to a little more than all. */
  private static final int MOST_HUNDREDTHS = 100 + MOST_SHADES;

  public BriefTones {
    lightness = List.copyOf(lightness);
    shades = List.copyOf(shades);
  }

  /**
   * Shortens the tones of a picture.
   *
   * @param percentiles of L*, as many as {@link #PERCENTILES}, ascending
   * @param shades its main colours, the most of it first
   */
  public static BriefTones of(List<Double> percentiles, List<PictureSignature.Shade> shades) {
    return new BriefTones(
        percentiles.stream().map(l -> Math.clamp(Math.round(l), 0, 100)).toList(),
        shades.stream()
            .limit(MOST_SHADES)
            .map(shade -> new PictureSignature.Shade(shade.rgb() & 0xffffff, share(shade)))
            .filter(shade -> shade.share() > 0)
            .toList());
  }

  private static double share(PictureSignature.Shade shade) {
    return Math.round(100 * shade.share()) / 100.0;
  }

  /** Reads what {@link #text} wrote. */
  public static Optional<BriefTones> find(String text) {
    if (!WRITTEN.matcher(text).matches()) {
      return Optional.empty();
    }
    String[] parts = text.split("~", -1);
    List<Integer> lightness =
        Arrays.stream(parts[0].split("\\.", -1)).map(Integer::valueOf).toList();
    List<PictureSignature.Shade> shades = new ArrayList<>();
    int hundredths = 0;
    for (String part : List.of(parts).subList(1, parts.length)) {
      int dot = part.indexOf('.');
      int share = Integer.parseInt(part.substring(dot + 1));
      hundredths += share;
      shades.add(
          new PictureSignature.Shade(
              HexFormat.fromHexDigits(part.substring(0, dot)), share / 100.0));
    }
    boolean sound =
        lightness.getLast() <= 100
            && lightness.stream().sorted().toList().equals(lightness)
            && shades.stream().allMatch(shade -> shade.share() > 0)
            && hundredths <= MOST_HUNDREDTHS;
    return sound ? Optional.of(new BriefTones(lightness, shades)) : Optional.empty();
  }

  public String text() {
    return Stream.concat(
            Stream.of(lightness.stream().map(String::valueOf).collect(Collectors.joining("."))),
            shades.stream()
                .map(shade -> "%06x.%d".formatted(shade.rgb(), Math.round(100 * shade.share()))))
        .collect(Collectors.joining("~"));
  }

  /**
   * The same for {@link PictureLikeness#rank}: the percentiles, then of each colour L*, a*, b*
   * (CIELAB, whole) and its share in hundredths.
   */
  public byte[] toBytes() {
    byte[] bytes = new byte[PERCENTILES + BYTES_OF_SHADE * shades.size()];
    for (int i = 0; i < PERCENTILES; i++) {
      bytes[i] = lightness.get(i).byteValue();
    }
    int at = PERCENTILES;
    for (PictureSignature.Shade shade : shades) {
      Lab lab = lab(shade.rgb());
      bytes[at++] = whole(lab.lightness());
      bytes[at++] = whole(lab.a());
      bytes[at++] = whole(lab.b());
      bytes[at++] = (byte) Math.round(100 * shade.share());
    }
    return bytes;
  }

  private static Lab lab(int rgb) {
    return Srgb.ofBytes((rgb >> 16) & 0xff, (rgb >> 8) & 0xff, rgb & 0xff).toLab();
  }

  /** No colour of sRGB goes beyond what a byte holds. */
  private static byte whole(double value) {
    return (byte) Math.clamp(Math.round(value), Byte.MIN_VALUE, Byte.MAX_VALUE);
  }
}
