package lampwright.store;

import static lampwright.schema.generated.Tables.LOCATION;
import static lampwright.schema.generated.Tables.PICTURE;
import static lampwright.schema.generated.Tables.SETUP;

import java.util.Optional;
import lampwright.engine.sun.PlaceOnEarth;
import lampwright.engine.unit.Degrees;
import lampwright.setup.PictureKind;
import org.jooq.Condition;
import org.jooq.Field;
import org.jooq.JSONB;
import org.jooq.Record;
import org.jooq.impl.DSL;

/** What is not of a setup's own row but is indexed with it, as columns of a query of setups. */
final class Beside {

  /**
   * The tones of the finished picture that was changed last, the one of {@link Pictures#finals}.
   * One for each setup by the index of pictures: joined and sorted, all pictures of all studios
   * would be read before the first setup.
   */
  static final Field<JSONB> TONES =
      DSL.field(
              DSL.select(PICTURE.STATISTICS)
                  .from(PICTURE)
                  .where(PICTURE.STUDIO_ID.eq(SETUP.STUDIO_ID))
                  .and(PICTURE.SETUP_ID.eq(SETUP.ID))
                  .and(PICTURE.KIND.eq(DSL.inline(PictureKind.FINAL.word())))
                  .and(PICTURE.DELETED_AT.isNull())
                  .orderBy(PICTURE.CHANGED_AT.desc(), PICTURE.ID.desc())
                  .limit(DSL.inline(1)))
          .as("tones");

  private Beside() {}

  /** Joins the living location that a setup names. */
  static Condition isLocation() {
    return LOCATION
        .STUDIO_ID
        .eq(SETUP.STUDIO_ID)
        .and(LOCATION.ID.eq(SETUP.LOCATION_ID))
        .and(LOCATION.DELETED_AT.isNull());
  }

  static Optional<String> tones(Record found) {
    return Optional.ofNullable(found.get(TONES)).map(JSONB::data);
  }

  static Optional<PlaceOnEarth> location(Record found) {
    Double latitude = found.get(LOCATION.LATITUDE_DEG);
    Double longitude = found.get(LOCATION.LONGITUDE_DEG);
    return latitude == null || longitude == null
        ? Optional.empty()
        : Optional.of(PlaceOnEarth.of(new Degrees(latitude), new Degrees(longitude)));
  }
}
