package lampwright.web.api;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.unit.Millimetres;
import lampwright.picture.ExifFacts;
import lampwright.setup.PictureNote;
import lampwright.tasks.KeptPicture;

/** A picture as answers tell it. Where it was taken is told only where its file may show that. */
record PictureJson(
    String id,
    String setup,
    int revision,
    Instant changedAt,
    String changedBy,
    Object document,
    String format,
    String sha256,
    long bytes,
    int width,
    int height,
    ExifJson exif,
    Object statistics) {

  static PictureJson of(KeptPicture picture) {
    return new PictureJson(
        picture.id().text(),
        picture.setup().text(),
        picture.revision(),
        picture.changedAt(),
        picture.changedBy(),
        PictureNote.FORM.writeObject(picture.note()),
        picture.format().name().toLowerCase(Locale.ROOT),
        picture.sha256(),
        picture.bytes(),
        picture.width(),
        picture.height(),
        ExifJson.of(picture.exif(), picture.note().mayShowPlace()),
        picture.statistics());
  }

  /**
   * What the file says.
   *
   * @param time as it is printed on cameras
   * @param takenAt on the camera's own clock
   */
  record ExifJson(
      @JsonProperty("f_number") Optional<Double> fNumber,
      Optional<String> time,
      Optional<Double> iso,
      Optional<Double> focalLengthMm,
      Optional<String> takenAt,
      Optional<String> utcOffset,
      boolean hasPlace,
      Optional<PlaceJson> place) {

    static ExifJson of(ExifFacts exif, boolean mayShowPlace) {
      return new ExifJson(
          exif.fNumber().map(FNumber::value),
          exif.time().map(Object::toString),
          exif.iso().map(Iso::value),
          exif.focalLength().map(Millimetres::value),
          exif.takenAt().map(Object::toString),
          exif.utcOffset().map(Object::toString),
          exif.place().isPresent(),
          exif.place().filter(place -> mayShowPlace).map(PlaceJson::of));
    }
  }

  /** Where the camera was. */
  record PlaceJson(double latitudeDeg, double longitudeDeg) {

    static PlaceJson of(ExifFacts.Place place) {
      return new PlaceJson(place.latitude().value(), place.longitude().value());
    }
  }
}
