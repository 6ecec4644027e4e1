package lampwright.wording;

import java.util.stream.Collectors;
import lampwright.engine.unit.Stops;
import lampwright.language.Filling;
import lampwright.language.LengthUnit;
import lampwright.language.Said;
import lampwright.language.StopFraction;

/** Puts sentences that are decided elsewhere into a person's language and units. */
record Spoken(Wording words) {

  String of(Said said) {
    Object[] parts = said.parts().stream().map(this::put).toArray();
    return said.count()
        .map(count -> words.count(said.key(), count, parts))
        .orElseGet(() -> words.say(said.key(), parts));
  }

  private String put(Filling part) {
    return switch (part) {
      case Filling.Text(String text) -> text;
      case Filling.Shown(String text) -> words.notation().written(text);
      case Filling.Fixed(double value, int decimals) -> words.fixed(value, decimals);
      case Filling.Rounded(double value, int decimals) -> words.notation().rounded(value, decimals);
      case Filling.Tape(double lengthM) -> words.notation().tape(lengthM);
      case Filling.Where(String where) -> words.where(where);
      case Filling.InStops(double stops) -> words.stops(stops);
      case Filling.Size(double stops) -> words.notation().size(stops);
      case Filling.Signed(double stops) -> signed(new Stops(stops));
      case Filling.Length(double lengthM, int decimals) -> length(lengthM, decimals);
      case Filling.Inner(Said said) -> of(said);
      case Filling.Briefly(double stops) -> briefly(stops);
      case Filling.SignedBriefly(double stops) ->
          (stops < 0 ? "−" : "+") + briefly(Math.abs(stops));
      case Filling.Listed listed -> words.listed(listed.parts().stream().map(this::put).toList());
      case Filling.Series series ->
          series.parts().stream().map(this::put).collect(Collectors.joining(", "));
    };
  }

  private String signed(Stops stops) {
    return words.isNothing(stops) ? "±" + words.stops(0) : words.change(stops);
  }

  private String briefly(double stops) {
    String size =
        words.notation().stops() == StopFraction.TENTHS
            ? words.notation().rounded(stops, 1)
            : words.notation().size(stops);
    return words.count("wording.stops", stops > 1 || stops == 0 ? 2 : 1, size);
  }

  private String length(double lengthM, int decimals) {
    return words.notation().lengths() == LengthUnit.METRES
        ? words.fixed(lengthM, decimals) + " m"
        : words.notation().length(lengthM);
  }
}
