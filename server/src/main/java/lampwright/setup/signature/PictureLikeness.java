package lampwright.setup.signature;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lampwright.engine.colour.ColourWord;
import lampwright.language.Filling;
import lampwright.language.Said;

/**
 * How alike two pictures look, by their tones and main colours.
 *
 * <p>Tones: how far the percentiles of L* are apart on average. Colours: what must be carried how
 * far to make the colours of one into those of the other (Y. Rubner, C. Tomasi and L. Guibas, "The
 * earth mover's distance as a metric for image retrieval", 2000), distances by the CIE 1976 formula
 * (ISO/CIE 11664-4), the nearest carried first: for so few colours that comes close to the least
 * and costs little.
 *
 * @param tones mean difference of the percentiles, in L*
 * @param darker how much darker the other is on average, in L*; minus where it is lighter
 * @param colours mean difference of the colours, in ΔE
 */
public record PictureLikeness(double tones, double darker, double colours) {

  /** What counts half: both are seen at once, and the pictures still have a look in common. */
  private static final double HALF_TONES = 12;

  private static final double HALF_COLOURS = 20;

  /** Tones are told by colours too, so they count less (a judgement). */
  private static final double WEIGHT_OF_TONES = 0.4;

  private static final double ALIKE_TONES = 5;
  private static final double ALIKE_COLOURS = 10;

  /** Eight colours to a row are more than the six that a picture has, and cost no division. */
  private static final int ROW = 3;

  private static final int COLUMN = (1 << ROW) - 1;
  private static final int WAY_BITS = 2 * ROW;
  private static final int WAY = (1 << WAY_BITS) - 1;
  private static final int WAYS = 1 << WAY_BITS;
  private static final int CLOSED = Integer.MAX_VALUE;

  /** Less of a picture does not make its look. */
  private static final double TELLING_SHARE = 0.1;

  /**
   * Holds two pictures against one another.
   *
   * @param asked as {@link BriefTones#toBytes} made it
   * @param bytes the other's are a part of them
   */
  static PictureLikeness of(byte[] asked, byte[] bytes, int offset, int length) {
    double apart = 0;
    double darker = 0;
    for (int i = 0; i < BriefTones.PERCENTILES; i++) {
      apart += Math.abs(asked[i] - bytes[offset + i]);
      darker += asked[i] - bytes[offset + i];
    }
    return new PictureLikeness(
        apart / BriefTones.PERCENTILES,
        darker / BriefTones.PERCENTILES,
        carried(asked, bytes, offset, length));
  }

  public static PictureLikeness of(BriefTones asked, BriefTones here) {
    byte[] other = here.toBytes();
    return of(asked.toBytes(), other, 0, other.length);
  }

  /** How far apart they are, 0 (the same) to 1. */
  public double distance() {
    return WEIGHT_OF_TONES * (tones / (tones + HALF_TONES))
        + (1 - WEIGHT_OF_TONES) * (colours / (colours + HALF_COLOURS));
  }

  /**
   * By which pictures are put in order, 0 to 1 (the same).
   *
   * @param asked as {@link BriefTones#toBytes} made it
   * @param bytes the other's are a part of them
   */
  public static double rank(byte[] asked, byte[] bytes, int offset, int length) {
    return 1 - of(asked, bytes, offset, length).distance();
  }

  private static double carried(byte[] asked, byte[] bytes, int offset, int length) {
    int here = (asked.length - BriefTones.PERCENTILES) / BriefTones.BYTES_OF_SHADE;
    int there = (length - BriefTones.PERCENTILES) / BriefTones.BYTES_OF_SHADE;
    double[] supply = shares(asked, 0, here);
    double[] demand = shares(bytes, offset, there);
    int[] ways = ways(asked, here, bytes, offset, there);
    double carried = 0;
    for (int way = nearest(ways); way != CLOSED; way = nearest(ways)) {
      int from = (way & WAY) >> ROW;
      int to = way & COLUMN;
      double share = Math.min(supply[from], demand[to]);
      carried += share * Math.sqrt(way >> WAY_BITS);
      supply[from] -= share;
      demand[to] -= share;
      close(ways, supply[from] <= demand[to] ? from : -1, to);
    }
    return carried;
  }

  /**
   * From each colour to each of the other's: the squared distance, and in the lowest bits where it
   * stands, so that the least of them is the nearest and says which way it is. Whole numbers
   * without a division, for these few lines are gone through for every picture there is.
   */
  private static int[] ways(byte[] asked, int here, byte[] bytes, int offset, int there) {
    int[] ways = new int[WAYS];
    Arrays.fill(ways, CLOSED);
    for (int i = 0; i < here; i++) {
      for (int j = 0; j < there; j++) {
        int way = (i << ROW) + j;
        ways[way] = (squared(asked, place(0, i), bytes, place(offset, j)) << WAY_BITS) + way;
      }
    }
    return ways;
  }

  private static int nearest(int[] ways) {
    int nearest = CLOSED;
    for (int way : ways) {
      nearest = Math.min(nearest, way);
    }
    return nearest;
  }

  /** Nothing more comes from a colour that is used up, or goes to one that is full. */
  private static void close(int[] ways, int from, int to) {
    for (int i = 0; i < 1 << ROW; i++) {
      ways[from >= 0 ? (from << ROW) + i : (i << ROW) + to] = CLOSED;
    }
  }

  private static int place(int offset, int shade) {
    return offset + BriefTones.PERCENTILES + BriefTones.BYTES_OF_SHADE * shade;
  }

  private static double[] shares(byte[] bytes, int offset, int shades) {
    double[] shares = new double[shades];
    double all = 0;
    for (int i = 0; i < shades; i++) {
      shares[i] = bytes[place(offset, i) + 3];
      all += shares[i];
    }
    for (int i = 0; i < shades; i++) {
      shares[i] /= all;
    }
    return shares;
  }

  private static int squared(byte[] one, int at, byte[] other, int there) {
    int lightness = one[at] - other[there];
    int a = one[at + 1] - other[there + 1];
    int b = one[at + 2] - other[there + 2];
    return lightness * lightness + a * a + b * b;
  }

  /** What is alike and what is not: "tones alike", "black and blue in both". */
  public static List<Said> sentences(BriefTones asked, BriefTones here) {
    PictureLikeness likeness = of(asked, here);
    List<Said> sentences = new ArrayList<>();
    if (likeness.tones() <= ALIKE_TONES) {
      sentences.add(Said.of("signature.alike.tones"));
    } else if (Math.abs(likeness.darker()) >= ALIKE_TONES) {
      sentences.add(
          Said.of(likeness.darker() > 0 ? "signature.alike.darker" : "signature.alike.lighter"));
    } else {
      sentences.add(Said.of("signature.alike.contrast"));
    }
    List<ColourWord> both = new ArrayList<>(words(asked));
    both.retainAll(words(here));
    if (likeness.colours() <= ALIKE_COLOURS) {
      sentences.add(Said.of("signature.alike.colours"));
    }
    if (!both.isEmpty()) {
      sentences.add(
          Said.of(
              "signature.alike.bothColours",
              new Filling.Listed(both.stream().map(PictureLikeness::word).toList())));
    } else if (likeness.colours() > ALIKE_COLOURS) {
      sentences.add(Said.of("signature.alike.otherColours"));
    }
    return sentences;
  }

  private static Filling word(ColourWord colour) {
    return Said.of("signature.colour." + Numbers.key(colour)).asFilling();
  }

  private static List<ColourWord> words(BriefTones tones) {
    return tones.shades().stream()
        .filter(shade -> shade.share() >= TELLING_SHARE)
        .map(shade -> ColourWord.of(shade.rgb()))
        .distinct()
        .toList();
  }
}
