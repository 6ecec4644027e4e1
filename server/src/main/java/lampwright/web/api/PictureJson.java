package lampwright.web.api;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.unit.Millimetres;
import lampwright.picture.ExifFacts;
import lampwright.picture.ToneStatistics;
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
    StatisticsJson statistics) {

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
        StatisticsJson.of(picture.statistics()));
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

  /**
   * Its tones and colours.
   *
   * @param lightness percentiles of L*, by name: p2, p10 and so on
   */
  record StatisticsJson(
      Map<String, Double> lightness,
      String key,
      double rmsContrast,
      double spreadStops,
      @JsonProperty("warmth_b") double warmth,
      List<ColourJson> colours) {

    static StatisticsJson of(ToneStatistics statistics) {
      Map<String, Double> lightness = new LinkedHashMap<>();
      for (int i = 0; i < ToneStatistics.PERCENTS.size(); i++) {
        lightness.put("p" + ToneStatistics.PERCENTS.get(i), statistics.lightness().get(i));
      }
      return new StatisticsJson(
          lightness,
          statistics.key().name().toLowerCase(Locale.ROOT),
          statistics.rmsContrast(),
          statistics.spread().value(),
          statistics.warmth(),
          statistics.colours().stream()
              .map(colour -> new ColourJson(colour.hex(), colour.share()))
              .toList());
    }
  }

  /** One of its main colours. */
  record ColourJson(String hex, double share) {}

  /** Where the camera was. */
  record PlaceJson(double latitudeDeg, double longitudeDeg) {

    static PlaceJson of(ExifFacts.Place place) {
      return new PlaceJson(place.latitude().value(), place.longitude().value());
    }
  }
}
