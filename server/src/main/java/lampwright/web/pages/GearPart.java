package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One field of a piece of gear in a form.
 *
 * @param path of it in the piece's document: {@code output}, {@code f_number}
 * @param usual what stands for it where the document says nothing; may be empty
 * @param choices of a choice, in order, as documents write them
 * @param of the choice that it goes with; absent where it always stands
 */
record GearPart(List<String> path, Kind kind, String usual, List<String> choices, Optional<Of> of) {

  GearPart {
    path = List.copyOf(path);
    choices = List.copyOf(choices);
  }

  /** How it is typed. */
  enum Kind {
    LINE,
    PARAGRAPH,
    NUMBER,
    /** A length that a tape shows: 1.2 m, 3′ 11″. */
    LENGTH,
    /** A number of metres or feet, such as a guide number. */
    REACH,
    CHOICE,
    FLAG
  }

  /** That another field has a value: a guide number goes with a {@code kind} of that name. */
  record Of(List<String> path, String value) {}

  static GearPart of(Kind kind, String... path) {
    return new GearPart(List.of(path), kind, "", List.of(), Optional.empty());
  }

  static GearPart choice(List<String> path, String... choices) {
    return new GearPart(path, Kind.CHOICE, choices[0], List.of(choices), Optional.empty());
  }

  GearPart usually(String value) {
    return new GearPart(path, kind, value, choices, of);
  }

  /** The same, only where the field of that name beside it has a value. */
  GearPart where(String field, String value) {
    List<String> beside = new ArrayList<>(path.subList(0, path.size() - 1));
    beside.add(field);
    return new GearPart(path, kind, usual, choices, Optional.of(new Of(beside, value)));
  }

  /** Its field in the form. */
  String id() {
    return id(path);
  }

  static String id(List<String> path) {
    return "piece-" + String.join("-", path);
  }

  /** What its label's phrase is called. */
  String key() {
    return "studio.gear.field." + String.join("_", path);
  }

  /** Whether a problem at a place in the piece is at it. */
  boolean isAt(List<String> at) {
    int common = Math.min(path.size(), at.size());
    return common > 0 && path.subList(0, common).equals(at.subList(0, common));
  }
}
