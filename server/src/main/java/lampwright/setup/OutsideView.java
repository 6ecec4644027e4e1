package lampwright.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.setup.Subject.Mark;

/**
 * What somebody outside the studio is shown of a setup: enough to build its light, and no more.
 * What is not named here is left out, so that what documents come to hold later stays inside until
 * somebody decides otherwise.
 *
 * <p>Left out are the intent and every reason, what subjects are called and do, how the ambient was
 * taken, the words of the build order, the judgement and the retouching; and, where the place is
 * not to be shown, when and where it was and which way the camera looked. What can hurt is always
 * shown, and what it follows from is kept for it: whether there is a roof, the weather, the wind.
 */
public final class OutsideView {

  private OutsideView() {}

  /**
   * What is said in the place of what people called their subjects.
   *
   * @param subject numbered where there are several
   * @param mark always numbered
   */
  public record Names(String subject, String mark) {}

  /** The setup as it is shown. */
  public static SetupDocument of(SetupDocument setup, boolean withPlace, Names names) {
    return new SetupDocument(
        setup.title(),
        Optional.empty(),
        setup.moods(),
        Optional.empty(),
        setup.occasion().map(occasion -> withPlace ? placed(occasion) : unplaced(occasion)),
        setup.exposure(),
        setup.camera().map(camera -> withPlace ? camera : unplaced(camera)),
        subjects(setup.subjects(), names),
        setup.surfaces(),
        setup.lights().stream().map(OutsideView::light).toList(),
        setup.ambient().map(OutsideView::ambient),
        setup.plan(),
        setup.buildOrder().stream()
            .filter(step -> step.light().isPresent())
            .map(step -> new BuildStep(step.light(), Optional.empty()))
            .toList(),
        setup.cautions(),
        List.of(),
        List.of());
  }

  /** Without the studio's own location, whose page tells how one gets in. */
  private static Occasion placed(Occasion occasion) {
    return new Occasion(
        occasion
            .place()
            .map(
                place ->
                    new Occasion.Place(
                        place.name(),
                        place.kind(),
                        place.indoors(),
                        place.latitude(),
                        place.longitude(),
                        Optional.empty())),
        occasion.date(),
        occasion.time(),
        occasion.utcOffset(),
        occasion.weather(),
        occasion.wind());
  }

  /**
   * The weather is read by the cautions and not shown: a page without a place has no line for it.
   */
  private static Occasion unplaced(Occasion occasion) {
    return new Occasion(
        occasion
            .place()
            .map(
                place ->
                    new Occasion.Place(
                        "",
                        Optional.empty(),
                        place.indoors(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty())),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        occasion.weather(),
        occasion.wind());
  }

  private static Camera unplaced(Camera camera) {
    return new Camera(
        camera.body(),
        camera.lens(),
        camera.place(),
        camera.aim(),
        Optional.empty(),
        camera.focusDistance());
  }

  private static List<Subject> subjects(List<Subject> subjects, Names names) {
    List<Subject> shown = new ArrayList<>();
    for (Subject subject : subjects) {
      String name =
          subjects.size() == 1 ? names.subject() : names.subject() + " " + (shown.size() + 1);
      shown.add(
          new Subject(
              name,
              subject.place(),
              subject.facing(),
              subject.height(),
              marks(subject.path(), names),
              subject.speedMPerS()));
    }
    return List.copyOf(shown);
  }

  private static List<Mark> marks(List<Mark> path, Names names) {
    List<Mark> shown = new ArrayList<>();
    for (Mark mark : path) {
      shown.add(new Mark(names.mark() + " " + (shown.size() + 1), mark.at(), Optional.empty()));
    }
    return List.copyOf(shown);
  }

  private static Light light(Light light) {
    return new Light(
        light.id(),
        light.role(),
        Optional.empty(),
        light.head(),
        light.heads(),
        light.pops(),
        light.modifier(),
        light.output(),
        light.gels(),
        light.place(),
        light.placeKnown(),
        light.aim(),
        light.target(),
        light.stand(),
        light.stopsDown(),
        light.reading());
  }

  private static Ambient ambient(Ambient ambient) {
    return new Ambient(
        ambient.level(),
        ambient.known(),
        Optional.empty(),
        ambient.source(),
        ambient.temperature());
  }
}
