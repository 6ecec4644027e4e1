package lampwright.browser;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lampwright.engine.Working;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.LightFigures;

/** The steps to a setup's figures, with their exact values. */
final class Workings {

  private Workings() {}

  static List<Object> of(Figures figures) {
    List<Object> workings = new ArrayList<>();
    for (LightFigures light : figures.lights()) {
      light.level().ifPresent(level -> workings.add(working(level.working())));
      light.level().ifPresent(level -> workings.add(working(level.budget().working())));
    }
    figures.ambient().ifPresent(ambient -> workings.add(working(ambient.working())));
    figures.targets().forEach(target -> workings.add(working(target.working())));
    return workings;
  }

  private static Map<String, Object> working(Working working) {
    Map<String, Object> step = new LinkedHashMap<>();
    step.put("quantity", working.quantity());
    step.put("value", working.value());
    step.put("unit", working.unit());
    step.put("formula", working.formula());
    step.put("source", working.source().key());
    step.put("known", working.known().name());
    step.put("parts", working.parts().stream().<Object>map(Workings::working).toList());
    return step;
  }
}
