package lampwright.engine.map;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lampwright.engine.light.PlacedSource;
import lampwright.engine.light.Point;
import lampwright.engine.light.PreparedSource;
import lampwright.engine.light.Receptor;
import lampwright.engine.light.SourceFrame;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Stops;

/**
 * The light on a plane: each light by itself, and all with the ambient, at every point of a grid.
 * No light is hidden by anything: a map knows no shadows.
 *
 * <p>Within 1e-5 of {@link PlacedSource}, which says how sure that is; faces whose parts are lobes
 * within 1e-4, and such behind a grid or a snoot as {@link lampwright.engine.light.SampledField}
 * says.
 */
public final class ReadingMap {

  /** What a level shows where there is no light, or less than this. */
  public static final Stops DARK = new Stops(-20);

  private static final double LN_2 = 0.6931471805599453;

  private final MapPlane plane;
  private final List<Lit> lights;
  private final double ambientLxS;
  private final Receptor receptor;
  private final double[] exposures;
  private final double[] sums;

  private ReadingMap(MapPlane plane, List<Lit> lights, double ambientLxS, Receptor receptor) {
    this.plane = plane;
    this.lights = lights;
    this.ambientLxS = ambientLxS;
    this.receptor = receptor;
    exposures = new double[lights.size() * plane.size()];
    sums = new double[plane.size()];
  }

  private record Lit(PreparedSource source, double peakCdS) {

    static Lit of(MappedLight light) {
      PlacedSource placed = light.source();
      return new Lit(
          new PreparedSource(placed.field().tabled(), placed.frame()), light.peak().value());
    }
  }

  /**
   * Returns the map of some lights.
   *
   * @param ambient the same at every point, while the shutter is open
   * @param receptor what each point takes light with
   */
  public static ReadingMap of(
      MapPlane plane, List<MappedLight> lights, LuxSeconds ambient, Receptor receptor) {
    List<Lit> lit = lights.stream().map(Lit::of).toList();
    ReadingMap map = new ReadingMap(plane, lit, ambient.value(), receptor);
    map.fill();
    return map;
  }

  private void fill() {
    MapRows rows = new MapRows(plane, receptor);
    int size = sums.length;
    Arrays.fill(sums, ambientLxS);
    for (int i = 0; i < lights.size(); i++) {
      Lit light = lights.get(i);
      int offset = i * size;
      rows.fill(light.source().field(), light.source().frame(), light.peakCdS(), exposures, offset);
      for (int point = 0; point < size; point++) {
        sums[point] += exposures[offset + point];
      }
    }
  }

  /** Returns where the map was taken. */
  public MapPlane plane() {
    return plane;
  }

  /** Returns how many lights it holds. */
  public int lights() {
    return lights.size();
  }

  /** Returns the exposure by one light, in the order given, at a point of the grid. */
  public LuxSeconds exposureAt(int light, int column, int row) {
    return new LuxSeconds(exposures[place(light, column, row)]);
  }

  /** Returns the exposure by all lights and the ambient at a point of the grid. */
  public LuxSeconds sumAt(int column, int row) {
    return new LuxSeconds(sums[point(column, row)]);
  }

  /**
   * Returns the levels of all lights and the ambient in stops from an exposure, row by row; {@link
   * #DARK} where there is less or nothing.
   *
   * @param required what exposes rightly, above 0
   */
  public double[] levelsInStops(LuxSeconds required) {
    return levels(sums, 0, required);
  }

  /** Returns the levels of one light in stops from an exposure, likewise. */
  public double[] levelsInStops(int light, LuxSeconds required) {
    return levels(exposures, place(light, 0, 0), required);
  }

  private double[] levels(double[] from, int offset, LuxSeconds required) {
    Bounds.requirePositive("Required exposure", required.value(), "lx·s");
    double darkest = required.value() * DARK.toFactor();
    double[] levels = new double[sums.length];
    for (int i = 0; i < levels.length; i++) {
      levels[i] = level(from[offset + i], required.value(), darkest);
    }
    return levels;
  }

  private static double level(double exposureLxS, double requiredLxS, double darkestLxS) {
    return exposureLxS <= darkestLxS
        ? DARK.value()
        : StrictMath.log(exposureLxS / requiredLxS) / LN_2;
  }

  /**
   * Returns the lines along which all lights and the ambient have a level, in columns and rows. The
   * light is asked between the points of the grid too: close to a face it changes by stops from one
   * to the next, and where the plane cuts a face it leaps.
   *
   * @param required as above
   * @param levels in stops from it
   */
  public List<Contour> contours(LuxSeconds required, List<Stops> levels) {
    double darkest = required.value() * DARK.toFactor();
    Contours.Between between =
        new Contours.Between() {
          @Override
          public double valueAt(double column, double row) {
            return level(sumBetween(column, row), required.value(), darkest);
          }

          @Override
          public List<Double> leaps(int column, int row, int toColumn, int toRow) {
            return leapsBetween(plane.at(column, row), plane.at(toColumn, toRow));
          }
        };
    return Contours.of(
        levelsInStops(required),
        plane.columns(),
        plane.rows(),
        1,
        levels.stream().map(Stops::value).toList(),
        between);
  }

  /** Where the way passes through the planes of faces: behind them there is nothing. */
  private List<Double> leapsBetween(Point from, Point to) {
    List<Double> leaps = new ArrayList<>();
    for (Lit light : lights) {
      SourceFrame frame = light.source().frame();
      double here = frame.beforeOf(from.x(), from.y(), from.z());
      double there = frame.beforeOf(to.x(), to.y(), to.z());
      if (here > 0 != there > 0) {
        leaps.add(here / (here - there));
      }
    }
    return leaps;
  }

  private double sumBetween(double column, double row) {
    Point at = plane.between(column, row);
    double sum = ambientLxS;
    for (Lit light : lights) {
      sum += light.peakCdS() * light.source().geometryAt(at, receptor);
    }
    return sum;
  }

  private int place(int light, int column, int row) {
    Bounds.requireBetween("Light", light, "", 0, lights.size() - 1.0);
    return light * sums.length + point(column, row);
  }

  private int point(int column, int row) {
    Bounds.requireBetween("Column", column, "", 0, plane.columns() - 1.0);
    Bounds.requireBetween("Row", row, "", 0, plane.rows() - 1.0);
    return row * plane.columns() + column;
  }
}
