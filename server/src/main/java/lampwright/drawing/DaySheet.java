package lampwright.drawing;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lampwright.language.Notation;
import lampwright.setup.SetupDocument;
import lampwright.setup.packing.DayPlan;
import lampwright.setup.packing.Stage;
import lampwright.setup.packing.Stint;
import lampwright.setup.packing.SunEvent;

/**
 * The day of a crew as a sheet that is read downward: a column for each pair of hands, minutes on
 * the left by the clocks of the place, each errand a box as long as it takes. What the sun does,
 * and the light that is waited for, are lines across.
 *
 * @param setups as they are built, in the order of the day
 * @param wanted when each one's light is there
 * @param sun what it does on that day
 */
public record DaySheet(
    DayPlan plan,
    List<SetupDocument> setups,
    List<Optional<Instant>> wanted,
    List<SunEvent.Timed> sun,
    ZoneOffset offset,
    Notation notation) {

  private static final double CLOCK = 52;
  private static final double LANE = 92;

  /** Beside the lanes, for what the sun does. */
  private static final double SUN = 168;

  private static final double TOP = 28;
  private static final double FOOT = 20;
  private static final double HEADING = 22;

  /** Tall enough for words in an errand of two minutes. */
  private static final double MINUTE = 8;

  /** No errand stands in a picture that is shot, or on the way: those are drawn shorter. */
  private static final double QUIET_MINUTE = 3;

  private static final int LETTERS_A_LANE = 14;

  public DaySheet {
    setups = List.copyOf(setups);
    wanted = List.copyOf(wanted);
    sun = List.copyOf(sun);
  }

  /** A stage with where it lies on the sheet. */
  private record Laid(Stage stage, double top, double minute) {

    double bottom() {
      return top + stage.minutes() * minute;
    }

    double at(int minuteOfStage) {
      return top + minuteOfStage * minute;
    }
  }

  /** The drawing. */
  public Svg svg() {
    List<Laid> laid = laid();
    double lanes = CLOCK + plan.hands() * LANE + 1;
    double width = lanes + (sun.isEmpty() ? 0 : SUN);
    double height = laid.getLast().bottom() + FOOT;
    Markup markup =
        new Markup()
            .open(
                "svg",
                "class",
                "day-sheet",
                "viewBox",
                "0 0 " + Markup.number(width) + " " + Markup.number(height),
                "width",
                Markup.number(width),
                "height",
                Markup.number(height),
                "role",
                "img",
                "aria-labelledby",
                "day-sheet-title day-sheet-words")
            .words("title", words().title(), "id", "day-sheet-title")
            .words("desc", words().description(minutes()), "id", "day-sheet-words");
    for (int hand = 1; hand <= plan.hands(); hand++) {
      markup.words(
          "text",
          words().hand(hand),
          "class",
          "day-head",
          "x",
          Markup.number(lane(hand) + LANE / 2),
          "y",
          Markup.number(TOP - 10),
          "text-anchor",
          "middle");
    }
    laid.forEach(stage -> draw(markup, stage, lanes));
    drawSun(markup, laid, lanes);
    clock(markup, laid.getLast().bottom() + 12, minutes());
    return Svg.trusted(markup.close("svg").toString());
  }

  /** The same facts, errand by errand: clock, who, what, at which light, minutes. */
  public DrawingTable table() {
    List<List<String>> rows = new ArrayList<>();
    for (Stage stage : plan.stages()) {
      for (Stint stint : stage.stints()) {
        rows.add(
            List.of(
                words().time(stage.from() + stint.from()),
                stint.who().stream().map(Object::toString).collect(Collectors.joining(", ")),
                words().whole(stage, stint),
                notation.say("packing.minutes", stint.errand().minutes())));
      }
    }
    return new DrawingTable(
        List.of(
            notation.say("drawing.clock"),
            notation.say("packing.who"),
            notation.say("packing.what"),
            notation.say("packing.takes")),
        rows);
  }

  private List<Laid> laid() {
    List<Laid> laid = new ArrayList<>();
    double top = TOP;
    int gone = 0;
    for (Stage stage : plan.stages()) {
      boolean isQuiet = stage.kind() == Stage.Kind.SHOOT || stage.kind() == Stage.Kind.MOVE;
      // Nobody is sent while all wait for the light.
      top += HEADING + Math.max(0, stage.from() - gone) * QUIET_MINUTE;
      laid.add(new Laid(stage, top, isQuiet ? QUIET_MINUTE : MINUTE));
      top = laid.getLast().bottom();
      gone = stage.to();
    }
    return laid;
  }

  private int minutes() {
    return plan.stages().getLast().to();
  }

  private void draw(Markup markup, Laid laid, double width) {
    Stage stage = laid.stage();
    markup.words(
        "text",
        cut(words().heading(stage), plan.hands() * LETTERS_A_LANE + 4),
        "class",
        "day-stage",
        "x",
        Markup.number(CLOCK),
        "y",
        Markup.number(laid.top() - 6));
    clock(markup, laid.top() - 10, stage.from());
    markup.add(
        "path",
        "class",
        "day-rule",
        "d",
        new Strokes().from(new Spot(0, laid.top())).to(new Spot(width, laid.top())).toString());
    for (Stint stint : stage.stints()) {
      for (int hand : stint.who()) {
        box(markup, laid, stint, hand);
      }
    }
  }

  private void box(Markup markup, Laid laid, Stint stint, int hand) {
    double top = laid.at(stint.from());
    double tall = stint.errand().minutes() * laid.minute();
    markup.add(
        "rect",
        "class",
        "day-box",
        "x",
        Markup.number(lane(hand) + 1),
        "y",
        Markup.number(top),
        "width",
        Markup.number(LANE - 2),
        "height",
        Markup.number(tall));
    markup.words(
        "text",
        cut(words().inShort(laid.stage(), stint), LETTERS_A_LANE),
        "class",
        "day-words",
        "x",
        Markup.number(lane(hand) + 6),
        "y",
        Markup.number(top + Math.min(tall / 2 + 4, 15)));
  }

  private void drawSun(Markup markup, List<Laid> laid, double width) {
    for (int i = 0; i < wanted.size(); i++) {
      int setup = i;
      Optional<Laid> shot =
          laid.stream()
              .filter(of -> of.stage().kind() == Stage.Kind.SHOOT && of.stage().setup() == setup)
              .findFirst();
      wanted
          .get(i)
          .flatMap(at -> shot)
          .ifPresent(of -> line(markup, "day-wanted", of.top(), width));
    }
    for (SunEvent.Timed event : sun) {
      minute(event.at())
          .flatMap(minute -> height(laid, minute))
          .ifPresent(
              y -> {
                line(markup, "day-sun", y, width);
                markup.words(
                    "text",
                    words().sun(event),
                    "class",
                    "day-sun-words",
                    "x",
                    Markup.number(width + 6),
                    "y",
                    Markup.number(y + 4));
              });
    }
  }

  private static void line(Markup markup, String cssClass, double y, double width) {
    markup.path(cssClass, new Strokes().from(new Spot(CLOCK, y)).to(new Spot(width, y)));
  }

  /** Where a minute of the day is on the sheet; empty before and after it. */
  private static Optional<Double> height(List<Laid> laid, int minute) {
    return laid.stream()
        .filter(of -> minute >= of.stage().from() && minute <= of.stage().to())
        .map(of -> of.at(minute - of.stage().from()))
        .findFirst();
  }

  private Optional<Integer> minute(Instant at) {
    return plan.begins()
        .map(begins -> (int) ((at.getEpochSecond() - begins.getEpochSecond()) / 60));
  }

  private void clock(Markup markup, double y, int minute) {
    markup.words(
        "text",
        words().time(minute),
        "class",
        "day-clock",
        "x",
        Markup.number(CLOCK - 6),
        "y",
        Markup.number(y + 4),
        "text-anchor",
        "end");
  }

  private static double lane(int hand) {
    return CLOCK + (hand - 1) * LANE;
  }

  private static String cut(String text, int letters) {
    return text.length() <= letters ? text : text.substring(0, letters - 1).strip() + "…";
  }

  /** What the sun does on the day, in words: "sunset 19:12". */
  public List<String> sunInWords() {
    return sun.stream().map(words()::sun).toList();
  }

  /** A moment of the day as the sheet writes it: "14:05". */
  public String clock(Instant at) {
    return DaySheetWords.clock(at, offset);
  }

  private DaySheetWords words() {
    return new DaySheetWords(plan, setups, offset, notation);
  }
}
