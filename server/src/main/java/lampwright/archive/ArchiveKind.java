package lampwright.archive;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lampwright.document.Form;
import lampwright.document.ObjectForm;
import lampwright.document.Pointer;
import lampwright.document.Problems;
import lampwright.document.Reading;
import lampwright.gear.stock.GearItem;
import lampwright.gear.stock.WrittenKit;
import lampwright.learning.trail.Trail;
import lampwright.place.Location;
import lampwright.setup.PictureNote;
import lampwright.setup.SetupDocument;
import lampwright.setup.notes.Note;
import lampwright.setup.takes.Take;

/**
 * The kinds of thing that an archive holds, in the order in which they come in: what is named by
 * others comes before them. Each has a file of its things and one of all their revisions.
 */
public enum ArchiveKind {
  GEAR,
  KITS,
  LOCATIONS,
  SETUPS,
  PICTURES,
  TAKES,
  NOTES,
  TRAILS;

  /** The kinds of things that hang on a setup. */
  static final List<ArchiveKind> OF_A_SETUP = List.of(PICTURES, TAKES, NOTES);

  /** Whether an archive may lack its files: there were archives before there was the kind. */
  boolean mayBeMissing() {
    return this == TRAILS;
  }

  /** What the things are called, as addresses and files name them. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The file of the things, within the bag. */
  public String thingsFile() {
    return Bag.PAYLOAD + word() + ".jsonl";
  }

  /** The file of their revisions, within the bag. */
  public String versionsFile() {
    return Bag.PAYLOAD + word() + "_revisions.jsonl";
  }

  /** How a thing's line is written. */
  public ObjectForm<Thing> things() {
    return switch (this) {
      case GEAR, KITS, LOCATIONS, TRAILS -> Thing.FORM;
      case SETUPS -> Thing.OF_SETUPS;
      case PICTURES -> Thing.OF_PICTURES;
      case TAKES -> Thing.OF_TAKES;
      case NOTES -> Thing.OF_NOTES;
    };
  }

  /** How a revision's line is written. */
  public ObjectForm<Version> versions() {
    return this == SETUPS ? Version.OF_SETUPS : Version.FORM;
  }

  /** Reads a document of this kind as whoever sends one by hand has it read. */
  Optional<?> readDocument(Object json, Pointer at, Problems problems) {
    return documents().read(json, at, problems);
  }

  /**
   * A document that was found sound, as its record.
   *
   * @throws IllegalStateException where it was not
   */
  public Object typed(Object json) {
    return switch (documents().read(json)) {
      case Reading.Sound<?>(Object value) -> value;
      case Reading.Faulty<?> faulty ->
          throw new IllegalStateException("A checked document is faulty: " + faulty.problems());
    };
  }

  /**
   * What a thing is called by what its document says.
   *
   * @param document of this kind
   */
  public String title(Object document, Thing thing) {
    return switch (document) {
      case GearItem gear -> gear.name();
      case WrittenKit kit -> kit.name();
      case Location location -> location.name();
      case SetupDocument setup -> setup.title();
      case PictureNote picture -> picture.kind().word();
      case Take take -> take.label(thing.number().orElseThrow());
      case Trail trail -> trail.name();
      default -> "Note";
    };
  }

  private Form<?> documents() {
    return switch (this) {
      case GEAR -> GearItem.FORM;
      case KITS -> WrittenKit.FORM;
      case LOCATIONS -> Location.FORM;
      case SETUPS -> SetupDocument.FORM;
      case PICTURES -> PictureNote.FORM;
      case TAKES -> Take.FORM;
      case NOTES -> Note.FORM;
      case TRAILS -> Trail.FORM;
    };
  }
}
