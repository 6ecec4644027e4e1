package lampwright.setup.signature;

import static lampwright.document.Field.required;

import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.ObjectForm;
import lampwright.engine.unit.Degrees;
import lampwright.language.Said;
import lampwright.setup.figures.Figures;

/**
 * How soft the key is: how large its face looks from its target.
 *
 * @param angularSize 0 for a point
 */
public record Softness(Degrees angularSize) implements Part {

  /** What people call it. */
  public enum Kind {
    /** Under {@link Softness#FAIRLY_SOFT}: shadows have edges. */
    HARD("hard"),
    /** Shadows have edges that are seen to be soft. */
    FAIRLY_SOFT("fairly soft"),
    /** From {@link Softness#SOFT}: shadows have hardly an edge. */
    SOFT("soft");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /**
   * From here it is fairly soft: a bare head or a plain reflector at portrait distance stays below
   * (common practice, no source).
   */
  public static final Degrees FAIRLY_SOFT = new Degrees(10);

  /**
   * From here it is soft: half as wide as it is far away, where it begins to blur the portrait
   * patterns (common practice, no source; the same border as the engine's patterns have).
   */
  public static final Degrees SOFT = new Degrees(30);

  private static final Field<Softness, Degrees> ANGULAR_SIZE =
      required("angular_size_deg", Numbers.degrees(), Softness::angularSize, "From the subject.");

  static final ObjectForm<Softness> FORM =
      ObjectForm.of(
          "softness",
          "How soft the key is.",
          values -> new Softness(values.get(ANGULAR_SIZE)),
          List.of(ANGULAR_SIZE));

  static Optional<Softness> find(Figures figures, Optional<ChosenKey> key, Gaps gaps) {
    return key.isPresent()
        ? key.map(chosen -> new Softness(Numbers.tidy(chosen.light().angularSize())))
        : gaps.none(PartName.SOFTNESS, Why.KEY_UNKNOWN, ChosenKey.needs(figures));
  }

  public Kind kind() {
    if (angularSize.compareTo(FAIRLY_SOFT) < 0) {
      return Kind.HARD;
    }
    return angularSize.compareTo(SOFT) < 0 ? Kind.FAIRLY_SOFT : Kind.SOFT;
  }

  @Override
  public PartName part() {
    return PartName.SOFTNESS;
  }

  @Override
  public Said words() {
    return Said.of("signature.softness." + Numbers.key(kind()));
  }

  @Override
  public Said sentence() {
    if (angularSize.value() == 0) {
      return Said.of("signature.softness.point");
    }
    return Said.of(
        "signature.softness.sentence",
        Numbers.size(angularSize),
        words().asFilling(),
        switch (kind()) {
          case HARD ->
              Said.of("signature.softness.limit.hard", Numbers.size(FAIRLY_SOFT)).asFilling();
          case FAIRLY_SOFT ->
              Said.of(
                      "signature.softness.limit.fairly_soft",
                      Numbers.size(FAIRLY_SOFT),
                      Numbers.size(SOFT))
                  .asFilling();
          case SOFT -> Said.of("signature.softness.limit.soft", Numbers.size(SOFT)).asFilling();
        });
  }
}
