package lampwright.browser;

import static lampwright.document.Field.list;
import static lampwright.document.Field.required;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.document.Pointer;
import lampwright.document.Problems;
import lampwright.drawing.MeteredLine;
import lampwright.language.Notation;
import lampwright.setup.MeterReading;
import lampwright.setup.SetupDocument;
import lampwright.setup.building.WalkedMark;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FiguresComputation;
import lampwright.setup.takes.ComparedReading;
import lampwright.setup.takes.TakeReading;
import lampwright.wording.Deviation;
import lampwright.wording.Wording;

/**
 * What the meter gave, against what the setup lets expect. A request has {@code metered}: {@code
 * lights}, the readings of a take as REST writes them, and {@code marks}, each a meter's reading
 * with the number of its {@code mark} in the order of the walk, from 0.
 *
 * <p>The answer has {@code lights}, each with its {@code light} (an id), {@code sentence} and
 * {@code ruler}, and {@code marks}, each with its {@code mark}; both have {@code metered}, {@code
 * expected}, {@code stops}, {@code word} and {@code notable}, in words, and empty where not known.
 */
record AskedMeter(SetupDocument setup, Metered metered, Notation notation) {

  /** A reading on a mark, toward the camera. */
  record OnMark(int mark, MeterReading reading) {

    private static final Field<OnMark, Integer> MARK =
        required("mark", Forms.count(0, 999), OnMark::mark, "Which mark, from 0.");
    private static final Field<OnMark, MeterReading> READING =
        required("reading", MeterReading.FORM, OnMark::reading, "What the meter gave.");

    private static final ObjectForm<OnMark> FORM =
        ObjectForm.of(
            "on_mark",
            "A reading on a mark.",
            values -> new OnMark(values.get(MARK), values.get(READING)),
            List.of(MARK, READING));
  }

  /** What was metered. */
  record Metered(List<TakeReading> lights, List<OnMark> marks) {

    private static final Field<Metered, List<TakeReading>> LIGHTS =
        list("lights", TakeReading.FORM, 40, Metered::lights, "Lights alone.");
    private static final Field<Metered, List<OnMark>> MARKS =
        list("marks", OnMark.FORM, 400, Metered::marks, "All the light, on marks.");

    private static final ObjectForm<Metered> FORM =
        ObjectForm.of(
            "metered",
            "What the meter gave.",
            values -> new Metered(values.get(LIGHTS), values.get(MARKS)),
            List.of(LIGHTS, MARKS));

    Metered {
      lights = List.copyOf(lights);
      marks = List.copyOf(marks);
    }
  }

  /** What is asked, where a request asks; problems point into it as into one document. */
  static Optional<AskedMeter> find(Request request, SetupDocument setup, Problems problems) {
    if (request.metered().isEmpty() || !request.wanted().contains(Part.METER)) {
      return Optional.empty();
    }
    return Metered.FORM
        .read(request.metered().get(), Pointer.root().field("metered"), problems)
        .map(metered -> new AskedMeter(setup, metered, request.notation()));
  }

  Map<String, Object> answer() {
    Wording words = new Wording(notation);
    Figures figures = FiguresComputation.of(setup);
    List<WalkedMark> walk = WalkedMark.of(setup, figures);
    Map<String, Object> told = new LinkedHashMap<>();
    told.put(
        "lights",
        ComparedReading.of(metered.lights(), setup).stream()
            .map(reading -> light(reading, words))
            .toList());
    told.put(
        "marks",
        metered.marks().stream()
            .filter(on -> on.mark() < walk.size())
            .map(on -> mark(on, walk.get(on.mark()), words))
            .toList());
    return told;
  }

  private static Map<String, Object> light(ComparedReading reading, Wording words) {
    MeteredLine line = MeteredLine.of(reading, words);
    Map<String, Object> told = new LinkedHashMap<>();
    told.put("light", reading.reading().light().text());
    told.put("metered", line.metered());
    told.put("expected", line.expected());
    told.put("uncertainty", line.uncertainty());
    off(line.off(), told);
    told.put("sentence", line.sentence());
    told.put("ruler", line.ruler().markup());
    return told;
  }

  private static Map<String, Object> mark(OnMark on, WalkedMark mark, Wording words) {
    Map<String, Object> told = new LinkedHashMap<>();
    told.put("mark", on.mark());
    told.put("metered", words.reading(on.reading().fNumber()));
    told.put("expected", mark.expected().map(words::reading).orElseGet(words::notKnown));
    off(mark.over(on.reading()).map(over -> Deviation.of(over, words)), told);
    return told;
  }

  private static void off(Optional<Deviation> off, Map<String, Object> told) {
    told.put("stops", off.map(Deviation::stops).orElse(""));
    told.put("word", off.map(Deviation::word).orElse(""));
    told.put("notable", off.filter(Deviation::notable).isPresent());
  }
}
