package lampwright.web.pages;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lampwright.language.LengthUnit;
import lampwright.search.Instead;
import lampwright.search.filter.Filter;
import lampwright.search.filter.FilterWriter;
import lampwright.search.filter.Trait;
import lampwright.wording.Wording;

/** What setups are filtered by, in a person's language and units. */
record FilterWords(Wording words) {

  /** What stands above a trait's values: "Ratio, stops". */
  String heading(Trait trait) {
    String unit = unit(trait);
    return label(trait) + (unit.isEmpty() ? "" : ", " + unit);
  }

  private String label(Trait trait) {
    return words.say("finding.trait." + trait.name('_'));
  }

  private String word(Trait trait) {
    return words.say("finding.word." + trait.name('_'));
  }

  private String unit(Trait trait) {
    return switch (trait) {
      case RATIO, AMBIENT -> words.stopsUnit();
      case MODIFIER -> isInFeet(trait) ? "" : trait.unit();
      default -> trait.unit();
    };
  }

  private boolean isInFeet(Trait trait) {
    return trait == Trait.MODIFIER && words.notation().lengths() == LengthUnit.FEET;
  }

  /** A value as it is read; what people wrote themselves stays as it is. */
  String value(Trait trait, String value) {
    if (trait == Trait.AUTHOR) {
      return new WhoWords(words).who(value);
    }
    String key =
        "finding.value."
            + trait.name('_')
            + "."
            + value.toLowerCase(Locale.ROOT).replaceAll("[^a-z]", "_");
    return words.notation().phrases().keys().contains(key) ? words.say(key) : value;
  }

  /** A filter by itself: "Mood: lonely or cold", "2 to 4 lights". */
  String of(Filter filter) {
    return switch (filter) {
      case Filter.OneOf one ->
          words.say("finding.filter.oneOf", label(one.trait()), any(one.trait(), one.words()));
      case Filter.NoneOf none ->
          words.say("finding.filter.noneOf", label(none.trait()), any(none.trait(), none.words()));
      case Filter.Range range when range.trait() == Trait.LIGHTS -> lights(range);
      case Filter.Range range ->
          words.say("finding.filter.range", label(range.trait()), withUnit(range));
      case Filter.Near near -> words.say("finding.filter.near", number(near.km()), spot(near));
      case Filter.Buildable buildable -> buildable("finding.filter.buildable", buildable);
    };
  }

  /** A range under its trait's heading: "−2 to −1", "below 25". */
  String choice(Filter.Range range) {
    boolean isStep = range.from().isPresent() && range.to().isPresent() && !range.isExact();
    return isStep ? between(range) : bounds(range);
  }

  /** What there is none of: "No setup within 20 km of Old pier". */
  String lack(Instead instead) {
    if (instead.lacking().isEmpty()) {
      return words.say("finding.lack.words", instead.asked());
    }
    if (instead.isOfManyTraits()) {
      return words.say("finding.lack.many");
    }
    return words.say(
        "finding.lack.filters",
        instead.lacking().stream()
            .map(this::phrase)
            .reduce((one, other) -> words.say("finding.and", one, other))
            .orElse(""));
  }

  /** What there is in its place: "within 45 km". */
  String offer(Instead instead) {
    if (instead.lacking().isEmpty()) {
      return words.say("finding.offer.withoutWords");
    }
    Optional<Filter> offered = instead.offered();
    if (offered.isEmpty()) {
      return words.say(
          instead.isOfManyTraits() ? "finding.offer.withoutAny" : "finding.offer.withoutMark");
    }
    return switch (offered.get()) {
      case Filter.Near near -> words.say("finding.offer.near", number(near.km()));
      case Filter.Buildable buildable ->
          words.say("finding.offer.buildable", stops(buildable.stops()));
      case Filter.Range range when range.isExact() && range.trait() == Trait.LIGHTS ->
          words.say("finding.offer.lights", bounds(range));
      case Filter filter -> phrase(filter);
    };
  }

  /** A filter in a sentence about setups: "with 2 lights". */
  private String phrase(Filter filter) {
    return switch (filter) {
      case Filter.OneOf one ->
          words.say("finding.phrase.oneOf", word(one.trait()), any(one.trait(), one.words()));
      case Filter.NoneOf none ->
          words.say("finding.phrase.noneOf", word(none.trait()), any(none.trait(), none.words()));
      case Filter.Range range when range.trait() == Trait.LIGHTS ->
          words.say("finding.phrase.lights", lights(range));
      case Filter.Range range ->
          words.say("finding.phrase.range", word(range.trait()), withUnit(range));
      case Filter.Near near -> words.say("finding.phrase.near", number(near.km()), spot(near));
      case Filter.Buildable buildable -> buildable("finding.phrase.buildable", buildable);
    };
  }

  private String buildable(String key, Filter.Buildable buildable) {
    return buildable.stops() == Filter.Buildable.MOST_STOPS
        ? words.say(key + "However", buildable.kit())
        : words.say(key, buildable.kit(), stops(buildable.stops()));
  }

  private String any(Trait trait, List<String> values) {
    return values.stream()
        .map(value -> value(trait, value))
        .reduce((one, other) -> words.say("finding.or", one, other))
        .orElse("");
  }

  private String lights(Filter.Range range) {
    boolean isOne = range.isExact() && range.least() == 1;
    return words.count("finding.lights", isOne ? 1 : 2, bounds(range));
  }

  private String withUnit(Filter.Range range) {
    String unit = unit(range.trait());
    return bounds(range) + (unit.isEmpty() || unit.equals("°") ? unit : " " + unit);
  }

  private String bounds(Filter.Range range) {
    if (range.isExact()) {
      return marked(range, range.from().orElseThrow());
    }
    if (range.from().filter(Filter.Bound::included).isPresent()
        && range.to().filter(Filter.Bound::included).isPresent()) {
      return between(range);
    }
    String from =
        range
            .from()
            .map(
                bound ->
                    words.say(
                        bound.included() ? "finding.bounds.from" : "finding.bounds.above",
                        marked(range, bound)))
            .orElse("");
    String to =
        range
            .to()
            .map(
                bound ->
                    words.say(
                        bound.included() ? "finding.bounds.upTo" : "finding.bounds.below",
                        marked(range, bound)))
            .orElse("");
    return (from + " " + to).strip();
  }

  private String between(Filter.Range range) {
    return words.say(
        "finding.bounds.between",
        marked(range, range.from().orElseThrow()),
        marked(range, range.to().orElseThrow()));
  }

  private String marked(Filter.Range range, Filter.Bound bound) {
    if (isInFeet(range.trait())) {
      return words.notation().tape(bound.number());
    }
    String mark = range.trait() == Trait.APERTURE ? "f/" : "";
    return mark + number(bound.number());
  }

  private String number(double number) {
    return words.notation().written(FilterWriter.number(number));
  }

  private static String spot(Filter.Near near) {
    return switch (near.spot()) {
      case Filter.Spot.At at -> FilterWriter.spotForPeople(at);
      case Filter.Spot.Location location -> location.name();
    };
  }

  private String stops(double stops) {
    boolean isOne = stops > 0 && stops <= 1;
    return words.count(
        "wording.stops",
        isOne ? 1 : 2,
        stops == Filter.Buildable.USUAL_STOPS ? "⅓" : number(stops));
  }
}
