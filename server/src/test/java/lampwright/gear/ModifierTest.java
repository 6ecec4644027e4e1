package lampwright.gear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import lampwright.document.Json;
import lampwright.document.Reading;
import lampwright.engine.beam.CandelaTable;
import lampwright.engine.beam.CutSpread;
import lampwright.engine.beam.Even;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class ModifierTest {

  private static Modifier modifier(String fields) {
    Object json = Json.parse("{\"name\": \"one\"," + fields.replace('\'', '"') + "}");
    Reading.Sound<?> sound =
        assertInstanceOf(Reading.Sound.class, Modifier.FORM.read(json), json.toString());
    return assertInstanceOf(Modifier.class, sound.value());
  }

  /**
   * REFERENCE section 5, "typical losses against a standard 65 degree reflector, on axis, same
   * head, 2 m": common practice, no source. Sizes that the table leaves open are usual ones.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "small dish | 0.5 | 1 | 'kind':'dish','face':{'shape':'disc','diameter_m':0.42}",
        "silver umbrella | 1 | 1.5 | 'kind':'umbrella','spread_deg':100,'transmission':0.85,"
            + "'face':{'shape':'disc','diameter_m':0.9}",
        "shoot-through umbrella | 1.5 | 2.5 | 'kind':'umbrella',"
            + "'face':{'shape':'disc','diameter_m':0.9}",
        "small softbox | 1.5 | 2 | 'kind':'softbox',"
            + "'face':{'shape':'rectangle','width_m':0.6,'height_m':0.6}",
        "0.9 x 1.2 softbox | 2 | 2.5 | 'kind':'softbox',"
            + "'face':{'shape':'rectangle','width_m':0.9,'height_m':1.2}",
        "1.5 m octagon | 2.5 | 3 | 'kind':'octagon','face':{'shape':'disc','diameter_m':1.54}",
        "strip box | 2 | 3 | 'kind':'strip',"
            + "'face':{'shape':'rectangle','width_m':0.3,'height_m':1.2}",
        "bare head | 2.5 | 3.5 | 'kind':'bare'",
        "standard reflector | 0 | 0 | 'kind':'reflector'",
      },
      quoteCharacter = '"')
  void usualLossesComeOut(String name, double atLeast, double atMost, String fields) {
    double loss = modifier(fields).effect().loss().value();
    assertTrue(loss >= atLeast && loss <= atMost, name + " loses " + loss);
  }

  /** The table's row "+grid 0.5-1.5": common practice, no source. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "'kind':'softbox','face':{'shape':'rectangle','width_m':0.9,'height_m':1.2}",
        "'kind':'reflector'",
        "'kind':'dish','face':{'shape':'disc','diameter_m':0.42}"
      })
  void aGridTakesHalfAStopToOneAndAHalfMoreOnTheAxis(String fields) {
    double plain = modifier(fields).effect().loss().value();
    double gridded = modifier(fields + ",'grid':true").effect().loss().value();
    assertTrue(gridded - plain >= 0.5 && gridded - plain <= 1.5, "more by " + (gridded - plain));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "'kind':'softbox','face':{'shape':'rectangle','width_m':0.9,'height_m':1.2}",
        "'kind':'reflector'",
        "'kind':'dish','face':{'shape':'disc','diameter_m':0.42}"
      })
  void aDeeperGridCutsTheSidesAndNotTheAxisFarAway(String fields) {
    String far = fields + ",'loss_at_m':49,'grid':true";
    double gridded = modifier(far).effect().loss().value();
    double deep = modifier(far + ",'grid_depth_to_width':4").effect().loss().value();
    assertEquals(gridded, deep, 0.05);
  }

  /** Same flux in 40 instead of 65 degrees: (m2 + 1) / (m1 + 1), REFERENCE section 4. */
  @Test
  void aNarrowerReflectorGainsByTheSameFluxInLess() {
    assertEquals(0, modifier("'kind':'reflector','spread_deg':65").effect().loss().value(), 1e-12);
    double m1 = Math.log(0.5) / Math.log(Math.cos(Math.toRadians(32.5)));
    double m2 = Math.log(0.5) / Math.log(Math.cos(Math.toRadians(20)));
    double gain = Math.log((m2 + 1) / (m1 + 1)) / Math.log(2);
    assertEquals(
        -gain, modifier("'kind':'reflector','spread_deg':40").effect().loss().value(), 1e-9);
  }

  @Test
  void aMeteredLossWinsAndOnlyAnAbsentOneIsModelled() {
    Modifier metered = modifier("'kind':'softbox','loss_stops':2.2");
    assertFalse(metered.isLossModelled());
    assertEquals(2.2, metered.effect().loss().value());
    assertEquals(new Even(), metered.effect().spread());
    Modifier none = modifier("'kind':'softbox','loss_stops':0");
    assertFalse(none.isLossModelled());
    assertEquals(0, none.effect().loss().value());
    assertTrue(modifier("'kind':'softbox'").isLossModelled());
    assertFalse(modifier("'kind':'reflector'").isLossModelled());
    assertFalse(Modifier.standardReflector().isLossModelled());
    assertTrue(modifier("'kind':'reflector','spread_deg':40").isLossModelled());
  }

  @Test
  void aModelledLossShowsItsSteps() {
    Modifier box = modifier("'kind':'softbox','face':{'shape':'disc','diameter_m':0.9}");
    assertEquals(box.effect().loss().value(), box.findLossWorking().orElseThrow().value(), 1e-12);
    assertTrue(box.findLossWorking().orElseThrow().toString().contains("trade-practice"));
    assertTrue(modifier("'kind':'softbox','loss_stops':1").findLossWorking().isEmpty());
  }

  @Test
  void aSnootCutsAndDoesNotGather() {
    Modifier snoot = modifier("'kind':'snoot','cutoff_deg':8");
    assertInstanceOf(CutSpread.class, snoot.effect().spread());
    assertTrue(snoot.effect().loss().value() > 0);
    assertTrue(modifier("'kind':'barn_doors','spread_deg':30").effect().loss().value() >= 0);
  }

  @Test
  void aTableIsWrittenAsItWasReadAndShapesTheLight() {
    String fields =
        "'kind':'reflector','candela':{'vertical_deg':[0,30,60],'horizontal_deg':[0],"
            + "'candela':[[900,450.5,0]]},'grid':true,'grid_depth_to_width':1.25,"
            + "'transmission':0.9";
    Modifier modifier = modifier(fields);
    assertTrue(modifier.isLossModelled());
    CutSpread cut = assertInstanceOf(CutSpread.class, modifier.effect().spread());
    assertInstanceOf(CandelaTable.class, cut.beam());
    Map<String, Object> written = Modifier.FORM.writeObject(modifier);
    Reading<Modifier> again = Modifier.FORM.read(Json.parse(Json.print(written)));
    assertEquals(new Reading.Sound<>(modifier), again);
  }

  /** A modifier goes on the bayonet that it is made for: common practice, no source. */
  @ParameterizedTest
  @CsvSource({
    "small ring, small ring, true",
    "small ring, Small RING, true",
    "small ring, large ring, false",
    "small ring, ring, false",
    ", large ring, true",
    "small ring, , true",
    ", , true"
  })
  void fitsAHeadOfTheSameMountOrOfNone(
      @Nullable String modifierMount, @Nullable String headMount, boolean fits) {
    String mount = modifierMount == null ? "" : ",'mount':'" + modifierMount + "'";
    Head head = GearDocuments.head(headMount == null ? "" : "'mount':'" + headMount + "'");
    assertEquals(fits, modifier("'kind':'softbox'" + mount).fits(head));
  }

  @Test
  void theStandardReflectorFitsEveryHeadAndTakesOne() {
    Modifier standard = Modifier.standardReflector();
    assertTrue(standard.fits(GearDocuments.head("'mount':'small ring'")));
    assertEquals(1, standard.takesHeads());
  }

  @Test
  void mountAndNumberOfHeadsAreWrittenAsTheyWereRead() {
    Modifier box = modifier("'kind':'octagon','mount':'large ring','takes_heads':4");
    assertEquals(Optional.of("large ring"), box.mount());
    assertEquals(4, box.takesHeads());
    assertEquals(
        Map.of("name", "one", "kind", "octagon", "mount", "large ring", "takes_heads", 4.0),
        GearDocuments.written(Modifier.FORM, box));
  }

  @Test
  void aModifierThatSaysNothingOfMountAndHeadsIsWrittenWithoutThem() {
    Modifier plain = modifier("'kind':'softbox'");
    assertEquals(Optional.empty(), plain.mount());
    assertEquals(1, plain.takesHeads());
    assertEquals(Map.of("name", "one", "kind", "softbox"), Modifier.FORM.writeObject(plain));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "'kind':'softbox','grid_depth_to_width':2 | /grid_depth_to_width",
        "'kind':'softbox','cutoff_deg':2 | /cutoff_deg",
        "'kind':'softbox','mount':' ' | /mount",
        "'kind':'softbox','takes_heads':0 | /takes_heads",
        "'kind':'softbox','takes_heads':13 | /takes_heads",
        "'kind':'softbox','takes_heads':1.5 | /takes_heads",
        "'kind':'dish','candela':{'vertical_deg':[0,0],'horizontal_deg':[0],'candela':[[1,1]]}"
            + " | /candela/vertical_deg",
        "'kind':'dish','candela':{'vertical_deg':[0,9],'horizontal_deg':[5],'candela':[[1,1]]}"
            + " | /candela/horizontal_deg",
        "'kind':'dish','candela':{'vertical_deg':[0,9],'horizontal_deg':[0],'candela':[[1,1,1]]}"
            + " | /candela/candela",
        "'kind':'dish','candela':{'vertical_deg':[0,9],'horizontal_deg':[0],'candela':[[0,1]]}"
            + " | /candela/candela",
      })
  void whatDoesNotFitIsPointedAt(String fields, String pointer) {
    Object json = Json.parse("{\"name\": \"one\"," + fields.replace('\'', '"') + "}");
    Reading<Modifier> reading = Modifier.FORM.read(json);
    Reading.Faulty<?> faulty = assertInstanceOf(Reading.Faulty.class, reading);
    assertEquals(pointer, faulty.problems().getFirst().pointer());
  }
}
