package lampwright.gear;

import static lampwright.document.Field.list;
import static lampwright.document.Field.required;

import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.ObjectForm;

/** The gear that somebody has tonight. */
public record Kit(
    String name,
    Optional<String> note,
    List<Body> bodies,
    List<Lens> lenses,
    List<Several<Head>> heads,
    List<Several<Pack>> packs,
    List<Several<Modifier>> modifiers,
    List<Pairing> pairings,
    List<Several<Gel>> gels,
    List<NeutralDensity> neutralDensities,
    List<Several<Stand>> stands) {

  private static final int MOST_KINDS = 60;
  private static final int MOST_PAIRINGS = 200;
  private static final int MOST_DENSITIES = 12;

  private static final Field<Kit, String> NAME =
      required("name", GearForms.name(), Kit::name, "What the studio calls it.");
  private static final Field<Kit, Optional<String>> NOTE = GearForms.note(Kit::note);
  private static final Field<Kit, List<Body>> BODIES =
      list("bodies", Body.FORM, MOST_KINDS, Kit::bodies, "Camera bodies.");
  private static final Field<Kit, List<Lens>> LENSES =
      list("lenses", Lens.FORM, MOST_KINDS, Kit::lenses, "Lenses.");
  private static final Field<Kit, List<Several<Head>>> HEADS =
      list("heads", Several.form("head", Head.FORM), MOST_KINDS, Kit::heads, "Heads.");
  private static final Field<Kit, List<Several<Pack>>> PACKS =
      list(
          "packs",
          Several.form("pack", Pack.FORM),
          MOST_KINDS,
          Kit::packs,
          "Packs that heads hang on by their pack's name.");
  private static final Field<Kit, List<Several<Modifier>>> MODIFIERS =
      list(
          "modifiers",
          Several.form("modifier", Modifier.FORM),
          MOST_KINDS,
          Kit::modifiers,
          "Modifiers; each head has its standard reflector besides.");
  private static final Field<Kit, List<Pairing>> PAIRINGS =
      list(
          "pairings",
          Pairing.FORM,
          MOST_PAIRINGS,
          Kit::pairings,
          "Readings of heads with modifiers on, which win over a modifier's stated loss.");
  private static final Field<Kit, List<Several<Gel>>> GELS =
      list("gels", Several.form("gel", Gel.FORM), MOST_KINDS, Kit::gels, "Gels.");
  private static final Field<Kit, List<NeutralDensity>> DENSITIES =
      list(
          "neutral_densities",
          NeutralDensity.FORM,
          MOST_DENSITIES,
          Kit::neutralDensities,
          "Grey filters that fit the lenses.");
  private static final Field<Kit, List<Several<Stand>>> STANDS =
      list("stands", Several.form("stand", Stand.FORM), MOST_KINDS, Kit::stands, "Stands.");

  /** The kit's fields, without what they must fulfil together: for a kit that is still in parts. */
  public static final ObjectForm<Kit> PARTS =
      ObjectForm.of(
          "kit",
          "The gear that somebody has tonight. Pairings name heads and modifiers of the kit,"
              + " each pair once; a head's pack is one of the kit's packs, whose names differ;"
              + " there are at most 200 heads in all.",
          values ->
              new Kit(
                  values.get(NAME),
                  values.get(NOTE),
                  values.get(BODIES),
                  values.get(LENSES),
                  values.get(HEADS),
                  values.get(PACKS),
                  values.get(MODIFIERS),
                  values.get(PAIRINGS),
                  values.get(GELS),
                  values.get(DENSITIES),
                  values.get(STANDS)),
          List.of(
              NAME, NOTE, BODIES, LENSES, HEADS, PACKS, MODIFIERS, PAIRINGS, GELS, DENSITIES,
              STANDS));

  /** The kit as a document. */
  public static final ObjectForm<Kit> FORM = PARTS.checked(KitChecks::check);

  /** What somebody metered of this head with this modifier on, by their names. */
  public Optional<Output.ByReading> findPairing(Head head, Modifier modifier) {
    return pairings.stream()
        .filter(p -> p.head().equals(head.name()) && p.modifier().equals(modifier.name()))
        .map(Pairing::reading)
        .findFirst();
  }
}
