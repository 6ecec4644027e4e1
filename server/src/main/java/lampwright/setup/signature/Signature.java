package lampwright.setup.signature;

import static lampwright.document.Field.list;
import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lampwright.document.Field;
import lampwright.document.ObjectForm;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FiguresComputation;

/**
 * How the light of a setup is: computed from its document, never typed. Each part that is absent
 * has a reason in {@code missing}, and no part that is there has one.
 */
public record Signature(
    LightCounts lights,
    Optional<KeyLight> key,
    Optional<Softness> softness,
    Optional<KeyToFill> ratio,
    Optional<FlashBalance> balance,
    Optional<AmbientOffset> ambient,
    Optional<SunInSetup> sun,
    Optional<Freezing> freezing,
    Optional<FrameEnergy> energy,
    Optional<LargestModifier> largestModifier,
    List<Missing> missing) {

  /**
   * Which computation this is; a stored signature of another one is computed anew. To be raised
   * with every change to a rule of this package, or to figures that it goes by.
   */
  public static final int VERSION = 1;

  private static final Field<Signature, LightCounts> LIGHTS =
      required("lights", LightCounts.FORM, Signature::lights, "How many lights for what.");
  private static final Field<Signature, Optional<KeyLight>> KEY =
      optional("key", KeyLight.FORM, Signature::key, "Where the key comes from.");
  private static final Field<Signature, Optional<Softness>> SOFTNESS =
      optional("softness", Softness.FORM, Signature::softness, "How soft the key is.");
  private static final Field<Signature, Optional<KeyToFill>> RATIO =
      optional("ratio", KeyToFill.FORM, Signature::ratio, "How far the key is over the fill.");
  private static final Field<Signature, Optional<FlashBalance>> BALANCE =
      optional("balance", FlashBalance.FORM, Signature::balance, "Flash against ambient.");
  private static final Field<Signature, Optional<AmbientOffset>> AMBIENT =
      optional("ambient", AmbientOffset.FORM, Signature::ambient, "Ambient against exposure.");
  private static final Field<Signature, Optional<SunInSetup>> SUN =
      optional("sun", SunInSetup.FORM, Signature::sun, "The sun.");
  private static final Field<Signature, Optional<Freezing>> FREEZING =
      optional("freezing", Freezing.FORM, Signature::freezing, "How what moves comes out.");
  private static final Field<Signature, Optional<FrameEnergy>> ENERGY =
      optional("energy", FrameEnergy.FORM, Signature::energy, "What one picture takes of flash.");
  private static final Field<Signature, Optional<LargestModifier>> LARGEST_MODIFIER =
      optional(
          "largest_modifier",
          LargestModifier.FORM,
          Signature::largestModifier,
          "The modifier with the largest face.");
  private static final Field<Signature, List<Missing>> MISSING =
      list(
          "missing", Missing.FORM, PartName.values().length, Signature::missing, "What is absent.");

  /** The signature as it is stored. */
  public static final ObjectForm<Signature> FORM =
      ObjectForm.of(
          "signature",
          "How the light of a setup is.",
          values ->
              new Signature(
                  values.get(LIGHTS),
                  values.get(KEY),
                  values.get(SOFTNESS),
                  values.get(RATIO),
                  values.get(BALANCE),
                  values.get(AMBIENT),
                  values.get(SUN),
                  values.get(FREEZING),
                  values.get(ENERGY),
                  values.get(LARGEST_MODIFIER),
                  values.get(MISSING)),
          List.of(
              LIGHTS,
              KEY,
              SOFTNESS,
              RATIO,
              BALANCE,
              AMBIENT,
              SUN,
              FREEZING,
              ENERGY,
              LARGEST_MODIFIER,
              MISSING));

  public Signature {
    missing = List.copyOf(missing);
  }

  /** The signature of a document; deterministic. */
  public static Signature of(SetupDocument setup) {
    return of(setup, FiguresComputation.of(setup));
  }

  /**
   * The same where the figures are there already.
   *
   * @param figures of this setup
   */
  public static Signature of(SetupDocument setup, Figures figures) {
    Gaps gaps = new Gaps();
    Optional<ChosenKey> key = ChosenKey.find(figures);
    return new Signature(
        LightCounts.of(setup),
        KeyLight.find(setup, figures, key, gaps),
        Softness.find(figures, key, gaps),
        KeyToFill.find(figures, key, gaps),
        FlashBalance.find(figures, gaps),
        AmbientOffset.find(figures, gaps),
        SunInSetup.find(setup, figures, gaps),
        Freezing.find(setup, figures, gaps),
        FrameEnergy.find(figures, gaps),
        LargestModifier.find(setup, gaps),
        gaps.all());
  }

  /** The parts that are there, in the order in which they are told. */
  public List<Part> parts() {
    Stream<Optional<? extends Part>> all =
        Stream.of(
            Optional.of(lights),
            key,
            softness,
            ratio,
            balance,
            ambient,
            sun,
            freezing,
            energy,
            largestModifier);
    return all.<Part>flatMap(Optional::stream).sorted(Comparator.comparing(Part::part)).toList();
  }

  /** Why a part is not there; empty where it is. */
  public Optional<Missing> findMissing(PartName part) {
    return missing.stream().filter(gap -> gap.part() == part).findFirst();
  }
}
