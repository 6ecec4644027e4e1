package lampwright.search;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import lampwright.search.filter.EarthPoint;
import lampwright.search.filter.Filter;
import lampwright.search.filter.Trait;
import org.apache.lucene.document.LatLonDocValuesField;
import org.apache.lucene.geo.GeoEncodingUtils;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.LeafReader;
import org.apache.lucene.index.SortedNumericDocValues;
import org.apache.lucene.util.SloppyMath;

/**
 * How far from the places of its filters a setup was made. Lucene's haversine is that of {@link
 * lampwright.search.filter.GreatCircle}; the index keeps points to a centimetre.
 */
final class PointDimension implements Dimension {

  private static final double METRES_PER_KM = 1_000;

  private final double[] latitudes;
  private final double[] longitudes;
  private final double[] farthestM;

  /** Of each counted setup the distance to the first place, unsorted. */
  private double[] countedKm = new double[16];

  private int counted;
  private SortedNumericDocValues values = DocValues.emptySortedNumeric();
  private double firstM = Double.NaN;

  /**
   * @param filters whose places were looked up before
   */
  PointDimension(List<Filter> filters) {
    latitudes = new double[filters.size()];
    longitudes = new double[filters.size()];
    farthestM = new double[filters.size()];
    for (int i = 0; i < filters.size(); i++) {
      if (!(filters.get(i) instanceof Filter.Near near)) {
        throw new IllegalArgumentException("This is no distance.");
      }
      EarthPoint place = point(near);
      latitudes[i] = place.latitudeDeg();
      longitudes[i] = place.longitudeDeg();
      farthestM[i] = near.km() * METRES_PER_KM;
    }
  }

  /**
   * Where the distance of a filter is measured from.
   *
   * @throws IllegalArgumentException where nobody looked the location up
   */
  static EarthPoint point(Filter.Near near) {
    return near.spot()
        .whereabouts()
        .orElseThrow(() -> new IllegalArgumentException("The location was not looked up."));
  }

  @Override
  public Trait trait() {
    return Trait.NEAR;
  }

  @Override
  public void enter(LeafReader reader) throws IOException {
    values = DocValues.getSortedNumeric(reader, EntryDocument.POINT);
  }

  @Override
  public boolean passes(int document) throws IOException {
    boolean passes = true;
    firstM = Double.NaN;
    boolean known = values.advanceExact(document);
    long point = known ? values.nextValue() : 0;
    for (int i = 0; i < farthestM.length; i++) {
      double metres = known ? metres(point, latitudes[i], longitudes[i]) : Double.NaN;
      firstM = i == 0 ? metres : firstM;
      passes &= metres <= farthestM[i];
    }
    return passes;
  }

  /** How far a point of {@link LatLonDocValuesField} is from a place. */
  static double metres(long point, double latitudeDeg, double longitudeDeg) {
    return SloppyMath.haversinMeters(
        latitudeDeg,
        longitudeDeg,
        GeoEncodingUtils.decodeLatitude((int) (point >> 32)),
        GeoEncodingUtils.decodeLongitude((int) point));
  }

  /** How far the setup that was read last is from the first place; no number where unknown. */
  double metres() {
    return firstM;
  }

  @Override
  public void count() {
    if (!Double.isNaN(firstM)) {
      if (counted == countedKm.length) {
        countedKm = Arrays.copyOf(countedKm, counted * 2);
      }
      countedKm[counted++] = firstM / METRES_PER_KM;
    }
  }

  @Override
  public void leave() {}

  @Override
  public List<FacetCount> counts() {
    return List.of();
  }

  /** The distances of the counted setups, the nearest first. */
  double[] nearestFirst() {
    double[] sorted = Arrays.copyOf(countedKm, counted);
    Arrays.sort(sorted);
    return sorted;
  }
}
