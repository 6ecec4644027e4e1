package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.unit.Stops;
import lampwright.gear.Body;
import lampwright.gear.Gel;
import lampwright.gear.Head;
import lampwright.gear.Kit;
import lampwright.gear.Lens;
import lampwright.gear.Modifier;
import lampwright.gear.NeutralDensity;
import lampwright.gear.Several;
import lampwright.setup.SetupDocument;
import lampwright.setup.ShootingExposure;

/**
 * What a kit offers to any setup, just as {@link AdaptationSearch} sees it; for who asks one kit
 * about very many setups.
 *
 * @param heads equal ones together
 * @param modifiers equal ones together, without the heads' own standard reflector
 * @param gels equal ones together
 */
public record KitOffer(
    Kit kit,
    List<Several<Head>> heads,
    List<Several<Modifier>> modifiers,
    List<Several<Gel>> gels) {

  /** As many ways to make one light as the search looks at; with more it leaves some out. */
  public static final int MOST_MAKINGS = LightMakings.MOST_MAKINGS;

  /**
   * What a camera can be set to: every aperture with every time, ISO and filter, or without one.
   *
   * @param body empty where neither kit nor setup names one, which then syncs at every time
   * @param filters stops that each takes
   */
  public record Camera(
      Optional<Body> body,
      List<FNumber> apertures,
      List<ShutterTime> times,
      List<Iso> isos,
      List<Stops> filters) {}

  /** What of a setup its cameras depend on: the body and lens, as they were, and the settings. */
  public record Shot(Optional<Body> body, Optional<Lens> lens, ShootingExposure exposure) {

    /** Of a setup. */
    public static Shot of(SetupDocument setup) {
      return new Shot(
          setup.camera().flatMap(lampwright.setup.Camera::body),
          setup.camera().flatMap(lampwright.setup.Camera::lens),
          setup.exposure());
    }
  }

  /**
   * Gels that may stand for a light's own.
   *
   * @param indices of {@link #gels()}; empty for no gel, and for the light's own of which the kit
   *     knows nothing
   */
  public record Gels(Stops loss, List<Integer> indices) {}

  public KitOffer {
    heads = List.copyOf(heads);
    modifiers = List.copyOf(modifiers);
    gels = List.copyOf(gels);
  }

  /** All of a kit, nothing dead and every battery full. */
  public static KitOffer of(Kit kit) {
    KitTonight tonight = KitTonight.of(kit, List.of());
    List<Several<Head>> heads = new ArrayList<>();
    tonight.heads().forEach(model -> heads.add(new Several<>(model.count(), model.head())));
    return new KitOffer(kit, heads, tonight.modifiers(), tonight.gels());
  }

  /** The cameras that may be used for a setup, in no order that matters. */
  public List<Camera> cameras(Shot shot) {
    Limits limits = Limits.none();
    return CameraChoice.all(shot, false, kit, limits).stream()
        .map(
            choice ->
                new Camera(
                    choice.body(),
                    choice.apertures(limits),
                    choice.times(limits),
                    choice.isos(limits),
                    choice.filters().stream().map(NeutralDensity::loss).toList()))
        .toList();
  }

  /**
   * The gels that may be tried for a light.
   *
   * @param own the light's
   */
  public List<Gels> gels(List<Gel> own) {
    KitTonight tonight = KitTonight.of(kit, List.of());
    return GelChoice.of(own, tonight, Weights.Preset.CLOSEST_LOOK.weights()).stream()
        .map(option -> new Gels(new Stops(option.lossStops()), option.indices()))
        .toList();
  }

  /**
   * What a shutter takes from the whole frame, in stops, for each model of head and each step of
   * its dial from full power down; empty for a model that the time leaves part of the frame dark.
   */
  public List<Optional<List<Double>>> shutterLosses(Body body, ShutterTime time) {
    ShutterTable table = ShutterTable.of(body, time, KitTonight.of(kit, List.of()));
    List<Optional<List<Double>>> all = new ArrayList<>();
    for (int model = 0; model < heads.size(); model++) {
      int steps = LightMakings.range(heads.get(model).item()).settings().size();
      all.add(
          table
              .ofModel()
              .get(model)
              .map(
                  losses ->
                      java.util.stream.IntStream.range(0, steps)
                          .mapToObj(losses::wholeFrame)
                          .toList()));
    }
    return all;
  }
}
