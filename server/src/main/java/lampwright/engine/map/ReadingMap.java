package lampwright.engine.map;

import java.util.List;
import lampwright.engine.light.LightField;
import lampwright.engine.light.Receptor;
import lampwright.engine.light.SourceFrame;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Stops;

/**
 * The light on a plane: each light by itself, and all with the ambient, at every point of a grid.
 * No light is hidden by anything: a map knows no shadows.
 *
 * <p>Within 1e-5 of {@link lampwright.engine.light.PlacedSource}, which says how sure that is;
 * faces whose parts are lobes within 1e-4, and such behind a grid or a snoot as {@link
 * lampwright.engine.light.SampledField} says.
 */
public final class ReadingMap {

  /** What a level shows where there is no light, or less than this. */
  public static final Stops DARK = new Stops(-20);

  private static final double LN_2 = 0.6931471805599453;

  private final MapPlane plane;
  private final int lights;
  private final double[] exposures;
  private final double[] sums;

  private ReadingMap(MapPlane plane, int lights) {
    this.plane = plane;
    this.lights = lights;
    exposures = new double[lights * plane.size()];
    sums = new double[plane.size()];
  }

  /**
   * Returns the map of some lights.
   *
   * @param ambient the same at every point, while the shutter is open
   * @param receptor what each point takes light with
   */
  public static ReadingMap of(
      MapPlane plane, List<MappedLight> lights, LuxSeconds ambient, Receptor receptor) {
    ReadingMap map = new ReadingMap(plane, lights.size());
    LightField[] fields = new LightField[lights.size()];
    SourceFrame[] frames = new SourceFrame[lights.size()];
    for (int i = 0; i < fields.length; i++) {
      fields[i] = lights.get(i).source().field().tabled();
      frames[i] = lights.get(i).source().frame();
    }
    MapRows rows = new MapRows(plane, receptor);
    int size = plane.size();
    for (int i = 0; i < fields.length; i++) {
      rows.fill(fields[i], frames[i], lights.get(i).peak().value(), map.exposures, i * size);
    }
    map.add(ambient.value());
    return map;
  }

  private void add(double ambientLxS) {
    int size = sums.length;
    for (int point = 0; point < size; point++) {
      sums[point] = ambientLxS;
    }
    for (int i = 0; i < lights; i++) {
      int offset = i * size;
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
    return lights;
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
      double value = from[offset + i];
      levels[i] = value <= darkest ? DARK.value() : StrictMath.log(value / required.value()) / LN_2;
    }
    return levels;
  }

  private int place(int light, int column, int row) {
    Bounds.requireBetween("Light", light, "", 0, lights - 1.0);
    return light * sums.length + point(column, row);
  }

  private int point(int column, int row) {
    Bounds.requireBetween("Column", column, "", 0, plane.columns() - 1.0);
    Bounds.requireBetween("Row", row, "", 0, plane.rows() - 1.0);
    return row * plane.columns() + column;
  }
}
