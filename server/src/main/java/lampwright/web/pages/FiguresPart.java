package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import lampwright.wording.Figure;
import lampwright.wording.WorkingStep;

/**
 * The figures of one subject.
 *
 * @param id names it in addresses
 * @param heading what it is about
 * @param lead what to read it for, in a sentence or two; may be empty
 * @param figures may be empty
 * @param tables may be empty
 * @param cautions what must be known before anybody acts on it, and that local codes, the makers'
 *     instructions and licensed practice come first; may be empty
 * @param notes what they rest on, in words; may be empty
 * @param missing what the setup would have to say for more of them; empty where nothing is missing
 * @param workings of what the tables show; may be empty
 */
public record FiguresPart(
    String id,
    String heading,
    String lead,
    List<Figure> figures,
    List<FiguresTable> tables,
    List<String> cautions,
    List<String> notes,
    String missing,
    List<WorkingStep> workings) {

  public FiguresPart {
    figures = List.copyOf(figures);
    tables = List.copyOf(tables);
    cautions = List.copyOf(cautions);
    notes = List.copyOf(notes);
    workings = List.copyOf(workings);
  }

  /** A part without anything in it yet. */
  static FiguresPart of(String id, String heading, String lead) {
    return new FiguresPart(
        id, heading, lead, List.of(), List.of(), List.of(), List.of(), "", List.of());
  }

  FiguresPart with(Figure figure) {
    return new FiguresPart(
        id, heading, lead, plus(figures, figure), tables, cautions, notes, missing, workings);
  }

  /** A table without rows is left out. */
  FiguresPart with(FiguresTable table) {
    return table.rows().isEmpty()
        ? this
        : new FiguresPart(
            id, heading, lead, figures, plus(tables, table), cautions, notes, missing, workings);
  }

  FiguresPart withCaution(String caution) {
    return new FiguresPart(
        id, heading, lead, figures, tables, plus(cautions, caution), notes, missing, workings);
  }

  FiguresPart withNote(String note) {
    return new FiguresPart(
        id, heading, lead, figures, tables, cautions, plus(notes, note), missing, workings);
  }

  FiguresPart withMissing(String words) {
    return new FiguresPart(id, heading, lead, figures, tables, cautions, notes, words, workings);
  }

  FiguresPart with(WorkingStep working) {
    return new FiguresPart(
        id, heading, lead, figures, tables, cautions, notes, missing, plus(workings, working));
  }

  private static <T> List<T> plus(List<T> before, T one) {
    List<T> all = new ArrayList<>(before);
    all.add(one);
    return all;
  }
}
