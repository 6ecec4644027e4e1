package lampwright.setup.reacting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.unit.Stops;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;

/** Makes of dials' places the setup that they give, and tells what it is like by its figures. */
final class WayBuilding {

  private final Levels before;

  WayBuilding(Levels before) {
    this.before = before;
  }

  /** The way that a search found. */
  Way of(Candidate candidate, Stage stage, CameraSettings camera) {
    ExposureSettings settings = camera.at(candidate.camera());
    List<Turn> powers = new ArrayList<>();
    List<Light> lights = new ArrayList<>(stage.setup().lights());
    List<Turn> fixed = new ArrayList<>();
    List<LightDial> dials = DialSearch.dials(stage, camera);
    for (int i = 0; i < dials.size(); i++) {
      int place = candidate.steps().get(i);
      if (place == Candidate.LEFT) {
        continue;
      }
      Light light = dials.get(i).light();
      Stops to = dials.get(i).step(place);
      lights.replaceAll(each -> each.id().equals(light.id()) ? Changed.power(each, to) : each);
      if (dials.get(i).isFree()) {
        stage.fixed().forEach(turn -> fixed.add(replaced(turn, to)));
      } else {
        powers.add(
            new Turn.Power(
                light.id(), light.head(), light.heads(), light.stopsDown().orElseThrow(), to));
      }
    }
    List<Turn> turns = new ArrayList<>(fixed);
    turns.addAll(ofCamera(settings));
    turns.addAll(powers);
    SetupDocument changed =
        Changed.setup(
            stage.setup(),
            stage.setup().exposure().with(settings),
            lights,
            stage.setup().ambient());
    Levels after = Levels.of(changed).without(Set.copyOf(stage.givenUp()));
    return way(turns, stage.givenUp(), candidate.loss(), after);
  }

  /** The way in which nobody touches anything. */
  Way untouched(Levels after, List<LightId> givenUp, double loss) {
    return way(List.of(), givenUp, loss, after);
  }

  private static Turn replaced(Turn.Replacement turn, Stops to) {
    return new Turn.Replacement(turn.light(), turn.head(), turn.from(), to);
  }

  private List<Turn> ofCamera(ExposureSettings to) {
    ExposureSettings from = before.setup().exposure().settings();
    List<Turn> turns = new ArrayList<>();
    if (!to.time().equals(from.time())) {
      turns.add(new Turn.Time(from.time(), to.time()));
    }
    if (!to.aperture().equals(from.aperture())) {
      turns.add(new Turn.Aperture(from.aperture(), to.aperture()));
    }
    if (!to.iso().equals(from.iso())) {
      turns.add(new Turn.Speed(from.iso(), to.iso()));
    }
    if (!to.neutralDensity().equals(from.neutralDensity())) {
      turns.add(new Turn.Filter(from.neutralDensity(), to.neutralDensity()));
    }
    return turns;
  }

  private Way way(List<Turn> turns, List<LightId> givenUp, double loss, Levels after) {
    List<Miss> misses = new ArrayList<>();
    before
        .ofAmbient()
        .flatMap(was -> after.ofAmbient().map(is -> Miss.ofAmbient(is.minus(was))))
        .ifPresent(misses::add);
    for (Light light : before.setup().lights()) {
      Optional<Stops> was = before.ofLight(light.id());
      Optional<Stops> is = after.ofLight(light.id());
      if (was.isPresent() && is.isPresent()) {
        misses.add(Miss.ofLight(light.id(), is.get().minus(was.get())));
      }
    }
    ExposureSettings from = before.setup().exposure().settings();
    ExposureSettings to = after.setup().exposure().settings();
    Price price =
        new Price(
            to.time().stopsOver(from.time()),
            to.aperture().stopsAbove(from.aperture()),
            to.iso().stopsOver(from.iso()),
            after.strongerThan(before));
    return new Way(turns, givenUp, misses, price, loss, after.setup(), after.figures());
  }
}
