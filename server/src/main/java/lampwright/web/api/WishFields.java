package lampwright.web.api;

import static lampwright.document.Field.list;
import static lampwright.document.Field.optional;
import static lampwright.document.Field.usually;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.engine.exposure.Ev100;
import lampwright.setup.Occasion;
import lampwright.setup.adapting.HeadTonight;
import lampwright.setup.adapting.Limits;
import lampwright.setup.adapting.Pin;
import lampwright.setup.adapting.WeightChanges;
import lampwright.setup.adapting.Weights;
import lampwright.setup.adapting.Wishes;

/** The fields of a request that say what an adaptation is wished for. */
public final class WishFields<T> {

  /** As many as setups have lights, and kits kinds of heads. */
  private static final int MOST_PINS = 40;

  private static final int MOST_TONIGHT = 100;
  private static final int MOST_WAYS = 6;

  /** The wishes alone, for the pages, which read the same fields from an address. */
  public static final ObjectForm<Wishes> FORM = alone();

  private final Field<T, Optional<Ev100>> ambient;
  private final Field<T, Optional<Occasion>> occasion;
  private final Field<T, Limits> limits;
  private final Field<T, Weights.Preset> preset;
  private final Field<T, WeightChanges> weights;
  private final Field<T, List<Pin>> pins;
  private final Field<T, List<HeadTonight>> tonight;
  private final Field<T, Integer> ways;

  private static ObjectForm<Wishes> alone() {
    WishFields<Wishes> fields = new WishFields<>(wishes -> wishes);
    return ObjectForm.of(
        "wishes",
        "What an adaptation is asked for, beyond setup and kit.",
        fields::read,
        fields.after(List.of()));
  }

  WishFields(Function<T, Wishes> wishes) {
    ambient =
        optional(
            "ambient_ev100",
            Forms.number("EV").atLeast(-10).atMost(20).maybe(10).as(Ev100::new, Ev100::value),
            of -> wishes.apply(of).ambient(),
            "The ambient to shoot in, where it is not the setup's.");
    occasion =
        optional(
            "occasion",
            Occasion.FORM,
            of -> wishes.apply(of).occasion(),
            "Another place, day or time; what it leaves open is as in the setup. Without"
                + " ambient_ev100 the level of the clear sky there is taken.");
    limits =
        usually(
            Limits.none(),
            "limits",
            Limits.FORM,
            of -> wishes.apply(of).limits(),
            "What the adaptation must not do, and how far it may go.");
    preset =
        usually(
            Weights.Preset.CLOSEST_LOOK,
            "preset",
            Forms.choice(Weights.Preset.values()),
            of -> wishes.apply(of).preset(),
            "What matters most; usually the closest look.");
    weights =
        usually(
            WeightChanges.none(),
            "weights",
            WeightChanges.FORM,
            of -> wishes.apply(of).changes(),
            "Weights that differ from the preset's.");
    pins =
        list(
            "pins",
            Pin.FORM,
            MOST_PINS,
            of -> wishes.apply(of).pins(),
            "What is decided about lights, so that only the rest is solved.");
    tonight =
        list(
            "tonight",
            HeadTonight.FORM,
            MOST_TONIGHT,
            of -> wishes.apply(of).tonight(),
            "What of the kit is dead or half empty today.");
    ways =
        usually(
            Wishes.USUAL_WAYS,
            "ways",
            Forms.count(1, MOST_WAYS),
            of -> wishes.apply(of).ways(),
            "How many different adaptations to find at most; usually 3.");
  }

  Wishes read(ObjectForm.Values values) {
    return new Wishes(
        values.get(ambient),
        values.get(occasion),
        values.get(limits),
        values.get(preset),
        values.get(weights),
        values.get(pins),
        values.get(tonight),
        values.get(ways));
  }

  /** The fields after others. */
  List<Field<T, ?>> after(List<Field<T, ?>> before) {
    List<Field<T, ?>> all = new ArrayList<>(before);
    all.addAll(List.of(ambient, occasion, limits, preset, weights, pins, tonight, ways));
    return all;
  }
}
