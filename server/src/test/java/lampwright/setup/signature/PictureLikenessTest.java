package lampwright.setup.signature;

import static lampwright.wording.WordsForTests.english;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import lampwright.setup.signature.PictureSignature.Shade;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PictureLikenessTest {

  private static final List<Double> DARK = List.of(1.0, 3.0, 8.0, 18.0, 40.0, 61.0, 88.0);
  private static final List<Double> LIGHT = List.of(21.0, 43.0, 58.0, 78.0, 90.0, 95.0, 99.0);

  private static BriefTones tones(List<Double> lightness, Shade... shades) {
    return BriefTones.of(lightness, List.of(shades));
  }

  /** Any picture: percentiles that rise, and one to six colours. */
  private static BriefTones any(Random random) {
    List<Double> lightness =
        random.doubles(BriefTones.PERCENTILES, 0, 100).sorted().boxed().toList();
    double[] shares = random.doubles(1 + random.nextInt(BriefTones.MOST_SHADES), 0.1, 1).toArray();
    double all = 0;
    for (double share : shares) {
      all += share;
    }
    List<Shade> shades = new ArrayList<>();
    for (double share : shares) {
      shades.add(new Shade(random.nextInt(1 << 24), share / all));
    }
    return BriefTones.of(lightness, shades);
  }

  private static List<BriefTones> many() {
    Random random = new Random(20261127);
    return IntStream.range(0, 300).mapToObj(_ -> any(random)).toList();
  }

  @Test
  void aPictureIsLikeItselfAndNoPictureIsNearerToItThanThat() {
    List<BriefTones> many = many();
    for (BriefTones one : many) {
      assertEquals(0, PictureLikeness.of(one, one).distance());
      for (BriefTones other : many) {
        double distance = PictureLikeness.of(one, other).distance();
        assertTrue(distance >= 0 && distance < 1, distance + " of " + one + " " + other);
      }
    }
  }

  @Test
  void whichOfTwoIsAskedMakesNoDifference() {
    List<BriefTones> many = many();
    for (int i = 1; i < many.size(); i++) {
      double there = PictureLikeness.of(many.get(i - 1), many.get(i)).distance();
      double back = PictureLikeness.of(many.get(i), many.get(i - 1)).distance();
      assertEquals(there, back, 1e-9, many.get(i - 1) + " " + many.get(i));
    }
  }

  /** L*, a*, b* of pure red: 53.2, 80.1, 67.2 (widely published for sRGB and D65; from memory). */
  @Test
  void oneColourIsCarriedToAnotherByTheirDistanceInCielab() {
    BriefTones red = tones(DARK, new Shade(0xff0000, 1));
    BriefTones black = tones(DARK, new Shade(0x000000, 1));
    double expected = Math.sqrt(53.2 * 53.2 + 80.1 * 80.1 + 67.2 * 67.2);
    assertEquals(expected, PictureLikeness.of(red, black).colours(), 1);
  }

  @Test
  void whatIsCarriedIsThatOfAPlainListOfAllWaysTheNearestFirst() {
    List<BriefTones> many = many();
    for (int i = 1; i < many.size(); i++) {
      assertEquals(
          carriedPlainly(many.get(i - 1), many.get(i)),
          PictureLikeness.of(many.get(i - 1), many.get(i)).colours(),
          1e-9,
          many.get(i - 1) + " " + many.get(i));
    }
  }

  private record Way(int from, int to, double distance) {}

  private static double carriedPlainly(BriefTones one, BriefTones other) {
    byte[] here = one.toBytes();
    byte[] there = other.toBytes();
    double[] supply = one.shades().stream().mapToDouble(Shade::share).toArray();
    double[] demand = other.shades().stream().mapToDouble(Shade::share).toArray();
    double supplied = Arrays.stream(supply).sum();
    double demanded = Arrays.stream(demand).sum();
    List<Way> ways = new ArrayList<>();
    for (int from = 0; from < supply.length; from++) {
      for (int to = 0; to < demand.length; to++) {
        double squared = 0;
        for (int axis = 0; axis < 3; axis++) {
          int at = BriefTones.PERCENTILES + axis;
          double apart =
              here[at + BriefTones.BYTES_OF_SHADE * from]
                  - there[at + BriefTones.BYTES_OF_SHADE * to];
          squared += apart * apart;
        }
        ways.add(new Way(from, to, Math.sqrt(squared)));
      }
    }
    ways.sort(Comparator.comparingDouble(Way::distance));
    double carried = 0;
    for (Way way : ways) {
      double share = Math.min(supply[way.from()] / supplied, demand[way.to()] / demanded);
      carried += share * way.distance();
      supply[way.from()] -= share * supplied;
      demand[way.to()] -= share * demanded;
    }
    return carried;
  }

  @Test
  void onlyWhatThereIsMoreOfIsCarried() {
    BriefTones half = tones(DARK, new Shade(0x000000, 0.5), new Shade(0xffffff, 0.5));
    BriefTones quarter = tones(DARK, new Shade(0x000000, 0.75), new Shade(0xffffff, 0.25));
    assertEquals(25, PictureLikeness.of(half, quarter).colours(), 1e-9);
  }

  @Test
  void theFartherOnePartGoesTheLessAlikeTheyAre() {
    double before = -1;
    for (int green = 0; green <= 255; green += 15) {
      BriefTones other = tones(DARK, new Shade(green << 8, 1));
      double distance = PictureLikeness.of(tones(DARK, new Shade(0, 1)), other).distance();
      assertTrue(distance >= before, green + ": " + distance);
      before = distance;
    }
    assertTrue(before > 0.3, "black and green: " + before);
    Shade grey = new Shade(0x808080, 1);
    assertTrue(PictureLikeness.of(tones(DARK, grey), tones(LIGHT, grey)).distance() > 0.2);
  }

  @Test
  void whatIsAlikeIsSaid() {
    BriefTones blue = tones(DARK, new Shade(0x101418, 0.6), new Shade(0x2040a0, 0.4));
    BriefTones pale = tones(LIGHT, new Shade(0xf0f0f0, 0.9), new Shade(0xd0c0a0, 0.1));
    assertEquals(
        List.of("tones alike", "colours alike", "black and blue in both"),
        english(PictureLikeness.sentences(blue, blue)));
    assertEquals(
        List.of("here lighter", "other colours"), english(PictureLikeness.sentences(blue, pale)));
    assertEquals("here darker", english(PictureLikeness.sentences(pale, blue).getFirst()));
  }

  @Test
  void tonesComeBackFromTheirTextAsTheyWere() {
    for (BriefTones tones : many()) {
      assertEquals(Optional.of(tones), BriefTones.find(tones.text()), tones.text());
    }
    assertEquals(
        "1.3.8.18.40.61.88~101418.60~2040a0.40",
        tones(DARK, new Shade(0x101418, 0.6), new Shade(0x2040a0, 0.4)).text());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "1.3.8.18.40.61.88",
        "1.3.8.18.40.61~101418.60",
        "1.3.8.18.40.61.101~101418.60",
        "1.3.8.18.17.61.88~101418.60",
        "1.3.8.18.40.61.88~101418.0",
        "1.3.8.18.40.61.88~101418.60~2040a0.60",
        "1.3.8.18.40.61.88~10141g.60",
        "1.3.8.18.40.61.88~101418.60~",
        "<script>",
      })
  void whatIsNoToneIsNotRead(String text) {
    assertEquals(Optional.empty(), BriefTones.find(text));
  }
}
