package lampwright.tasks;

import java.util.Optional;
import lampwright.engine.unit.Degrees;
import lampwright.setup.Occasion;

/**
 * The season of an occasion, by whole months, as weather services count them (World Meteorological
 * Organization, Guide to Climatological Practices, WMO-No. 100: December to February is winter in
 * the north, summer in the south).
 */
final class Seasons {

  private Seasons() {}

  /** The season; none where the day or the hemisphere is not known. */
  static Optional<String> of(Occasion occasion) {
    Optional<Degrees> latitude = occasion.place().flatMap(Occasion.Place::latitude);
    return occasion
        .date()
        .flatMap(date -> latitude.map(where -> of(date.getMonthValue(), where.value() < 0)));
  }

  private static String of(int month, boolean south) {
    // Half a year on, the south has what the north has now.
    int northern = south ? (month + 5) % 12 + 1 : month;
    return switch (northern) {
      case 12, 1, 2 -> "winter";
      case 3, 4, 5 -> "spring";
      case 6, 7, 8 -> "summer";
      default -> "autumn";
    };
  }
}
