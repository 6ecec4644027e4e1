package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.wording.CautionLine;
import lampwright.wording.Figure;
import lampwright.wording.MissingInput;
import lampwright.wording.Wording;

/**
 * One setup with its figures, like a surveyor's sheet.
 *
 * @param placeAndDate where and when, as one line; may be empty
 * @param kin what it was made from, and what was made from it
 * @param moods each with the search for it
 * @param pictures may be empty
 * @param figures the strip of key figures
 * @param plan the plan; absent where no place is known
 * @param signature how its light is
 * @param used what was really used; absent where nobody told
 * @param proposed what the crew proposes, the first told first; may be empty
 * @param usedForm where one tells it; absent for who may not
 * @param offHeading what the lights' {@code off} compares ("Off the model"), where any has it
 * @param buildOrder may be empty
 * @param now what to ask when something changes
 * @param figuresPath to every figure in full; empty where there is no such page
 * @param dials what a stop on each dial does
 * @param lines the other figures in short; may be empty
 * @param movement whom or what it is of, then each mark with its cue; may be empty
 * @param ambient ambient figures; may be empty
 * @param ambientNote how and where the ambient was taken, what the sun did; may be empty
 * @param camera camera figures; may be empty
 * @param cameraNote body, lens, place; may be empty
 * @param missing what the setup does not say, and its figures need; may be empty
 * @param leftOut what the figures do not take into account
 * @param life where it stands, and how it came there
 * @param share where it is shown to somebody outside; absent for who may not
 * @param revision "Revision 3, by …, 4 May 2031"
 * @param actions what this member may do with it (change, field sheet, revisions)
 */
public record SetupPage(
    Layout layout,
    String title,
    String placeAndDate,
    String intent,
    Kin kin,
    List<Link> moods,
    PicturesPart pictures,
    List<Figure> figures,
    Optional<PlanView> plan,
    SignaturePart signature,
    List<SetupLight> lights,
    Optional<UsedPart> used,
    List<ProposedPart> proposed,
    Optional<UsedForm> usedForm,
    String offHeading,
    List<BuildStep> buildOrder,
    String figuresPath,
    DialsInShort dials,
    List<ShortLine> lines,
    List<Mark> movement,
    List<Figure> ambient,
    String ambientNote,
    List<Figure> camera,
    String cameraNote,
    List<CautionLine> cautions,
    Outcome outcome,
    List<MissingInput> missing,
    List<String> leftOut,
    KitForm kitForm,
    NowForm now,
    LifePart life,
    Optional<SharePart> share,
    String revision,
    List<Link> actions) {

  public SetupPage {
    moods = List.copyOf(moods);
    figures = List.copyOf(figures);
    lights = List.copyOf(lights);
    proposed = List.copyOf(proposed);
    buildOrder = List.copyOf(buildOrder);
    lines = List.copyOf(lines);
    movement = List.copyOf(movement);
    ambient = List.copyOf(ambient);
    camera = List.copyOf(camera);
    cautions = List.copyOf(cautions);
    missing = List.copyOf(missing);
    leftOut = List.copyOf(leftOut);
    actions = List.copyOf(actions);
  }

  /** A subject, or a mark on its path, and what is to be known of it. */
  public record Mark(String name, String cue) {}

  /** The parts that it has, for whoever wants one of them: their names, and their places on it. */
  public List<Link> contents() {
    Wording words = layout.words();
    List<Link> parts = new ArrayList<>();
    plan.ifPresent(_ -> parts.add(new Link(words.say("pages.common.plan"), "plan")));
    if (!cautions.isEmpty()) {
      parts.add(new Link(words.say("pages.common.cautions"), "cautions"));
    }
    parts.add(new Link(words.say("pages.setup.lights"), "lights"));
    if (!buildOrder.isEmpty()) {
      parts.add(new Link(words.say("pages.setup.build"), "build"));
    }
    parts.add(new Link(words.say("pages.setup.exposure"), "exposure"));
    if (!movement.isEmpty()) {
      parts.add(new Link(words.say("pages.setup.movement"), "movement"));
    }
    if (!outcome.groups(words).isEmpty()) {
      parts.add(new Link(words.say("pages.setup.outcome"), "outcome"));
    }
    parts.add(new Link(words.say("pages.setup.toHistory"), "history"));
    return parts;
  }

  /** Whether the table of lights has the column of deviations. */
  public boolean hasOff() {
    return lights.stream().anyMatch(light -> light.row().off().isPresent());
  }
}
