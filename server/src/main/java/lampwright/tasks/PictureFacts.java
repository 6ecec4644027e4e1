package lampwright.tasks;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import lampwright.document.Json;
import lampwright.engine.colour.Key;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Millimetres;
import lampwright.engine.unit.Stops;
import lampwright.picture.ExifFacts;
import lampwright.picture.MainColour;
import lampwright.picture.Orientation;
import lampwright.picture.ToneStatistics;
import lampwright.setup.SetupId;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** What was read of a picture, on its way to the store and back. */
final class PictureFacts {

  private static final Logger LOG = LoggerFactory.getLogger(PictureFacts.class);

  private PictureFacts() {}

  static String print(ExifFacts exif) {
    Map<String, Object> json = new LinkedHashMap<>();
    exif.fNumber().ifPresent(value -> json.put("f_number", value.value()));
    exif.time().ifPresent(value -> json.put("time_s", value.seconds()));
    exif.iso().ifPresent(value -> json.put("iso", value.value()));
    exif.focalLength().ifPresent(value -> json.put("focal_length_mm", value.value()));
    exif.takenAt().ifPresent(value -> json.put("taken_at", value.toString()));
    exif.utcOffset().ifPresent(value -> json.put("utc_offset", value.getId()));
    exif.size()
        .ifPresent(
            size -> {
              json.put("width", (double) size.width());
              json.put("height", (double) size.height());
            });
    json.put("orientation", (double) exif.orientation().tag());
    exif.place()
        .ifPresent(
            place -> {
              json.put("latitude_deg", place.latitude().value());
              json.put("longitude_deg", place.longitude().value());
            });
    return Json.print(json);
  }

  static ExifFacts read(String text) {
    Map<?, ?> json = (Map<?, ?>) Json.parse(text);
    return new ExifFacts(
        number(json, "f_number").map(FNumber::of),
        number(json, "time_s").map(ShutterTime::of),
        number(json, "iso").map(Iso::of),
        number(json, "focal_length_mm").map(Millimetres::of),
        text(json, "taken_at").map(LocalDateTime::parse),
        text(json, "utc_offset").map(ZoneOffset::of),
        both(json, "width", "height")
            .map(both -> new ExifFacts.Size(both.get(0).intValue(), both.get(1).intValue())),
        new Orientation(number(json, "orientation").map(Double::intValue).orElse(1)),
        both(json, "latitude_deg", "longitude_deg")
            .map(both -> new ExifFacts.Place(new Degrees(both.get(0)), new Degrees(both.get(1)))));
  }

  private static Optional<Double> number(Map<?, ?> json, String key) {
    return json.get(key) instanceof Double number ? Optional.of(number) : Optional.empty();
  }

  private static Optional<String> text(Map<?, ?> json, String key) {
    return json.get(key) instanceof String text ? Optional.of(text) : Optional.empty();
  }

  private static Optional<List<Double>> both(Map<?, ?> json, String one, String other) {
    return number(json, one)
        .flatMap(first -> number(json, other).map(second -> List.of(first, second)));
  }

  /**
   * Reads the tones of a picture where some that cannot be read must not keep others away: those
   * are logged and left out.
   *
   * @param setup what the log calls them by
   */
  static Optional<ToneStatistics> findStatistics(String text, SetupId setup) {
    try {
      return Optional.of(readStatistics(text));
    } catch (RuntimeException unreadable) {
      LOG.error("The tones of the picture of setup {} are left out", setup, unreadable);
      return Optional.empty();
    }
  }

  static ToneStatistics readStatistics(String text) {
    Map<?, ?> json = (Map<?, ?>) Json.parse(text);
    Map<?, ?> lightness = (Map<?, ?>) Objects.requireNonNull(json.get("lightness"));
    List<?> colours = (List<?>) Objects.requireNonNull(json.get("colours"));
    return new ToneStatistics(
        ToneStatistics.PERCENTS.stream()
            .map(percent -> number(lightness, "p" + percent).orElseThrow())
            .toList(),
        Key.valueOf(text(json, "key").orElseThrow().toUpperCase(Locale.ROOT)),
        number(json, "rms_contrast").orElseThrow(),
        new Stops(number(json, "spread_stops").orElseThrow()),
        number(json, "warmth_b").orElseThrow(),
        colours.stream().map(colour -> colour((Map<?, ?>) colour)).toList());
  }

  private static MainColour colour(Map<?, ?> json) {
    String hex = text(json, "hex").orElseThrow();
    return new MainColour(
        Integer.parseInt(hex.substring(1), 16), number(json, "share").orElseThrow());
  }

  static String print(ToneStatistics statistics) {
    Map<String, Object> json = new LinkedHashMap<>();
    Map<String, Object> lightness = new LinkedHashMap<>();
    for (int i = 0; i < ToneStatistics.PERCENTS.size(); i++) {
      lightness.put("p" + ToneStatistics.PERCENTS.get(i), statistics.lightness().get(i));
    }
    json.put("lightness", lightness);
    json.put("key", statistics.key().name().toLowerCase(Locale.ROOT));
    json.put("rms_contrast", statistics.rmsContrast());
    json.put("spread_stops", statistics.spread().value());
    json.put("warmth_b", statistics.warmth());
    json.put(
        "colours",
        statistics.colours().stream()
            .map(colour -> Map.of("hex", colour.hex(), "share", colour.share()))
            .toList());
    return Json.print(json);
  }
}
