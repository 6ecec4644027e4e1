package lampwright.setup.buildable;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lampwright.engine.unit.Seconds;
import lampwright.gear.Gel;
import lampwright.setup.Light;
import lampwright.setup.Plan;
import lampwright.setup.SetupDocument;

/** The demands of very many setups, packed side by side so that going through them is quick. */
public final class DemandCatalogue {

  private static final int RAY = 6;

  private final List<SetupDocument> setups = new ArrayList<>();
  private final List<CameraKind> cameraKinds = new ArrayList<>();
  private final List<SetupDocument> ofCameraKind = new ArrayList<>();
  private final List<Light> ofGelKind = new ArrayList<>();

  final int[] firstLight;
  final int[] cameraKind;
  final double[] shotEv100;
  final double[] betweenFramesS;
  final int[] frames;
  final boolean[] bringsReadings;

  final boolean[] known;
  final double[] wantedStops;
  final double[] distanceDoublings;
  final double[] heightM;
  final double[] leastRadiusM;
  final double[] mostRadiusM;
  final int[] heads;
  final int[] pops;
  final int[] gelKind;
  final boolean[] straight;
  final double[] rays;

  private DemandCatalogue(List<Demand> demands) {
    int count = demands.size();
    int lights = demands.stream().mapToInt(demand -> demand.lights().size()).sum();
    firstLight = new int[count + 1];
    cameraKind = new int[count];
    shotEv100 = new double[count];
    betweenFramesS = new double[count];
    frames = new int[count];
    bringsReadings = new boolean[count];
    known = new boolean[lights];
    wantedStops = new double[lights];
    distanceDoublings = new double[lights];
    heightM = new double[lights];
    leastRadiusM = new double[lights];
    mostRadiusM = new double[lights];
    heads = new int[lights];
    pops = new int[lights];
    gelKind = new int[lights];
    straight = new boolean[lights];
    rays = new double[RAY * lights];
    fill(demands);
  }

  /** Packs demands; a setup is asked for by its place in the list. */
  public static DemandCatalogue of(List<Demand> demands) {
    return new DemandCatalogue(demands);
  }

  private void fill(List<Demand> demands) {
    Map<CameraKind, Integer> cameras = new HashMap<>();
    Map<List<Gel>, Integer> gels = new HashMap<>();
    for (int i = 0; i < demands.size(); i++) {
      Demand demand = demands.get(i);
      SetupDocument setup = demand.setup();
      setups.add(setup);
      CameraKind kind = CameraKind.of(setup);
      cameraKind[i] = cameras.computeIfAbsent(kind, k -> addCamera(k, setup));
      shotEv100[i] = demand.shotEv100();
      betweenFramesS[i] =
          setup
              .plan()
              .flatMap(Plan::betweenFrames)
              .map(Seconds::value)
              .orElse(Double.POSITIVE_INFINITY);
      frames[i] = setup.plan().flatMap(Plan::frames).orElse(0);
      bringsReadings[i] = demand.bringsReadings();
      firstLight[i + 1] = firstLight[i] + demand.lights().size();
      for (int j = 0; j < demand.lights().size(); j++) {
        Light light = setup.lights().get(j);
        LightDemand wanted = demand.lights().get(j);
        int at = firstLight[i] + j;
        gelKind[at] = gels.computeIfAbsent(wanted.gels(), g -> addGels(light));
        fillLight(at, wanted);
      }
    }
  }

  private int addCamera(CameraKind kind, SetupDocument setup) {
    cameraKinds.add(kind);
    ofCameraKind.add(setup);
    return cameraKinds.size() - 1;
  }

  private int addGels(Light light) {
    ofGelKind.add(light);
    return ofGelKind.size() - 1;
  }

  private void fillLight(int at, LightDemand light) {
    known[at] = light.known();
    wantedStops[at] = light.wantedStops();
    distanceDoublings[at] = Doublings.of(light.distanceM());
    heightM[at] = light.heightM();
    leastRadiusM[at] = light.leastRadiusM();
    mostRadiusM[at] = light.mostRadiusM();
    heads[at] = light.heads();
    pops[at] = light.pops();
    LightDemand.Ray ray = light.ray();
    straight[at] = ray.straight();
    double[] numbers = {ray.x(), ray.y(), ray.z(), ray.nx(), ray.ny(), ray.nz()};
    System.arraycopy(numbers, 0, rays, RAY * at, RAY);
  }

  /** How many setups there are. */
  public int size() {
    return setups.size();
  }

  SetupDocument setup(int index) {
    return setups.get(index);
  }

  List<CameraKind> cameraKinds() {
    return cameraKinds;
  }

  /** A setup with that kind of camera. */
  SetupDocument ofCameraKind(int kind) {
    return ofCameraKind.get(kind);
  }

  /** For each kind of gels a light that has them. */
  List<Light> lightsByGels() {
    return ofGelKind;
  }
}
