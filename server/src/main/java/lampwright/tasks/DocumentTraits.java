package lampwright.tasks;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lampwright.engine.sun.PlaceOnEarth;
import lampwright.gear.Modifier;
import lampwright.search.filter.Trait;
import lampwright.search.filter.Traits;
import lampwright.setup.Light;
import lampwright.setup.Occasion;
import lampwright.setup.SetupDocument;

/** What a setup's document itself says that setups are filtered by. */
final class DocumentTraits {

  private DocumentTraits() {}

  /**
   * Gathers it.
   *
   * @param location where the location is that the setup names; used where its own place has no
   *     point
   */
  static Traits.Builder of(SetupDocument setup, Optional<PlaceOnEarth> location) {
    Traits.Builder traits = Traits.builder();
    traits.words(Trait.GEAR, modifierKinds(setup));
    setup.lights().stream()
        .map(light -> light.modifierOrStandard().face().largestDimension().value())
        .max(Double::compare)
        .filter(largest -> largest > 0)
        .ifPresent(largest -> traits.number(Trait.MODIFIER, largest));
    // As they are printed, not the exact values that the marks stand for.
    setup
        .exposure()
        .toDocument()
        .forEach(
            (name, value) -> {
              if (value instanceof Number number) {
                exposure(name).ifPresent(trait -> traits.number(trait, number.doubleValue()));
              }
            });
    setup
        .occasion()
        .map(occasion -> located(occasion, location))
        .ifPresent(occasion -> addOccasion(traits, occasion));
    return traits;
  }

  private static Optional<Trait> exposure(String name) {
    return switch (name) {
      case "f_number" -> Optional.of(Trait.APERTURE);
      case "iso" -> Optional.of(Trait.ISO);
      default -> Optional.empty();
    };
  }

  /** So that "softbox" finds every one of them, whatever the studio calls it. */
  private static List<String> modifierKinds(SetupDocument setup) {
    return setup.lights().stream()
        .map(Light::modifierOrStandard)
        .map(Modifier::kind)
        .map(DocumentTraits::word)
        .distinct()
        .toList();
  }

  /** A kind of modifier in plain words. */
  static String word(Modifier.Kind kind) {
    return kind.name().replace('_', ' ').toLowerCase(Locale.ROOT);
  }

  private static Occasion located(Occasion occasion, Optional<PlaceOnEarth> location) {
    if (occasion.place().isEmpty()
        || occasion.place().get().latitude().isPresent()
        || location.isEmpty()) {
      return occasion;
    }
    Occasion.Place own = occasion.place().get();
    Occasion.Place place =
        new Occasion.Place(
            own.name(),
            own.kind(),
            own.indoors(),
            location.map(PlaceOnEarth::latitude),
            location.map(PlaceOnEarth::longitude),
            own.location());
    return new Occasion(
        Optional.of(place),
        occasion.date(),
        occasion.time(),
        occasion.utcOffset(),
        occasion.weather(),
        occasion.wind());
  }

  private static void addOccasion(Traits.Builder traits, Occasion occasion) {
    occasion
        .place()
        .ifPresent(
            place -> {
              place
                  .indoors()
                  .ifPresent(in -> traits.words(Trait.INSIDE, in ? "indoors" : "outdoors"));
              place
                  .latitude()
                  .ifPresent(
                      latitude ->
                          place
                              .longitude()
                              .ifPresent(
                                  longitude -> traits.point(latitude.value(), longitude.value())));
            });
    occasion.date().ifPresent(date -> traits.number(Trait.YEAR, date.getYear()));
    Seasons.of(occasion).ifPresent(season -> traits.words(Trait.SEASON, season));
    TimesOfDay.of(occasion).ifPresent(time -> traits.words(Trait.TIME_OF_DAY, time));
  }
}
