package lampwright.learning.drill;

import java.util.Optional;
import lampwright.gear.Kit;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FiguresComputation;

/**
 * What a drill is made from.
 *
 * @param setup one of the studio's
 * @param figures of that setup
 * @param kit one of the studio's; without it drills that need one are made from the setup's gear
 */
public record Material(SetupDocument setup, Figures figures, Optional<Kit> kit) {

  public static Material of(SetupDocument setup, Optional<Kit> kit) {
    return new Material(setup, FiguresComputation.of(setup), kit);
  }
}
