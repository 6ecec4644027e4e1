package lampwright.engine.beam;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.beam.CandelaFile.Outcome;
import lampwright.engine.beam.CandelaFile.Quantity;
import lampwright.engine.beam.CandelaFile.Read;
import lampwright.engine.beam.CandelaFile.Refused;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;

/** Reads the numbers of a photometric file, which may be broken over lines anywhere. */
final class FileNumbers {

  // The places of the numbers before the angles.
  private static final int LAMPS = 0;
  private static final int LUMENS = 1;
  private static final int MULTIPLIER = 2;
  private static final int VERTICAL = 3;
  private static final int HORIZONTAL = 4;
  private static final int TYPE = 5;
  private static final int UNITS = 6;
  private static final int WIDTH = 7;
  private static final int LENGTH = 8;
  private static final int HEIGHT = 9;
  private static final int BALLAST = 10;
  private static final int WATTS = 12;
  private static final int BEFORE_THE_ANGLES = 13;

  private static final List<String> NAMES =
      List.of(
          "Number of lamps",
          "Lumens of a lamp",
          "Candela multiplier",
          "Number of vertical angles",
          "Number of horizontal angles",
          "Photometric type",
          "Units",
          "Luminous width",
          "Luminous length",
          "Luminous height",
          "Ballast factor",
          "The number for future use",
          "Watts");

  private static final int MOST_NUMBERS =
      BEFORE_THE_ANGLES + 2 * CandelaTable.MOST_ANGLES + CandelaTable.MOST_INTENSITIES;

  private static final double METRES_IN_A_FOOT = 0.3048;

  private static final double LARGEST_SIDE_M = 100;

  private final List<Double> values = new ArrayList<>();
  private final List<Integer> places = new ArrayList<>();
  private final int lastLine;

  private FileNumbers(int lastLine) {
    this.lastLine = lastLine;
  }

  static Outcome read(FileLines lines, int from, Quantity quantity) {
    FileNumbers numbers = new FileNumbers(lines.count());
    for (int number = from; number <= lines.count(); number++) {
      Optional<Refused> fault = numbers.add(lines.get(number), number);
      if (fault.isPresent()) {
        return fault.get();
      }
    }
    Optional<Refused> fault = numbers.faultBeforeTheAngles().or(numbers::faultOfCount);
    return fault.isPresent() ? fault.get() : numbers.table(quantity);
  }

  private Optional<Refused> add(String line, int number) {
    int begin = 0;
    for (int i = 0; i <= line.length(); i++) {
      if (i < line.length() && !isBetween(line.charAt(i))) {
        continue;
      }
      if (i > begin) {
        String word = line.substring(begin, i);
        if (values.size() == MOST_NUMBERS) {
          return refused(
              number,
              "Numbers must be at most " + MOST_NUMBERS + ". Maybe leave out every second angle?");
        }
        if (!isNumber(word) || !Double.isFinite(Double.parseDouble(word))) {
          return refused(
              number, "\"" + FileHead.shown(word) + "\" must be a number, such as 12.5.");
        }
        values.add(Double.parseDouble(word));
        places.add(number);
      }
      begin = i + 1;
    }
    return Optional.empty();
  }

  private static boolean isBetween(char c) {
    return c == ' ' || c == '\t' || c == ',';
  }

  /** Asks for digits with a point and a power of ten: Java's own numbers allow more than that. */
  private static boolean isNumber(String word) {
    int at = afterSign(word, 0);
    int whole = afterDigits(word, at);
    int end = whole;
    int digits = whole - at;
    if (end < word.length() && word.charAt(end) == '.') {
      end = afterDigits(word, end + 1);
      digits = end - at - 1;
    }
    if (digits == 0 || word.length() > 40) {
      return false;
    }
    if (end < word.length() && (word.charAt(end) == 'e' || word.charAt(end) == 'E')) {
      int power = afterSign(word, end + 1);
      end = afterDigits(word, power);
      return end > power && end == word.length();
    }
    return end == word.length();
  }

  private static int afterSign(String word, int at) {
    return at < word.length() && (word.charAt(at) == '-' || word.charAt(at) == '+') ? at + 1 : at;
  }

  private static int afterDigits(String word, int from) {
    int at = from;
    while (at < word.length() && word.charAt(at) >= '0' && word.charAt(at) <= '9') {
      at++;
    }
    return at;
  }

  private Optional<Refused> faultBeforeTheAngles() {
    if (values.size() < BEFORE_THE_ANGLES) {
      return refused(
          lastLine, NAMES.get(values.size()) + " is missing. Maybe the file is cut off?");
    }
    return must(LAMPS, isWhole(LAMPS, 1, 10_000), "be a whole number from 1")
        .or(
            () ->
                must(
                    LUMENS,
                    get(LUMENS) == -1 || get(LUMENS) > 0,
                    "be more than 0, or -1 for absolute photometry"))
        .or(() -> must(MULTIPLIER, get(MULTIPLIER) > 0, "be more than 0"))
        .or(
            () ->
                must(
                    VERTICAL,
                    isWhole(VERTICAL, 2, CandelaTable.MOST_ANGLES),
                    "be a whole number from 2 to " + CandelaTable.MOST_ANGLES))
        .or(
            () ->
                must(
                    HORIZONTAL,
                    isWhole(HORIZONTAL, 1, CandelaTable.MOST_ANGLES),
                    "be a whole number from 1 to " + CandelaTable.MOST_ANGLES))
        .or(
            () ->
                must(
                    TYPE,
                    get(TYPE) == 1,
                    "be 1 (type C): the angles of types B (2) and A (3) turn about other axes."
                        + " Maybe ask for the file in type C"))
        .or(() -> must(UNITS, get(UNITS) == 1 || get(UNITS) == 2, "be 1 for feet or 2 for metres"))
        .or(() -> side(WIDTH))
        .or(() -> side(LENGTH))
        .or(() -> side(HEIGHT))
        .or(() -> must(BALLAST, get(BALLAST) > 0, "be more than 0"))
        .or(() -> must(WATTS, get(WATTS) >= 0, "be 0 or more"));
  }

  private Optional<Refused> side(int place) {
    double side = Math.abs(metres(place));
    return must(place, side <= LARGEST_SIDE_M, "be at most 100 m. Maybe the units are others");
  }

  private boolean isWhole(int place, int atLeast, int atMost) {
    double value = get(place);
    return value == Math.floor(value) && value >= atLeast && value <= atMost;
  }

  private Optional<Refused> must(int place, boolean holds, String what) {
    return holds
        ? Optional.empty()
        : refused(
            places.get(place),
            Bounds.subject(NAMES.get(place), get(place), "") + " must " + what + ".");
  }

  private Optional<Refused> faultOfCount() {
    int vertical = (int) get(VERTICAL);
    int horizontal = (int) get(HORIZONTAL);
    if (vertical * horizontal > CandelaTable.MOST_INTENSITIES) {
      return refused(
          places.get(HORIZONTAL),
          "Intensities ("
              + vertical * horizontal
              + ") must be at most "
              + CandelaTable.MOST_INTENSITIES
              + ". Maybe leave out every second angle?");
    }
    int wanted = BEFORE_THE_ANGLES + vertical + horizontal + vertical * horizontal;
    if (values.size() == wanted) {
      return Optional.empty();
    }
    int line = values.size() > wanted ? places.get(wanted) : lastLine;
    return refused(
        line,
        "Numbers ("
            + values.size()
            + ") must be "
            + wanted
            + ": 13, "
            + vertical
            + " vertical angles, "
            + horizontal
            + " horizontal, and an intensity for each pair. Maybe a row is missing or too many?");
  }

  private Outcome table(Quantity quantity) {
    int vertical = (int) get(VERTICAL);
    int horizontal = (int) get(HORIZONTAL);
    int firstRow = BEFORE_THE_ANGLES + vertical + horizontal;
    List<Degrees> down = degrees(BEFORE_THE_ANGLES, vertical);
    List<Degrees> around = degrees(BEFORE_THE_ANGLES + vertical, horizontal);
    double factor = get(MULTIPLIER) * get(BALLAST);
    List<List<Double>> rows = new ArrayList<>();
    for (int row = 0; row < horizontal; row++) {
      List<Double> candela = new ArrayList<>();
      for (int column = 0; column < vertical; column++) {
        candela.add(get(firstRow + row * vertical + column) * factor);
      }
      rows.add(candela);
    }
    Optional<CandelaTable.Fault> fault = CandelaTable.findFault(down, around, rows);
    if (fault.isPresent()) {
      int first =
          switch (fault.get().part()) {
            case VERTICAL -> BEFORE_THE_ANGLES;
            case HORIZONTAL -> BEFORE_THE_ANGLES + vertical;
            case INTENSITIES -> firstRow;
          };
      return new Refused(places.get(first + fault.get().index()), fault.get().message());
    }
    // A file's horizontal angles run counterclockwise, ours clockwise.
    return new Read(CandelaTable.of(down, around, rows).mirrored(), quantity, opening());
  }

  /** Negative sides mean round from the edition of 1995 on (from memory). */
  private LuminousOpening opening() {
    boolean round = get(WIDTH) < 0 || get(LENGTH) < 0;
    double width = Math.abs(metres(WIDTH));
    double length = Math.abs(metres(LENGTH));
    if (round && (width == 0 || length == 0)) {
      width = Math.max(width, length);
      length = width;
    }
    return new LuminousOpening(
        new Metres(width), new Metres(length), new Metres(Math.abs(metres(HEIGHT))), round);
  }

  private List<Degrees> degrees(int from, int count) {
    return values.subList(from, from + count).stream().map(Degrees::new).toList();
  }

  private double metres(int place) {
    return get(place) * (get(UNITS) == 1 ? METRES_IN_A_FOOT : 1);
  }

  private double get(int place) {
    return values.get(place);
  }

  private static Optional<Refused> refused(int line, String reason) {
    return Optional.of(new Refused(line, reason));
  }
}
