package lampwright.engine.beam;

/**
 * A photometric file of the LM-63 family, type C, without tilt: 1986 (without a header), 1991,
 * 1995, 2002 and 2019. The order of the fields is that of the edition of 1991 (source lm-63); what
 * later editions add is from memory, see DEPARTURES.md.
 */
public final class CandelaFile {

  /** The longest file that is read, in characters. */
  public static final int MOST_CHARACTERS = 1 << 20;

  private CandelaFile() {}

  /** What the intensities are. */
  public enum Quantity {
    /** A light that stays on. */
    CANDELA,
    /** A flash: intensity times time. */
    CANDELA_SECONDS
  }

  /** What became of reading a file. */
  public sealed interface Outcome {}

  /**
   * The file is right.
   *
   * @param table intensities with the file's multiplier and ballast factor in them
   * @param quantity candela, unless a line {@code [_QUANTITY] cd s} says candela seconds
   * @param opening the size of what shines
   */
  public record Read(CandelaTable table, Quantity quantity, LuminousOpening opening)
      implements Outcome {}

  /**
   * The file cannot be used.
   *
   * @param line where, from 1
   * @param reason what is wrong and what to do
   */
  public record Refused(int line, String reason) implements Outcome {}

  /** Reads a file's text; whatever stands in it ends in one of the two outcomes. */
  public static Outcome read(String text) {
    if (text.length() > MOST_CHARACTERS) {
      return new Refused(
          1,
          "Text ("
              + text.length()
              + " characters) must be at most "
              + MOST_CHARACTERS
              + ". Maybe it is no photometric file?");
    }
    return FileHead.read(FileLines.of(text));
  }
}
