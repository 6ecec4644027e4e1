package lampwright.archive;

/**
 * One thing that is wrong with an archive.
 *
 * @param file within the bag; empty where the archive as a whole is wrong
 * @param line from 1; 0 where it is about the whole file
 * @param pointer within the line's JSON (RFC 6901); empty where it is about the whole line
 * @param message what is wrong, in a sentence
 */
public record Fault(String file, int line, String pointer, String message) {

  static Fault ofArchive(String message) {
    return new Fault("", 0, "", message);
  }

  static Fault ofFile(String file, String message) {
    return new Fault(file, 0, "", message);
  }

  static Fault ofLine(String file, int line, String message) {
    return new Fault(file, line, "", message);
  }
}
