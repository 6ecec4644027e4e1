package lampwright.setup.buildable;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.engine.exposure.ShutterTime;
import lampwright.gear.Body;
import lampwright.gear.Head;
import lampwright.gear.Kit;
import lampwright.gear.Modifier;
import lampwright.gear.Several;
import lampwright.setup.adapting.KitOffer;
import lampwright.setup.figures.LightComputation;

/** What a kit reaches with every head and modifier, and with its cameras for each setup. */
final class KitReach {

  /** Stands and heads as the search has them: lower than this a head needs no stand. */
  private static final double WITHOUT_STAND_M = 0.3;

  /** Two heads may make any light, as in {@link lampwright.setup.adapting.Limits}. */
  private static final int USUAL_HEADS = 2;

  private final Kit kit;
  private final KitOffer offer;
  private final List<Head> models = new ArrayList<>();
  private final Map<Long, Head> headsByPrint = new HashMap<>();
  private final Map<Long, Modifier> modifiersByPrint = new HashMap<>();
  private final int mostHeadsOfALight;

  final HeadReach[] heads;

  /** The kit's modifiers, and last the standard reflector. */
  final ModifierReach[] modifiers;

  final int[] takesHeads;

  /** By modifier and head: full power on the axis in stops above 1 cd·s; NaN where none fits. */
  final double[][] peakStops;

  /** Heads of each model, then modifiers, then gels. */
  final int[] amounts;

  final int firstModifier;
  final int firstGel;

  /** Rising; how many stands reach at least so high beside each. */
  final double[] standHeightsM;

  final int[] standsAtLeast;

  /** By kind of camera, then by body. */
  final CameraReach.Packed[][] cameras;

  /** By kind of gels, then by option: what it loses. */
  final double[][] gelStops;

  /** By kind of gels, then by option: indices of gels. */
  final int[][][] gelIndices;

  KitReach(Kit kit, DemandCatalogue demands) {
    this.kit = kit;
    this.offer = KitOffer.of(kit);
    this.mostHeadsOfALight = Math.max(USUAL_HEADS, Arrays.stream(demands.heads).max().orElse(1));
    offer.heads().forEach(several -> models.add(several.item()));
    models.forEach(head -> headsByPrint.put(OwnReading.print(head), head));
    offer
        .modifiers()
        .forEach(several -> modifiersByPrint.put(OwnReading.print(several.item()), several.item()));
    heads =
        offer.heads().stream()
            .map(several -> new HeadReach(several.item(), several.count()))
            .toArray(HeadReach[]::new);
    List<Modifier> all = new ArrayList<>();
    offer.modifiers().forEach(several -> all.add(several.item()));
    all.add(Modifier.standardReflector());
    modifiers = all.stream().map(ModifierReach::new).toArray(ModifierReach[]::new);
    takesHeads = all.stream().mapToInt(Modifier::takesHeads).toArray();
    peakStops = new double[all.size()][];
    for (int m = 0; m < all.size(); m++) {
      peakStops[m] = peaks(all.get(m));
    }
    firstModifier = heads.length;
    firstGel = firstModifier + offer.modifiers().size();
    amounts = amounts();
    standHeightsM =
        kit.stands().stream()
            .mapToDouble(s -> s.item().highest().value())
            .sorted()
            .distinct()
            .toArray();
    standsAtLeast = new int[standHeightsM.length];
    for (int i = 0; i < standsAtLeast.length; i++) {
      double height = standHeightsM[i];
      standsAtLeast[i] =
          kit.stands().stream()
              .filter(s -> s.item().highest().value() >= height)
              .mapToInt(Several::count)
              .sum();
    }
    cameras = cameras(demands);
    gelStops = new double[demands.gelKinds().size()][];
    gelIndices = new int[gelStops.length][][];
    for (int g = 0; g < gelStops.length; g++) {
      List<KitOffer.Gels> options = offer.gels(demands.gelKinds().get(g));
      gelStops[g] = options.stream().mapToDouble(option -> option.loss().value()).toArray();
      gelIndices[g] =
          options.stream()
              .map(option -> option.indices().stream().mapToInt(Integer::intValue).toArray())
              .toArray(int[][]::new);
    }
  }

  private double[] peaks(Modifier modifier) {
    return models.stream()
        .mapToDouble(
            head ->
                modifier.fits(head)
                    ? Doublings.of(
                        LightComputation.output(head, kit.findPairing(head, modifier))
                            .peak(modifier.effect())
                            .value())
                    : Double.NaN)
        .toArray();
  }

  private int[] amounts() {
    List<Integer> amounts = new ArrayList<>();
    offer.heads().forEach(several -> amounts.add(several.count()));
    offer.modifiers().forEach(several -> amounts.add(several.count()));
    offer.gels().forEach(several -> amounts.add(several.count()));
    return amounts.stream().mapToInt(Integer::intValue).toArray();
  }

  private CameraReach.Packed[][] cameras(DemandCatalogue demands) {
    Map<CameraKind, CameraReach.Packed[]> known = new HashMap<>();
    Map<Optional<Body>, Map<ShutterTime, ShutterReach>> shutters = new HashMap<>();
    Map<CameraReach.Marks, List<Double>> levels = new HashMap<>();
    CameraReach.Packed[][] all = new CameraReach.Packed[demands.cameraKinds().size()][];
    for (int i = 0; i < all.length; i++) {
      CameraKind kind =
          demands
              .cameraKinds()
              .get(i)
              .with(
                  !kit.bodies().isEmpty(),
                  !kit.lenses().isEmpty(),
                  !kit.neutralDensities().isEmpty());
      KitOffer.Shot shot = demands.ofCameraKind(i);
      all[i] = known.computeIfAbsent(kind, k -> cameras(shot, shutters, levels));
    }
    return all;
  }

  private CameraReach.Packed[] cameras(
      KitOffer.Shot shot,
      Map<Optional<Body>, Map<ShutterTime, ShutterReach>> shutters,
      Map<CameraReach.Marks, List<Double>> levels) {
    Map<Optional<Body>, List<KitOffer.Camera>> byBody = new LinkedHashMap<>();
    for (KitOffer.Camera camera : offer.cameras(shot)) {
      byBody.computeIfAbsent(camera.body(), b -> new ArrayList<>()).add(camera);
    }
    return byBody.values().stream()
        .map(
            same ->
                CameraReach.of(
                        same,
                        (body, time) ->
                            shutters
                                .computeIfAbsent(Optional.of(body), b -> new HashMap<>())
                                .computeIfAbsent(time, t -> shutter(body, t)),
                        marks -> levels.computeIfAbsent(marks, CameraReach::levels))
                    .packed())
        .toArray(CameraReach.Packed[]::new);
  }

  private ShutterReach shutter(Body body, ShutterTime time) {
    return ShutterReach.of(offer.shutterLosses(body, time), models);
  }

  Kit kit() {
    return kit;
  }

  /** As many heads as may make any light of the catalogue. */
  int mostHeadsOfALight() {
    return mostHeadsOfALight;
  }

  /** How many heads there are of all models. */
  int headCount() {
    int count = 0;
    for (HeadReach head : heads) {
      count += head.count();
    }
    return count;
  }

  /** As many heads of a model as may make a light that has so many in the setup. */
  int mostHeads(int model, int own) {
    return Math.min(heads[model].count(), Math.max(own, USUAL_HEADS));
  }

  /**
   * Asks whether only the full search can tell: a head hangs on a pack, whose energy lights share,
   * or there are more ways to make a light than the search looks at.
   */
  boolean needsSearch() {
    boolean onPack = models.stream().anyMatch(head -> head.pack().isPresent());
    int gels = 1;
    for (double[] options : gelStops) {
      gels = Math.max(gels, options.length);
    }
    int makings = 0;
    for (int h = 0; h < heads.length; h++) {
      makings += mostHeads(h, mostHeadsOfALight) * modifiers.length * gels;
    }
    return onPack || makings > KitOffer.MOST_MAKINGS;
  }

  /** Asks whether some reading is of a head and a modifier that the kit has, but not read. */
  boolean sharesReading(List<OwnReading> readings) {
    for (OwnReading reading : readings) {
      Optional<Head> head = Optional.ofNullable(headsByPrint.get(reading.head()));
      Optional<Modifier> modifier =
          reading.modifier().isEmpty()
              ? Optional.of(Modifier.standardReflector())
              : Optional.ofNullable(modifiersByPrint.get(reading.modifier().get()));
      if (head.isPresent()
          && modifier.isPresent()
          && kit.findPairing(head.get(), modifier.get()).isEmpty()) {
        return true;
      }
    }
    return false;
  }

  /** Asks whether the kit has stands for all of a setup's lights. */
  boolean hasStands(DemandCatalogue demands, int from, int to) {
    if (standHeightsM.length == 0) {
      return true;
    }
    for (int i = 0; i <= standHeightsM.length; i++) {
      double above = i == 0 ? WITHOUT_STAND_M : Math.max(WITHOUT_STAND_M, standHeightsM[i - 1]);
      int needed = 0;
      for (int light = from; light < to; light++) {
        needed += demands.heightM[light] > above ? 1 : 0;
      }
      if (needed > (i < standsAtLeast.length ? standsAtLeast[i] : 0)) {
        return false;
      }
    }
    return true;
  }
}
