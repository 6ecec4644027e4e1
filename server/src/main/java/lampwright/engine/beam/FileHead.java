package lampwright.engine.beam;

import java.util.List;
import java.util.Locale;
import lampwright.engine.beam.CandelaFile.Outcome;
import lampwright.engine.beam.CandelaFile.Quantity;
import lampwright.engine.beam.CandelaFile.Refused;

/** Reads a photometric file's lines down to the one that speaks of tilt. */
final class FileHead {

  /** The first lines of the editions from 1991 on; that of 1986 has none. */
  private static final List<String> EDITIONS =
      List.of("IESNA91", "IESNA:LM-63-1995", "IESNA:LM-63-2002", "IES:LM-63-2019");

  private static final String TILT = "TILT=";
  private static final String QUANTITY = "[_QUANTITY]";

  private FileHead() {}

  static Outcome read(FileLines lines) {
    String first = lines.get(1).toUpperCase(Locale.ROOT);
    if (first.startsWith("IES")
        && !EDITIONS.contains(first)
        && !first.startsWith("IESNA:LM-63-1986")) {
      return new Refused(
          1,
          "Edition ("
              + shown(lines.get(1))
              + ") must be one of "
              + String.join(", ", EDITIONS)
              + ", or left out.");
    }
    Quantity quantity = Quantity.CANDELA;
    for (int number = 1; number <= lines.count(); number++) {
      String line = lines.get(number).toUpperCase(Locale.ROOT);
      if (line.startsWith(TILT)) {
        String tilt = line.substring(TILT.length()).trim();
        return tilt.equals("NONE")
            ? FileNumbers.read(lines, number + 1, quantity)
            : new Refused(
                number,
                "Tilt ("
                    + shown(tilt)
                    + ") must be NONE: a flash tube shines alike in every position. Maybe write"
                    + " TILT=NONE and take out the lines of the tilt table?");
      }
      if (line.startsWith(QUANTITY)) {
        switch (line.substring(QUANTITY.length()).trim()) {
          case "CD" -> quantity = Quantity.CANDELA;
          case "CD S", "CD.S", "CD*S", "CD·S" -> quantity = Quantity.CANDELA_SECONDS;
          default -> {
            return new Refused(
                number, "Quantity (" + shown(line) + ") must be \"cd\" or \"cd s\".");
          }
        }
      }
    }
    return new Refused(
        lines.count(),
        "A line TILT=NONE is missing. Maybe this is no photometric file, or it is cut off?");
  }

  /** As much of a text as fits into a message. */
  static String shown(String text) {
    return text.length() <= 40 ? text : text.substring(0, 40) + "…";
  }
}
