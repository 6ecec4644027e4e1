package lampwright.setup.without;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import lampwright.engine.light.Point;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;
import lampwright.setup.Burning;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.Target;

/**
 * What turning one light, or the ambient, does to what every meter gets.
 *
 * @param from what burned before
 * @param to what burns after
 * @param own at the light's own target; absent for the ambient and where its strength is not known
 * @param lit what the lit side of the face does, where that shows
 * @param shadow what the shadow side does, where that shows
 * @param elsewhere where else something shows, each place once, the most changed first
 * @param stays where nothing shows
 */
public record Effect(
    Burning from,
    Burning to,
    Optional<Own> own,
    Optional<Shift> lit,
    Optional<Shift> shadow,
    List<Elsewhere> elsewhere,
    Stays stays) {

  private static final Stops EDGE = new Stops(5);

  /** Targets nearer to each other than this are one, as in the figures. */
  private static final Metres SAME_PLACE = new Metres(0.05);

  /**
   * The meter that is held for the light.
   *
   * @param shows whether the light shows there
   * @param share of all that reaches the meter while the light burns, 0 to 1
   * @param edge whether it draws an edge alone: a meter toward the camera gets next to nothing of
   *     it there, five stops less than one that is turned to it, or less yet (a judgement)
   */
  public record Own(
      MeterPlace place, Light light, Shift shift, boolean shows, double share, boolean edge) {}

  /** A meter that is held for something else. */
  public record Elsewhere(MeterPlace place, Shift shift) {}

  /** Where nothing shows although a light is turned. */
  public enum Stays {
    /** Something shows wherever one may look for it. */
    NOTHING,
    /** At the face, which the light is not for. */
    FACE,
    /** At the face and at every other meter but its own. */
    FACE_AND_ELSEWHERE,
    /** At every other meter, while the face, or what it is for, changes. */
    ELSEWHERE
  }

  public Effect {
    elsewhere = List.copyOf(elsewhere);
  }

  /**
   * The effect of turning a light.
   *
   * @param turned absent where it is the ambient
   * @param shows which shifts whoever reads can tell, for they read in tenths or in thirds
   */
  public static Effect of(
      LightByLight all,
      Optional<LightId> turned,
      Burning from,
      Burning to,
      Predicate<Shift> shows) {
    return new Turn(all, from, to, shift -> shift.isMeasurable() && shows.test(shift))
        .effect(turned);
  }

  /** Asks whether the lit side or the shadow side shows it. */
  public boolean showsOnFace() {
    return lit.isPresent() || shadow.isPresent();
  }

  /** One turn of one light. */
  private record Turn(LightByLight all, Burning from, Burning to, Predicate<Shift> shows) {

    Effect effect(Optional<LightId> turned) {
      Optional<Own> own = turned.flatMap(all::own).flatMap(this::own);
      Optional<Shift> lit = all.face().map(face -> face.litShift(from, to)).filter(shows);
      Optional<Shift> shadow = all.face().map(face -> face.shadowShift(from, to)).filter(shows);
      boolean onFace = lit.isPresent() || shadow.isPresent();
      Optional<Light> light = own.map(Own::light);
      List<Elsewhere> elsewhere = elsewhere(light, onFace);
      return new Effect(
          from,
          to,
          own,
          lit,
          shadow,
          elsewhere,
          light.map(of -> stays(of, onFace, elsewhere)).orElse(Stays.NOTHING));
    }

    private Optional<Own> own(MeterPlace place) {
      if (!(place.at() instanceof Metered.ForLight(Light light))) {
        return Optional.empty();
      }
      Shift shift = place.shift(from, to);
      return Optional.of(
          new Own(
              place,
              light,
              shift,
              shows.test(shift),
              place.share(light.id(), to.burns(light.id()) ? to : from),
              isEdge(place, light)));
    }

    private boolean isEdge(MeterPlace place, Light light) {
      double turned = place.of(light.id()).value();
      return light.target().held() == Target.Held.TOWARD_LIGHT
          && all.targets().stream()
              .filter(target -> isFor(light, target))
              .anyMatch(target -> target.of(light.id()).value() * EDGE.toFactor() <= turned);
    }

    private List<Elsewhere> elsewhere(Optional<Light> turned, boolean onFace) {
      Set<Point> named = new HashSet<>();
      return Stream.concat(all.own().stream(), all.subjects().stream())
          .filter(place -> turned.filter(light -> isAtTargetOf(light, place)).isEmpty())
          .filter(place -> !onFace || !isAtFace(place))
          .map(place -> new Elsewhere(place, place.shift(from, to)))
          .filter(changed -> shows.test(changed.shift()))
          .sorted(
              Comparator.comparingDouble((Elsewhere changed) -> size(changed.shift())).reversed())
          .filter(
              changed ->
                  !(changed.place().at() instanceof Metered.ForLight(Light light))
                      || named.add(light.target().at()))
          .toList();
    }

    private Stays stays(Light light, boolean onFace, List<Elsewhere> elsewhere) {
      boolean faceStays =
          all.face().isPresent()
              && !onFace
              && !isOnFace(light)
              && elsewhere.stream().noneMatch(changed -> isAtFace(changed.place()));
      boolean hasOthers =
          Stream.concat(all.own().stream(), all.subjects().stream())
              .anyMatch(place -> !isAtTargetOf(light, place) && !isAtFace(place));
      boolean allStay = elsewhere.isEmpty() && hasOthers;
      if (faceStays) {
        return allStay ? Stays.FACE_AND_ELSEWHERE : Stays.FACE;
      }
      return allStay ? Stays.ELSEWHERE : Stays.NOTHING;
    }

    private boolean isOnFace(Light light) {
      return all.face().filter(face -> isFor(light, face.face())).isPresent();
    }

    private boolean isAtFace(MeterPlace place) {
      return place.at() instanceof Metered.ForLight(Light light) && isOnFace(light);
    }

    private static boolean isFor(Light light, MeterPlace target) {
      return target.reaches().stream()
          .anyMatch(reach -> reach.light().equals(light.id()) && reach.forIt());
    }

    private static boolean isAtTargetOf(Light light, MeterPlace place) {
      return place.at() instanceof Metered.ForLight(Light other)
          && other.target().at().distanceTo(light.target().at()).compareTo(SAME_PLACE) < 0;
    }

    /** Out of the dark it is larger than any. */
    private static double size(Shift shift) {
      return shift.change().map(Stops::abs).map(Stops::value).orElse(Double.MAX_VALUE);
    }
  }
}
