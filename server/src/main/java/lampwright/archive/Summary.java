package lampwright.archive;

import static lampwright.document.Field.list;
import static lampwright.document.Field.required;

import java.util.List;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;

/**
 * What an archive says of itself, in {@code data/archive.json}. When and where it was made is told
 * beside the payload, so that the same rows have the same payload wherever they are.
 *
 * @param parents what the setup was made from, by name, where that is not in the archive
 * @param missingPictures the hashes of files that pictures have lost
 */
public record Summary(
    What what,
    List<Count> counts,
    List<Author> authors,
    List<Named> parents,
    List<String> missingPictures) {

  /** The only format that there is yet. */
  static final int FORMAT = 1;

  private static final int MOST = 1_000_000;
  private static final int LONGEST_NAME = 200;
  private static final int MOST_AUTHORS = 10_000;
  private static final int LONGEST_TITLE = 1_000;

  /** What an archive is of. */
  public enum What {
    STUDIO,
    SETUP
  }

  /** How many there are of a kind, deleted ones too. */
  public record Count(ArchiveKind kind, int things, int revisions) {

    private static final Field<Count, ArchiveKind> KIND =
        required("kind", Forms.choice(ArchiveKind.values()), Count::kind, "The kind.");
    private static final Field<Count, Integer> THINGS =
        required("things", Forms.count(0, MOST), Count::things, "How many things.");
    private static final Field<Count, Integer> REVISIONS =
        required("revisions", Forms.count(0, MOST), Count::revisions, "How many revisions.");

    static final ObjectForm<Count> FORM =
        ObjectForm.of(
            "archive_count",
            "How many there are of a kind.",
            values -> new Count(values.get(KIND), values.get(THINGS), values.get(REVISIONS)),
            List.of(KIND, THINGS, REVISIONS));
  }

  /**
   * Who wrote something that is in the archive.
   *
   * @param key what its lines call them
   */
  public record Author(String key, String name) {

    private static final Field<Author, String> KEY =
        required("key", Moments.ID, Author::key, "What the lines call them.");
    private static final Field<Author, String> NAME =
        required("name", AnyText.upTo(LONGEST_NAME), Author::name, "Their name.");

    static final ObjectForm<Author> FORM =
        ObjectForm.<Author>of(
                "archive_author",
                "Who wrote something.",
                values -> new Author(values.get(KEY), values.get(NAME)),
                List.of(KEY, NAME))
            .checked(
                (author, at, problems) -> {
                  if (author.name().isEmpty()) {
                    problems.add(at.field("name"), "Name must not be empty.");
                  }
                });
  }

  /** A setup of which only the name is in the archive. */
  public record Named(String id, int revision, String title) {

    private static final Field<Named, String> ID =
        required("id", Moments.ID, Named::id, "The setup's id.");
    private static final Field<Named, Integer> REVISION =
        required("revision", Forms.count(1, MOST), Named::revision, "Its revision.");
    private static final Field<Named, String> TITLE =
        required("title", AnyText.upTo(LONGEST_TITLE), Named::title, "Its title then.");

    static final ObjectForm<Named> FORM =
        ObjectForm.of(
            "archive_parent",
            "A setup of which only the name is here.",
            values -> new Named(values.get(ID), values.get(REVISION), values.get(TITLE)),
            List.of(ID, REVISION, TITLE));
  }

  private static final Field<Summary, Integer> FORMAT_FIELD =
      required("format", Forms.count(FORMAT, FORMAT), summary -> FORMAT, "The format's number.");
  private static final Field<Summary, What> WHAT =
      required("what", Forms.choice(What.values()), Summary::what, "A studio or one setup.");
  private static final Field<Summary, List<Count>> COUNTS =
      list("counts", Count.FORM, 20, Summary::counts, "How many there are of each kind.");
  private static final Field<Summary, List<Author>> AUTHORS =
      list("authors", Author.FORM, MOST_AUTHORS, Summary::authors, "Who wrote what is here.");
  private static final Field<Summary, List<Named>> PARENTS =
      list("parents", Named.FORM, 1, Summary::parents, "What the setup was made from.");
  private static final Field<Summary, List<String>> MISSING =
      list(
          "missing_pictures",
          PictureFile.HASH,
          MOST,
          Summary::missingPictures,
          "Files that pictures have lost.");

  /** The summary as a document. */
  public static final ObjectForm<Summary> FORM =
      ObjectForm.of(
          "archive",
          "What an archive says of itself.",
          values ->
              new Summary(
                  values.get(WHAT),
                  values.get(COUNTS),
                  values.get(AUTHORS),
                  values.get(PARENTS),
                  values.get(MISSING)),
          List.of(FORMAT_FIELD, WHAT, COUNTS, AUTHORS, PARENTS, MISSING));
}
