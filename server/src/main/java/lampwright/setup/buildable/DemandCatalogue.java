package lampwright.setup.buildable;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import lampwright.gear.Gel;
import lampwright.setup.SetupDocument;
import lampwright.setup.adapting.KitOffer;

/** The demands of very many setups, packed side by side so that going through them is quick. */
public final class DemandCatalogue {

  private static final int RAY = 6;

  private final IntFunction<SetupDocument> documents;
  private final List<CameraKind> cameraKinds = new ArrayList<>();
  private final List<KitOffer.Shot> ofCameraKind = new ArrayList<>();
  private final List<List<Gel>> gelKinds = new ArrayList<>();
  private final List<List<OwnReading>> readings = new ArrayList<>();

  final int[] firstLight;
  final int[] cameraKind;
  final double[] shotEv100;
  final double[] betweenFramesS;
  final int[] frames;

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

  private DemandCatalogue(List<Demand> demands, IntFunction<SetupDocument> documents) {
    this.documents = documents;
    int count = demands.size();
    int lights = demands.stream().mapToInt(demand -> demand.lights().size()).sum();
    firstLight = new int[count + 1];
    cameraKind = new int[count];
    shotEv100 = new double[count];
    betweenFramesS = new double[count];
    frames = new int[count];
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

  /**
   * Packs demands; a setup is asked for by its place in the list.
   *
   * @param documents gives the whole setup, which only the full search needs
   */
  public static DemandCatalogue of(List<Demand> demands, IntFunction<SetupDocument> documents) {
    return new DemandCatalogue(demands, documents);
  }

  /** The same where nobody asks for the full search. */
  public static DemandCatalogue of(List<Demand> demands) {
    return of(
        demands,
        setup -> {
          throw new IllegalStateException("The document of setup " + setup + " is not at hand.");
        });
  }

  private void fill(List<Demand> demands) {
    Map<CameraKind, Integer> cameras = new HashMap<>();
    Map<List<Gel>, Integer> gels = new HashMap<>();
    for (int i = 0; i < demands.size(); i++) {
      Demand demand = demands.get(i);
      KitOffer.Shot shot = demand.shot();
      cameraKind[i] = cameras.computeIfAbsent(CameraKind.of(shot), k -> addCamera(k, shot));
      shotEv100[i] = demand.shotEv100();
      betweenFramesS[i] = demand.betweenFramesS();
      frames[i] = demand.frames();
      readings.add(demand.readings());
      firstLight[i + 1] = firstLight[i] + demand.lights().size();
      for (int j = 0; j < demand.lights().size(); j++) {
        LightDemand wanted = demand.lights().get(j);
        int at = firstLight[i] + j;
        gelKind[at] = gels.computeIfAbsent(wanted.gels(), this::addGels);
        fillLight(at, wanted);
      }
    }
  }

  private int addCamera(CameraKind kind, KitOffer.Shot shot) {
    cameraKinds.add(kind);
    ofCameraKind.add(shot);
    return cameraKinds.size() - 1;
  }

  private int addGels(List<Gel> gels) {
    gelKinds.add(gels);
    return gelKinds.size() - 1;
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
    return readings.size();
  }

  SetupDocument setup(int index) {
    return documents.apply(index);
  }

  List<CameraKind> cameraKinds() {
    return cameraKinds;
  }

  /** The readings that a setup's lights bring. */
  List<OwnReading> readings(int index) {
    return readings.get(index);
  }

  /** A camera of that kind with its settings. */
  KitOffer.Shot ofCameraKind(int kind) {
    return ofCameraKind.get(kind);
  }

  /** All that lights have before them. */
  List<List<Gel>> gelKinds() {
    return gelKinds;
  }
}
