package lampwright.setup.signature;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import lampwright.language.Said;

/**
 * How alike the light of two setups is.
 *
 * @param parts how far apart they are by each part that both know, 0 to 1
 */
public record LightLikeness(PackedLight asked, PackedLight here, Map<LikenessPart, Double> parts) {

  /**
   * What is not known counts in an order like a difference of twice that which counts half: so a
   * setup of which little is known stands behind those that are known to be alike, and before those
   * that are known not to be (a judgement).
   */
  private static final double UNKNOWN = 2.0 / 3;

  /** Up to here a part is called alike: a third of the difference that counts half. */
  private static final double ALIKE = 0.25;

  private static final int MOST_ALIKE = 3;
  private static final int MOST_APART = 2;

  private static final LikenessPart[] PARTS = LikenessPart.values();

  public LightLikeness {
    parts = Map.copyOf(parts);
  }

  public static LightLikeness of(Signature asked, Signature here) {
    return of(PackedLight.of(asked), PackedLight.of(here));
  }

  public static LightLikeness of(PackedLight asked, PackedLight here) {
    Map<LikenessPart, Double> parts = new EnumMap<>(LikenessPart.class);
    for (LikenessPart part : PARTS) {
      double distance = asked.distance(part, here);
      if (!Double.isNaN(distance)) {
        parts.put(part, distance);
      }
    }
    return new LightLikeness(asked, here, parts);
  }

  /**
   * How far apart they are by what both know, 0 (the same) to 1; symmetric.
   *
   * @see #sureness()
   */
  public double distance() {
    double sum = 0;
    for (LikenessPart part : PARTS) {
      sum += part.weight() * parts.getOrDefault(part, 0.0);
    }
    return Math.clamp(sum / known(), 0, 1);
  }

  /** How much of what is compared both know, above 0 to 1; symmetric. */
  public double sureness() {
    return Math.min(1, known());
  }

  private double known() {
    double known = 0;
    for (LikenessPart part : PARTS) {
      known += parts.containsKey(part) ? part.weight() : 0;
    }
    return known;
  }

  /**
   * By which setups are put in order, 0 to 1 (the same): of what the asked one knows, how alike the
   * other is; what that one does not know counts as {@link #UNKNOWN}. Not symmetric.
   */
  public static double rank(PackedLight asked, PackedLight here) {
    double alike = 0;
    double all = 0;
    for (LikenessPart part : PARTS) {
      if (!Double.isNaN(asked.distance(part, asked))) {
        double distance = asked.distance(part, here);
        alike += part.weight() * (1 - (Double.isNaN(distance) ? UNKNOWN : distance));
        all += part.weight();
      }
    }
    return Math.clamp(alike / all, 0, 1);
  }

  /**
   * What is alike, then what is not, the weightiest first: "key 45° left of the nose in both",
   * "here 1.0 stop less ambient".
   */
  public List<Said> sentences() {
    Comparator<LikenessPart> alikeFirst =
        Comparator.<LikenessPart>comparingDouble(part -> part.weight() * (1 - apart(part)))
            .reversed();
    Comparator<LikenessPart> apartFirst =
        Comparator.<LikenessPart>comparingDouble(part -> part.weight() * apart(part)).reversed();
    List<Said> sentences =
        new ArrayList<>(
            Stream.concat(
                    parts.keySet().stream()
                        .filter(part -> apart(part) <= ALIKE)
                        .sorted(alikeFirst.thenComparing(part -> part))
                        .limit(MOST_ALIKE),
                    parts.keySet().stream()
                        .filter(part -> apart(part) > ALIKE)
                        .sorted(apartFirst.thenComparing(part -> part))
                        .limit(MOST_APART))
                .map(part -> LikenessWords.of(part, asked, here, apart(part) <= ALIKE))
                .toList());
    if (known() < 1.0 / 2) {
      sentences.add(Said.of("signature.alike.littleKnown"));
    }
    return sentences;
  }

  private double apart(LikenessPart part) {
    return parts.getOrDefault(part, 1.0);
  }
}
