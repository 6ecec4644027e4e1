package lampwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.engine.exposure.FNumber;
import lampwright.language.Notation;
import lampwright.setup.BuildStep;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.Target;
import lampwright.setup.figures.BuildUp;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.Level;
import lampwright.setup.figures.LightFigures;
import lampwright.wording.CautionLine;
import lampwright.wording.Wording;

/**
 * One step of a build as it is read beside the light: what stands where, how strong it is set, what
 * the meter should give.
 *
 * @param light absent for a step without a light, such as reading the ambient
 * @param number as on the plan; 0 without a light
 * @param act the light's role ("Rim"), or what is done
 * @param gear head, modifier and gels; empty without a light
 * @param why what is done, and why now; may be empty
 * @param place distance and bearing from the hit mark; empty on the mark
 * @param height of the light above the ground of the hit mark
 * @param aim its distance and what it is aimed at
 * @param power as its head shows it
 * @param alone what the meter gives for it alone; empty where that is not known
 * @param known how that is known, in a word
 * @param mark the same as full stop and tenths, for whoever enters what theirs gives
 * @param where the meter is held, and how
 * @param together what it gives with everything that burns by then; empty where it is not known
 * @param cautions of this step
 */
public record BuildLine(
    Optional<LightId> light,
    int number,
    String act,
    String gear,
    String why,
    String place,
    String height,
    String aim,
    String power,
    String alone,
    String known,
    Optional<FNumber> mark,
    String where,
    String together,
    List<CautionLine> cautions) {

  public BuildLine {
    cautions = List.copyOf(cautions);
  }

  /** The steps of a setup in their order; lights that its build order leaves out come last. */
  public static List<BuildLine> all(SetupDocument setup, Figures figures, Notation notation) {
    Steps steps =
        new Steps(
            setup,
            new Wording(notation),
            PlanTable.of(setup, figures, notation),
            BuildUp.of(setup),
            setup.numbersInBuildOrder());
    List<BuildLine> lines = new ArrayList<>();
    for (BuildStep step : setup.buildOrder()) {
      lines.add(
          step.light()
              .map(id -> steps.of(figures.get(id), step.what()))
              .orElseGet(() -> withoutLight(step.what().orElse(""))));
    }
    for (Light light : setup.lightsInBuildOrder()) {
      if (setup.buildOrder().stream()
          .noneMatch(step -> step.light().equals(Optional.of(light.id())))) {
        lines.add(steps.of(figures.get(light.id()), Optional.empty()));
      }
    }
    return lines;
  }

  private static BuildLine withoutLight(String what) {
    return new BuildLine(
        Optional.empty(),
        0,
        what,
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        Optional.empty(),
        "",
        "",
        List.of());
  }

  private record Steps(
      SetupDocument setup,
      Wording words,
      PlanTable table,
      BuildUp buildUp,
      Map<LightId, Integer> numbers) {

    BuildLine of(LightFigures figures, Optional<String> what) {
      Light light = figures.light();
      int number = numbers.getOrDefault(light.id(), 0);
      Optional<PlanTable.Row> row =
          table.rows().stream().filter(of -> of.number().equals(Optional.of(number))).findFirst();
      Optional<Level> level = figures.level();
      return new BuildLine(
          Optional.of(light.id()),
          number,
          words.role(light.role()),
          words.gear(light.heads(), light.head(), light.modifier(), light.gels()),
          what.or(light::reason).orElse(""),
          row.map(PlanTable.Row::bearing).orElse(""),
          row.map(PlanTable.Row::height).orElse(""),
          row.map(PlanTable.Row::distance).orElse(""),
          words.power(light.head(), light.stopsDown()),
          level.map(of -> words.reading(of.reading())).orElse(""),
          level.map(Level::known).map(words::known).orElse(""),
          level.map(Level::reading),
          words.where(light.target()) + ", " + held(light.target()),
          buildUp.reading(light.id()).map(words::reading).orElse(""),
          CautionLine.ofLight(setup, light, words));
    }

    private String held(Target target) {
      return words.say("drawing.held." + Wording.key(target.held()));
    }
  }
}
