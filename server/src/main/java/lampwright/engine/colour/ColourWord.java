package lampwright.engine.colour;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * The everyday words for colours. Each stands for a few colours of its own, light and dark; any
 * other colour is called by the nearest of them in {@link Oklab}, where equal distances look about
 * equally far apart. Words are common practice without a source; they are checked against the named
 * colours of the CSS Color Module. Near a border two people would say different words.
 */
public enum ColourWord {
  RED(0xc8202a, 0x8b1a1a, 0xff3b30, 0xcc5a55),
  ORANGE(0xf0821e, 0xc8641e, 0xffa850),
  YELLOW(0xf5d327, 0xc9a91e, 0xfff07a),
  GREEN(0x2f9440, 0x1e5a28, 0x8ccb78, 0x6b7d2c, 0x3fdc50, 0x98f090, 0x4c5428, 0x2c3a20),
  TEAL(0x148a8c, 0x0e5055, 0x6fd3cc, 0xa8e8e6, 0x2a5c5c),
  BLUE(0x1f5fc8, 0x14295f, 0x86b7e6, 0x4a78a5, 0xa9cfe6, 0x8cc8ea, 0x263f5c, 0x3c5890, 0x6a90d8),
  VIOLET(0x7a3cb4, 0x46216e, 0xb594e0, 0x9474d8),
  PINK(0xf08cb4, 0xdc4694, 0xf8c8d2),
  BROWN(0x7d4a28, 0x4b2d19, 0xa5754a),
  BEIGE(0xe6d5b5, 0xcdb48c, 0xf5e8d2),
  GREY(0x808080, 0x505050, 0xb4b4b4, 0xd0d0d0, 0x383838, 0xe0e2e4),
  BLACK(0x000000, 0x0a0a0a, 0x1c1c1c),
  WHITE(0xffffff, 0xf2f2f2);

  @SuppressWarnings(
      "ImmutableEnumChecker") // a stream's list of records: immutable, but no type says so
  private final List<Oklab> colours;

  ColourWord(int... rgb) {
    colours = Arrays.stream(rgb).mapToObj(ColourWord::oklab).toList();
  }

  /**
   * Returns the word for a colour of a picture.
   *
   * @param rgb 0xRRGGBB, signals of sRGB
   */
  public static ColourWord of(int rgb) {
    Oklab colour = oklab(rgb);
    ColourWord word = GREY;
    double least = Double.POSITIVE_INFINITY;
    for (ColourWord each : values()) {
      for (Oklab known : each.colours) {
        double away = squaredDistance(colour, known);
        if (away < least) {
          least = away;
          word = each;
        }
      }
    }
    return word;
  }

  /** Returns the word itself: "teal". */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  private static Oklab oklab(int rgb) {
    return Srgb.ofBytes((rgb >> 16) & 0xff, (rgb >> 8) & 0xff, rgb & 0xff)
        .toLinear()
        .toXyz()
        .toOklab();
  }

  private static double squaredDistance(Oklab one, Oklab other) {
    double l = one.lightness() - other.lightness();
    double a = one.a() - other.a();
    double b = one.b() - other.b();
    return l * l + a * a + b * b;
  }
}
