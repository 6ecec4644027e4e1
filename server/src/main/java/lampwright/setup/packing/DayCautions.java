package lampwright.setup.packing;

import java.util.List;
import java.util.stream.Stream;
import lampwright.language.Said;
import lampwright.setup.figures.MainsFigures;
import lampwright.setup.figures.WindFigures;

/** What can hurt somebody on a day with setups, and who has the say. */
public final class DayCautions {

  /** Every day's: common practice, no source; that the plan is no permission comes first. */
  public static final List<Said> ALL =
      Stream.of(
              List.of(Said.of("caution.day.noPermission"), Said.of("caution.day.lifting")),
              WindFigures.CAUTIONS,
              MainsFigures.CAUTIONS,
              List.of(Said.of("caution.day.cold"), Said.of("caution.day.flight")))
          .flatMap(List::stream)
          .toList();

  private DayCautions() {}
}
