package lampwright.store;

import static lampwright.schema.generated.Tables.SETUP;
import static lampwright.schema.generated.Tables.SETUP_SIGNATURE;
import static org.jooq.impl.DSL.row;

import java.util.List;
import java.util.Optional;
import lampwright.document.Json;
import lampwright.document.Reading;
import lampwright.people.StudioId;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.setup.signature.Signature;
import org.jooq.DSLContext;
import org.jooq.JSONB;
import org.jooq.Record;

/**
 * The signatures of the revisions of setups, of the studio that the transaction is in. They are
 * computed here, from the document that is being written, as a column would be that the database
 * computes itself: so no way of writing a revision can forget it.
 */
public final class Signatures {

  private final StudioTransaction in;

  public Signatures(StudioTransaction in) {
    this.in = in;
  }

  /** A revision without a signature of this version of the computation. */
  public record Unsigned(StudioId studio, SetupId setup, int revision, String document) {}

  /**
   * What is stored for a revision; empty where there is none, or that of another version of the
   * computation: then {@link Signature#of} the document takes its place.
   */
  public Optional<Signature> find(SetupId setup, int revision) {
    return in.sql()
        .select(SETUP_SIGNATURE.VERSION, SETUP_SIGNATURE.SIGNATURE)
        .from(SETUP_SIGNATURE)
        .where(SETUP_SIGNATURE.STUDIO_ID.eq(in.studio().text()))
        .and(SETUP_SIGNATURE.SETUP_ID.eq(setup.text()))
        .and(SETUP_SIGNATURE.REVISION.eq(revision))
        .fetchOptional()
        .flatMap(Signatures::stored);
  }

  /**
   * Keeps the signature of a revision that is there already. A document that is no setup has none.
   */
  public static void keep(UpkeepTransaction in, Unsigned unsigned) {
    setup(unsigned.document())
        .ifPresent(
            document ->
                keep(in.sql(), in.studio(), unsigned.setup(), unsigned.revision(), document));
  }

  /** The same in the transaction that writes the revision. */
  void keep(SetupId setup, int revision, String document) {
    setup(document).ifPresent(read -> keep(setup, revision, read));
  }

  private static Optional<SetupDocument> setup(String document) {
    return SetupDocument.FORM.read(Json.parse(document))
            instanceof Reading.Sound<SetupDocument>(SetupDocument value)
        ? Optional.of(value)
        : Optional.empty();
  }

  /** The same of a document that was read. */
  void keep(SetupId setup, int revision, SetupDocument document) {
    keep(in.sql(), in.studio(), setup, revision, document);
  }

  private static void keep(
      DSLContext sql, StudioId studio, SetupId setup, int revision, SetupDocument document) {
    JSONB signature = JSONB.jsonb(Json.print(Signature.FORM.write(Signature.of(document))));
    sql.insertInto(SETUP_SIGNATURE)
        .set(SETUP_SIGNATURE.STUDIO_ID, studio.text())
        .set(SETUP_SIGNATURE.SETUP_ID, setup.text())
        .set(SETUP_SIGNATURE.REVISION, revision)
        .set(SETUP_SIGNATURE.VERSION, Signature.VERSION)
        .set(SETUP_SIGNATURE.SIGNATURE, signature)
        .onConflict(SETUP_SIGNATURE.STUDIO_ID, SETUP_SIGNATURE.SETUP_ID, SETUP_SIGNATURE.REVISION)
        .doUpdate()
        .set(SETUP_SIGNATURE.VERSION, Signature.VERSION)
        .set(SETUP_SIGNATURE.SIGNATURE, signature)
        .execute();
  }

  /** At most so many living setups of all studios whose current revision is to be signed anew. */
  public static List<Unsigned> listUnsigned(
      IndexerTransaction in, Optional<Unsigned> after, int limit) {
    return in.sql()
        .select(SETUP.STUDIO_ID, SETUP.ID, SETUP.REVISION, SETUP.DOCUMENT)
        .from(SETUP)
        .leftJoin(SETUP_SIGNATURE)
        .on(SETUP_SIGNATURE.STUDIO_ID.eq(SETUP.STUDIO_ID))
        .and(SETUP_SIGNATURE.SETUP_ID.eq(SETUP.ID))
        .and(SETUP_SIGNATURE.REVISION.eq(SETUP.REVISION))
        .where(SETUP.DELETED_AT.isNull())
        .and(SETUP_SIGNATURE.VERSION.isDistinctFrom(Signature.VERSION))
        .and(
            row(SETUP.STUDIO_ID, SETUP.ID)
                .greaterThan(
                    after.map(last -> last.studio().text()).orElse(""),
                    after.map(last -> last.setup().text()).orElse("")))
        .orderBy(SETUP.STUDIO_ID, SETUP.ID)
        .limit(limit)
        .fetch(
            found ->
                new Unsigned(
                    new StudioId(found.get(SETUP.STUDIO_ID)),
                    new SetupId(found.get(SETUP.ID)),
                    found.get(SETUP.REVISION),
                    found.get(SETUP.DOCUMENT).data()));
  }

  /** The signature in a row that has the columns of one; they may all be null. */
  static Optional<Signature> stored(Record found) {
    Integer version = found.get(SETUP_SIGNATURE.VERSION);
    if (version == null || version != Signature.VERSION) {
      return Optional.empty();
    }
    return Signature.FORM.read(Json.parse(found.get(SETUP_SIGNATURE.SIGNATURE).data()))
            instanceof Reading.Sound<Signature> read
        ? Optional.of(read.value())
        : Optional.empty();
  }
}
