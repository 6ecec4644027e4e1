package lampwright.engine.beam;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import lampwright.engine.light.ConservedFlux;
import lampwright.engine.light.EmittingFace;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class SpreadTest {

  private static final double STANDARD_SR = Lobe.ofBeam(Lobe.STANDARD_REFLECTOR).solidAngleSr();

  private static List<Degrees> degrees(double... values) {
    List<Degrees> all = new ArrayList<>();
    for (double value : values) {
      all.add(new Degrees(value));
    }
    return all;
  }

  private static CandelaTable lopsided() {
    return CandelaTable.of(
        degrees(0, 20, 45, 90, 120),
        degrees(0, 90, 180, 360),
        List.of(
            List.of(900.0, 700.0, 300.0, 20.0, 0.0),
            List.of(900.0, 800.0, 350.0, 50.0, 5.0),
            List.of(900.0, 400.0, 100.0, 0.0, 0.0),
            List.of(900.0, 700.0, 300.0, 20.0, 0.0)));
  }

  static Stream<ConservedFlux> modifiers() {
    EmittingFace point = new EmittingFace.PointSource();
    EmittingFace box = new EmittingFace.Rectangle(new Metres(0.9), new Metres(1.2));
    return Stream.of(
            new Even(),
            new Omnidirectional(),
            Lobe.ofBeam(new Degrees(65)),
            Lobe.ofBeam(new Degrees(12)),
            lopsided(),
            CutSpread.of(new Even(), new Opening.Grid(1.5)),
            CutSpread.of(Lobe.ofBeam(new Degrees(65)), new Opening.Grid(5)),
            CutSpread.of(lopsided(), new Opening.Grid(0.7)),
            CutSpread.of(
                Lobe.ofBeam(new Degrees(65)), new Opening.Snoot(new Degrees(10), new Degrees(6))),
            CutSpread.of(
                CutSpread.of(new Even(), new Opening.Snoot(new Degrees(30), new Degrees(0))),
                new Opening.Grid(2)))
        .flatMap(
            spread ->
                Stream.of(
                    new ConservedFlux(0.6, point, spread), new ConservedFlux(0.4, box, spread)));
  }

  /** Conservation of energy; the integral is by Gauss-Legendre rules of the Hipparchus library. */
  @ParameterizedTest
  @MethodSource("modifiers")
  void theIntensityOverTheSphereAddsUpToTheShareOfTheFluxThatLeaves(ConservedFlux modifier) {
    double flux = 1_000;
    double axis = modifier.axisRatio() * flux / STANDARD_SR / modifier.spread().relativeAt(1, 0);
    double sum = axis * gaussIntegral(modifier.spread());
    assertEquals(modifier.passedShare() * flux, sum, modifier.passedShare() * flux * 0.001);
  }

  private static double gaussIntegral(Spread spread) {
    GaussIntegratorFactory rules = new GaussIntegratorFactory();
    int panels = 720;
    int sectors = spread.isRound() ? 1 : 128;
    double sum = 0;
    for (int panel = 0; panel < panels; panel++) {
      GaussIntegrator rule =
          rules.legendre(3, panel * Math.PI / panels, (panel + 1) * Math.PI / panels);
      for (int sector = 0; sector < sectors; sector++) {
        GaussIntegrator around =
            rules.legendre(2, sector * 2 * Math.PI / sectors, (sector + 1) * 2 * Math.PI / sectors);
        sum +=
            rule.integrate(
                t -> Math.sin(t) * around.integrate(a -> spread.relativeAt(Math.cos(t), a)));
      }
    }
    return sum;
  }

  /** REFERENCE section 4: transmission 1 - q tan along a cell axis, both axes multiply. */
  @Test
  void aGridCutsOffAlongItsWallsBeforeItDoesTowardsItsCorners() {
    Opening.Grid grid = new Opening.Grid(2);
    double half = Math.toRadians(grid.cutOffFullAngle().value() / 2);
    assertEquals(0, grid.passedAt(Math.cos(half), 0), 1e-12);
    assertEquals(0, grid.passedAt(Math.cos(half), Math.PI / 2), 1e-12);
    double aside = 0.5 * Math.sqrt(0.5);
    assertEquals(
        (1 - 2 * aside) * (1 - 2 * aside), grid.passedAt(Math.cos(half), Math.PI / 4), 1e-12);
    assertEquals(1, grid.passedAt(1, 0));
    assertEquals(0, grid.passedAt(-0.5, 0));
    assertTrue(grid.widest().value() > grid.cutOffFullAngle().value() / 2);
  }

  @Test
  void aSnootPassesHalfAtItsCutOffAndNothingBeyondItsPenumbra() {
    Opening.Snoot snoot = new Opening.Snoot(new Degrees(10), new Degrees(4));
    assertEquals(1, snoot.passedAt(Math.cos(Math.toRadians(7.9)), 0));
    assertEquals(0.5, snoot.passedAt(Math.cos(Math.toRadians(10)), 0), 1e-9);
    assertEquals(0, snoot.passedAt(Math.cos(Math.toRadians(12.1)), 0));
    Opening.Snoot sharp = new Opening.Snoot(new Degrees(10), new Degrees(0));
    assertEquals(1, sharp.passedAt(Math.cos(Math.toRadians(9.99)), 0));
    assertEquals(0, sharp.passedAt(Math.cos(Math.toRadians(10.01)), 0));
  }

  /** An even face behind a sharp round hole: pi sin^2 of its half angle. */
  @Test
  void anEvenFaceThroughASharpSnootHasTheSolidAngleOfItsCone() {
    double half = Math.toRadians(25);
    CutSpread cut = CutSpread.of(new Even(), new Opening.Snoot(new Degrees(25), new Degrees(0)));
    double expected = Math.PI * Math.sin(half) * Math.sin(half);
    assertEquals(expected, cut.solidAngleSr(), expected * 1e-3);
    assertEquals(Math.sin(half) * Math.sin(half), cut.passedShare(), 1e-3);
  }

  /** A table that samples a cosine is an even face: pi, and 120 degrees at half its peak. */
  @Test
  void aTableOfCosinesIsAnEvenFace() {
    List<Degrees> vertical = new ArrayList<>();
    List<Double> row = new ArrayList<>();
    for (int angle = 0; angle <= 90; angle++) {
      vertical.add(new Degrees(angle));
      row.add(500 * Math.cos(Math.toRadians(angle)));
    }
    CandelaTable table = CandelaTable.of(vertical, degrees(0), List.of(row));
    assertEquals(Math.PI, table.solidAngleSr(), Math.PI * 1e-4);
    assertEquals(500 * Math.PI, table.zonalFluxLm(), 500 * Math.PI * 1e-4);
    assertEquals(120, table.findHalfPeakAngle(new Degrees(0)).orElseThrow().value(), 0.01);
    assertEquals(0, table.relativeAt(-0.1, 0));
  }

  @Test
  void aTableThatIsDarkOnTheAxisCountsFromItsPeakAndIsNoModifier() {
    CandelaTable up = CandelaTable.of(degrees(90, 180), degrees(0), List.of(List.of(0.0, 200.0)));
    assertTrue(up.isDarkOnAxis());
    assertEquals(1, up.relativeAt(-1, 0), 1e-12);
    assertEquals(0, up.relativeAt(1, 0));
    assertThrows(
        IllegalArgumentException.class,
        () -> new ConservedFlux(1, new EmittingFace.PointSource(), up));
  }

  @Test
  void foldsFollowTheLastHorizontalAngle() {
    List<List<Double>> rows = List.of(List.of(9.0, 1.0), List.of(9.0, 3.0));
    CandelaTable quarter = CandelaTable.of(degrees(0, 90), degrees(0, 90), rows);
    CandelaTable half = CandelaTable.of(degrees(0, 90), degrees(0, 180), rows);
    for (double around : new double[] {30, 150, 210, 330, -30, 390}) {
      double value = quarter.candelaAt(new Degrees(90), new Degrees(around));
      assertEquals(1 + 2 * 30 / 90.0, value, 1e-12, "at " + around);
    }
    assertEquals(2.5, half.candelaAt(new Degrees(90), new Degrees(225)), 1e-12);
  }

  @Test
  void aNarrowBeamInsideAWideGridKeepsItsFlux() {
    Spread pencil = CutSpread.of(new Even(), new Opening.Snoot(new Degrees(0.05), new Degrees(0)));
    Spread gridded = CutSpread.of(pencil, new Opening.Grid(1.5));
    double halfAngle = Math.toRadians(0.05);
    double cone = Math.PI * halfAngle * halfAngle;
    assertEquals(cone, gridded.solidAngleSr(), 0.005 * cone);
  }
}
