package lampwright.learning.drill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.unit.Kelvin;
import lampwright.engine.unit.Mired;
import lampwright.gear.Gel;
import lampwright.gear.Several;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.Ambient;
import lampwright.setup.Light;
import lampwright.setup.figures.ColourFigures;

/** The gel, in mired, that brings a flash to a colour. */
final class GelShift implements Maker {

  /** Lamps, evening sun, daylight, shade: colours that a photographer meets. */
  private static final List<Double> WISHES = List.of(2900.0, 3200.0, 4000.0, 4800.0, 7000.0);

  private static final double LEAST_SHIFT = 25;

  /** What the gels of the trade reach, two together. */
  private static final double MOST_SHIFT = 220;

  private static final int OPTIONS = 4;

  @Override
  public Optional<Drill> make(Material material, Dice dice) {
    Light light = dice.pick(material.setup().lights());
    Kelvin ofHead = fifties(light.head().temperature().orElse(ColourFigures.USUAL_FLASH).value());
    return dice.flip() ? shift(material, light, ofHead, dice) : gel(material, light, ofHead, dice);
  }

  private static Optional<Drill> shift(Material material, Light light, Kelvin ofHead, Dice dice) {
    List<Double> wishes = new ArrayList<>(WISHES);
    material
        .setup()
        .ambient()
        .flatMap(Ambient::temperature)
        .ifPresent(kelvin -> wishes.add(kelvin.value()));
    Kelvin wished = fifties(dice.pick(wishes));
    double shift = wished.toMired().minus(ofHead.toMired()).value();
    if (Math.abs(shift) < LEAST_SHIFT || Math.abs(shift) > MOST_SHIFT) {
      return Optional.empty();
    }
    return Optional.of(
        new Drill(
            DrillKind.GEL_SHIFT,
            List.of(given(light, ofHead)),
            Said.of("drilling.gelShift.question.shift", Filling.number(wished.value(), 0)),
            Fair.number(
                Measure.SHIFT_MIRED,
                shift,
                new Answer.Slip(-shift, Said.of("drilling.gelShift.slip.sign")),
                new Answer.Slip(
                    ofHead.value() - wished.value(), Said.of("drilling.gelShift.slip.kelvin"))),
            List.of(why(ofHead, wished, shift)),
            List.of()));
  }

  private static Optional<Drill> gel(Material material, Light light, Kelvin ofHead, Dice dice) {
    List<Gel> apart = new ArrayList<>();
    for (Several<Gel> several : material.kit().map(kit -> kit.gels()).orElse(List.of())) {
      Gel gel = several.item();
      if (apart.stream().allMatch(other -> isApart(gel, other))
          && Math.abs(gel.shift().value()) >= LEAST_SHIFT) {
        apart.add(gel);
      }
    }
    if (apart.size() < OPTIONS) {
      return Optional.empty();
    }
    List<Gel> options = dice.shuffled(apart).subList(0, OPTIONS);
    Gel right = dice.pick(options);
    double reciprocal = ofHead.toMired().plus(right.shift()).value();
    if (reciprocal <= 0) {
      return Optional.empty();
    }
    Kelvin wished = fifties(new Mired(reciprocal).toKelvin().value());
    double shift = wished.toMired().minus(ofHead.toMired()).value();
    if (Math.abs(shift - right.shift().value()) > ColourFigures.JUST_SEEN.value()) {
      return Optional.empty();
    }
    return Optional.of(
        new Drill(
            DrillKind.GEL_SHIFT,
            List.of(given(light, ofHead)),
            Said.of("drilling.gelShift.question.gel", Filling.number(wished.value(), 0)),
            Choosing.among(
                options,
                right,
                option ->
                    Said.of(
                        "drilling.gelShift.option",
                        Filling.text(option.name()),
                        signed(option.shift().value())),
                option ->
                    option.shift().value() * shift < 0
                        ? Optional.of(Said.of("drilling.gelShift.slip.sign"))
                        : Optional.of(
                            Said.of(
                                "drilling.gelShift.slip.size", signed(option.shift().value())))),
            List.of(why(ofHead, wished, shift)),
            List.of()));
  }

  private static boolean isApart(Gel one, Gel other) {
    return Math.abs(one.shift().minus(other.shift()).value()) >= LEAST_SHIFT;
  }

  private static Said given(Light light, Kelvin ofHead) {
    return Said.of(
        "drilling.gelShift.given",
        Filling.text(Fair.quoted(light)),
        Filling.number(ofHead.value(), 0));
  }

  private static Said why(Kelvin ofHead, Kelvin wished, double shift) {
    return Said.of(
        "drilling.gelShift.why",
        Filling.number(wished.toMired().value(), 0),
        Filling.number(ofHead.toMired().value(), 0),
        signed(shift));
  }

  private static Filling signed(double mired) {
    return Filling.shown((mired < 0 ? "−" : "+") + Math.round(Math.abs(mired)));
  }

  private static Kelvin fifties(double kelvin) {
    return new Kelvin(Math.rint(kelvin / 50) * 50);
  }
}
