package lampwright.browser;

import java.util.LinkedHashMap;
import java.util.Map;
import lampwright.drawing.Elevation;
import lampwright.drawing.Plan;
import lampwright.drawing.StopRuler;
import lampwright.engine.Known;
import lampwright.language.Notation;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FiguresComputation;
import lampwright.wording.CautionLine;
import lampwright.wording.Deviation;
import lampwright.wording.Figure;
import lampwright.wording.KeyFigures;
import lampwright.wording.LightRow;
import lampwright.wording.MissingInput;
import lampwright.wording.MissingWords;
import lampwright.wording.Wording;

/** The parts of an answer about a setup that is right, in the words of the server's pages. */
final class AnswerParts {

  private final SetupDocument setup;
  private final Figures figures;
  private final Notation notation;
  private final Wording words;

  AnswerParts(SetupDocument setup, Notation notation) {
    this.setup = setup;
    this.figures = FiguresComputation.of(setup);
    this.notation = notation;
    this.words = new Wording(notation);
  }

  Object of(Part part) {
    return switch (part) {
      case STRIP -> KeyFigures.of(setup, figures, notation).stream().map(this::figure).toList();
      case LIGHTS -> LightRow.all(setup, figures, notation).stream().map(this::light).toList();
      case PLAN -> Plan.of(setup, figures, notation).markup();
      case QUICK_PLAN -> Plan.withoutLevels(setup, figures, notation).markup();
      case SIDE -> Elevation.side(setup, figures, notation).markup();
      case FRONT -> Elevation.front(setup, figures, notation).markup();
      case CAUTIONS -> CautionLine.all(setup, words).stream().map(AnswerParts::caution).toList();
      case NEEDS ->
          new MissingWords(setup, words)
              .of(figures.needs()).stream().map(AnswerParts::need).toList();
      case WORKINGS -> Workings.of(figures);
      case NOW -> throw new IllegalArgumentException("What happened is not about the setup alone.");
    };
  }

  private Map<String, Object> figure(Figure figure) {
    Map<String, Object> told = new LinkedHashMap<>();
    told.put("value", figure.value());
    told.put("unit", figure.unit());
    told.put("name", figure.name());
    told.put("uncertainty", figure.uncertainty());
    told.put("known", figure.known().map((Known known) -> words.known(known)).orElse(""));
    return told;
  }

  private Map<String, Object> light(LightRow row) {
    Map<String, Object> told = new LinkedHashMap<>();
    told.put("id", row.id().text());
    told.put("number", row.number());
    told.put("role", row.role());
    told.put("gear", row.gear());
    told.put("power", row.power());
    told.put("reading", row.reading());
    told.put("known", row.known());
    told.put("level", row.level());
    told.put("uncertainty", row.uncertainty());
    told.put("ruler", ruler(row).svg().markup());
    told.put("distance", row.distance());
    row.off().ifPresent(off -> told.put("off", deviation(off)));
    told.put("reason", row.reason());
    return told;
  }

  private StopRuler ruler(LightRow row) {
    StopRuler ruler = StopRuler.of(row.role(), notation);
    return row.onRuler()
        .map(at -> ruler.withDot(at.fromShooting().value()).withBand(at.uncertainty().value()))
        .orElse(ruler);
  }

  private static Map<String, Object> deviation(Deviation off) {
    return Map.of("stops", off.stops(), "word", off.word(), "notable", off.notable());
  }

  private static Map<String, Object> caution(CautionLine caution) {
    return Map.of("danger", caution.danger(), "act", caution.act());
  }

  private static Map<String, Object> need(MissingInput need) {
    return Map.of("of", need.of(), "inputs", need.inputs(), "sentence", need.sentence());
  }
}
