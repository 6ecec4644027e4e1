package lampwright.web.pages;

import java.util.List;
import java.util.Optional;

/**
 * A trail and how far one is on it.
 *
 * @param learningPath where one stands
 * @param counted "3 of 8 stages"
 * @param cleared what one may do alone, who said so and when; empty where nothing is
 * @param changePath where it is changed; empty for who may not
 */
public record TrailPage(
    Layout layout,
    String name,
    String about,
    String learningPath,
    String counted,
    String clearsFor,
    String cleared,
    List<Stage> stages,
    FormErrors errors,
    String changePath) {

  public TrailPage {
    stages = List.copyOf(stages);
  }

  /** The field in which a run-through is chosen. */
  public static final String TAKE = "take";

  /**
   * One stage.
   *
   * @param id of its heading, to which links lead
   * @param state how it stands, as a style's name
   * @param said how it stands, in words
   * @param paragraphs what is to be read, looked at or shown
   * @param setup that it leads to
   * @param links to drills, and to where one builds
   * @param act what one can do about it now; absent where there is nothing to do here
   * @param judgement what was said of the build that was handed in last
   */
  public record Stage(
      String id,
      String title,
      String state,
      String said,
      List<String> paragraphs,
      Optional<Link> setup,
      List<Counted> links,
      Optional<Act> act,
      Optional<Judgement> judgement) {
    public Stage {
      paragraphs = List.copyOf(paragraphs);
      links = List.copyOf(links);
    }
  }

  /** A way on, with how much of it is done; empty where that is not counted. */
  public record Counted(Link link, String counted) {}

  /**
   * A form that says a stage is done, or hands something in.
   *
   * @param takes what can be handed in; empty where nothing is
   * @param hint why nothing can be handed in yet
   */
  public record Act(String action, String csrf, String button, List<Take> takes, String hint) {
    public Act {
      takes = List.copyOf(takes);
    }
  }

  /** A run-through that can be handed in. */
  public record Take(String id, String label) {}

  /** What somebody said of a build. */
  public record Judgement(boolean isSignedOff, String said, String words) {}
}
