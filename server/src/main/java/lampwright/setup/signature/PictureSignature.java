package lampwright.setup.signature;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import lampwright.engine.colour.ColourWord;
import lampwright.engine.colour.Key;
import lampwright.engine.unit.Stops;
import lampwright.language.Filling;
import lampwright.language.Said;

/**
 * How a finished picture looks, from its tones.
 *
 * @param key whether it lives in its darks or its lights
 * @param spread of its luminances, from the tenth to the ninetieth percentile
 * @param warmth mean b* of CIELAB: plus is towards yellow, minus towards blue
 * @param colours the everyday words for its main colours, the most of it first
 */
public record PictureSignature(Key key, Stops spread, double warmth, List<NamedColour> colours) {

  /** How far its darks and lights are apart. */
  public enum Contrast {
    /** Under {@link PictureSignature#NORMAL}. */
    LOW("low contrast"),
    NORMAL("normal contrast"),
    /** From {@link PictureSignature#STRONG}. */
    HIGH("high contrast");

    private final String words;

    Contrast(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /** Which way its colours lean as a whole. */
  public enum Warmth {
    COOL("cool"),
    NEUTRAL("neutral"),
    WARM("warm");

    private final String words;

    Warmth(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /** A colour of the picture: 0xRRGGBB and its share of the pixels, 0 to 1. */
  public record Shade(int rgb, double share) {}

  /** A word for a colour, and the share of the pixels that it is for, 0 to 1. */
  public record NamedColour(ColourWord colour, double share) {}

  /** From here the contrast is normal (common practice, no source). */
  public static final Stops NORMAL = new Stops(2);

  /** From here it is high (common practice, no source). */
  public static final Stops STRONG = new Stops(5);

  /**
   * How far from neutral it must lean to be called warm or cool: a little more than the 2.3 that
   * are just seen as a difference in CIELAB (as commonly quoted; the limit is a judgement).
   */
  public static final double LEANS = 3;

  /** Less of a colour is not told. */
  public static final double LEAST_SHARE = 0.02;

  public PictureSignature {
    colours = List.copyOf(colours);
  }

  /**
   * The signature of a picture's tones.
   *
   * @param shades its main colours
   */
  public static PictureSignature of(Key key, Stops spread, double warmth, List<Shade> shades) {
    Map<ColourWord, Double> shares = new EnumMap<>(ColourWord.class);
    shades.forEach(shade -> shares.merge(ColourWord.of(shade.rgb()), shade.share(), Double::sum));
    List<NamedColour> colours = new ArrayList<>();
    shares.forEach((word, share) -> colours.add(new NamedColour(word, Numbers.tidy(share))));
    colours.removeIf(colour -> colour.share() < LEAST_SHARE);
    colours.sort(Comparator.comparingDouble(NamedColour::share).reversed());
    return new PictureSignature(key, spread, warmth, colours);
  }

  public Contrast contrast() {
    if (spread.compareTo(NORMAL) < 0) {
      return Contrast.LOW;
    }
    return spread.compareTo(STRONG) < 0 ? Contrast.NORMAL : Contrast.HIGH;
  }

  public Warmth lean() {
    if (warmth < -LEANS) {
      return Warmth.COOL;
    }
    return warmth > LEANS ? Warmth.WARM : Warmth.NEUTRAL;
  }

  /** "low key, cool". */
  public Said words() {
    return Said.of("signature.picture.words", tones("").asFilling(), leans().asFilling());
  }

  private Said tones(String begins) {
    return Said.of("signature.tones." + begins + Numbers.key(key));
  }

  private Said leans() {
    return Said.of("signature.warmth." + Numbers.key(lean()));
  }

  /** "Low key, high contrast, cool; mostly black, blue and grey." */
  public Said sentence() {
    List<Filling> parts =
        new ArrayList<>(
            List.of(
                tones("begins.").asFilling(),
                Said.of("signature.contrast." + Numbers.key(contrast())).asFilling(),
                new Filling.Size(spread.value()),
                leans().asFilling()));
    if (colours.isEmpty()) {
      return Said.of("signature.picture.sentence", parts.toArray(Filling[]::new));
    }
    parts.add(coloursInWords().asFilling());
    return Said.of("signature.picture.colours", parts.toArray(Filling[]::new));
  }

  /** "black 41 %, blue 30 %". */
  public Said coloursInWords() {
    return Said.of(
        "signature.colours",
        new Filling.Series(
            colours.stream()
                .map(
                    of ->
                        Said.of(
                                "signature.colour",
                                Said.of("signature.colour." + Numbers.key(of.colour())).asFilling(),
                                new Filling.Rounded(100 * of.share(), 0))
                            .asFilling())
                .toList()));
  }
}
