package lampwright.setup.reacting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.reacting.CameraSettings.Places;

/**
 * Tries every place of every dial in one stage, and keeps for each set of camera dials and each
 * number of dials the way that loses least, and of those that hold everything the one that loses
 * least.
 *
 * <p>Of the shutter times those are tried that hold the ambient within a third, the one that comes
 * nearest where none does, and the one now: another would leave the ambient off for nothing.
 */
final class DialSearch {

  private static final double TOLERANCE = Miss.TOLERANCE.value() + 1e-9;

  /** Losses nearer to each other than this are equal. */
  static final double ROUNDING = 1e-9;

  private static final int CAMERA_SETS = 16;

  private final int number;
  private final Stage stage;
  private final Toll toll;
  private final OptionalDouble ambientMiss;
  private final double bound;
  private final List<LightDial> dials;
  private final PowerChoice powers;
  private final double[] apertures;
  private final double[] times;
  private final double[] isos;
  private final double[] filters;
  private final Best[][] best;
  private final Best[][] bestHeld;

  /** The best so far. */
  private static final class Best {
    private double loss = PowerChoice.NEVER;
    private Places places = Places.NOW;

    void take(double candidate, Places at) {
      if (candidate < loss - ROUNDING) {
        loss = candidate;
        places = at;
      }
    }
  }

  /**
   * A search.
   *
   * @param number of the stage
   * @param ambientMiss how far the ambient is from where it was; empty where it is not known
   * @param bound what is lost if nobody touches anything: more is of no use
   */
  DialSearch(
      int number,
      Stage stage,
      CameraSettings camera,
      Toll toll,
      OptionalDouble ambientMiss,
      double bound) {
    this.number = number;
    this.stage = stage;
    this.toll = toll;
    this.ambientMiss = ambientMiss;
    this.bound = bound;
    this.dials = dials(stage, camera);
    this.powers = new PowerChoice(dials);
    this.apertures = camera.apertureGains();
    this.times = camera.timeGains();
    this.isos = camera.isoGains();
    this.filters = camera.filterGains();
    this.best = bests(powers.most() + 1);
    this.bestHeld = bests(powers.most() + 1);
  }

  /** The dials of the lights that must hold, in the stage's order. */
  static List<LightDial> dials(Stage stage, CameraSettings camera) {
    List<LightDial> dials = new ArrayList<>();
    for (Stage.Aim aim : stage.lights()) {
      Light light = get(stage.setup(), aim.light());
      double miss = aim.nowStops() - aim.wantedStops();
      dials.add(new LightDial(stage.setup(), light, miss, aim.isFree(), camera.times()));
    }
    return dials;
  }

  private static Light get(SetupDocument setup, LightId id) {
    Optional<Light> found =
        setup.lights().stream().filter(light -> light.id().equals(id)).findFirst();
    return found.orElseThrow();
  }

  private static Best[][] bests(int counts) {
    Best[][] bests = new Best[CAMERA_SETS][counts];
    for (Best[] row : bests) {
      for (int i = 0; i < row.length; i++) {
        row[i] = new Best();
      }
    }
    return bests;
  }

  /** What was found. */
  List<Candidate> run() {
    for (int aperture = 0; aperture < apertures.length; aperture++) {
      for (int iso = 0; iso < isos.length; iso++) {
        for (int filter = 0; filter < filters.length; filter++) {
          tryTimes(aperture, iso, filter);
        }
      }
    }
    List<Candidate> found = new ArrayList<>();
    for (int set = 0; set < CAMERA_SETS; set++) {
      for (int count = 0; count <= powers.most(); count++) {
        add(bestHeld[set][count], count, true, found);
        add(best[set][count], count, false, found);
      }
    }
    return found;
  }

  private void tryTimes(int aperture, int iso, int filter) {
    double gain = apertures[aperture] + isos[iso];
    gain = gain + filters[filter];
    if (ambientMiss.isEmpty()) {
      tryOne(new Places(aperture, 0, iso, filter), gain, 0);
      return;
    }
    double miss = ambientMiss.getAsDouble() + gain;
    int nearest = 0;
    boolean holds = false;
    for (int time = 0; time < times.length; time++) {
      double left = Math.abs(miss + times[time]);
      if (left <= TOLERANCE || time == 0) {
        tryOne(new Places(aperture, time, iso, filter), gain, miss + times[time]);
      }
      holds |= left <= TOLERANCE;
      if (left < Math.abs(miss + times[nearest]) - ROUNDING) {
        nearest = time;
      }
    }
    if (!holds && nearest != 0) {
      tryOne(new Places(aperture, nearest, iso, filter), gain, miss + times[nearest]);
    }
  }

  private void tryOne(Places places, double gain, double ambient) {
    boolean ambientHolds = Math.abs(ambient) <= TOLERANCE;
    double loss =
        toll.depth(apertures[places.aperture()])
            + toll.noise(isos[places.iso()])
            + toll.time(times[places.time()])
            + toll.ambient(ambient)
            + stage.loss();
    if (!ambientHolds && loss >= bound) {
      return;
    }
    powers.at(places.time(), gain);
    int set = places.dials();
    for (int count = 0; count <= powers.most(); count++) {
      best[set][count].take(loss + powers.least(count), places);
      if (ambientHolds) {
        bestHeld[set][count].take(loss + powers.leastHeld(count), places);
      }
    }
  }

  private void add(Best of, int count, boolean held, List<Candidate> found) {
    boolean holdsAll = held && stage.givenUp().isEmpty();
    boolean isUseful = of.loss < PowerChoice.NEVER && (holdsAll || of.loss < bound - ROUNDING);
    Places places = of.places;
    if (!isUseful || (held && !holdsAll)) {
      return;
    }
    double gain = apertures[places.aperture()] + isos[places.iso()];
    powers.at(places.time(), gain + filters[places.filter()]);
    List<Integer> steps = powers.steps(count, held);
    long set = places.dials();
    for (int i = 0; i < steps.size(); i++) {
      set += steps.get(i) == Candidate.LEFT ? 0 : 1L << (4 + i);
    }
    int turned = places.turned() + count + stage.dials();
    if (turned > 0) {
      found.add(new Candidate(number, places, steps, set, turned, of.loss, holdsAll));
    }
  }
}
