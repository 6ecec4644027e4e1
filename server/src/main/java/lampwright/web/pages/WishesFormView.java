package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lampwright.gear.Body;
import lampwright.gear.Head;
import lampwright.gear.Kit;
import lampwright.gear.Lens;
import lampwright.gear.Pack;
import lampwright.gear.Several;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.adapting.WeightChanges;
import lampwright.setup.adapting.Weights;
import lampwright.tasks.KeptKit;
import lampwright.wording.Wording;

/** Lays out the wishes form for one setup and one kit. */
final class WishesFormView {

  private final SetupDocument setup;
  private final List<KeptKit> kits;
  private final Optional<Kit> kit;
  private final WishPairs asked;
  private final WishFieldMaker fields;
  private final Wording words;

  /**
   * @param kits of the studio
   * @param asked as the address has it
   * @param errors at the names of the address
   */
  WishesFormView(
      SetupDocument setup, List<KeptKit> kits, WishPairs asked, FormErrors errors, Wording words) {
    this.setup = setup;
    this.words = words;
    this.kits = kits;
    this.asked = asked;
    this.fields = new WishFieldMaker(asked, errors, words);
    String chosen = fields.value(WishPairs.KIT);
    this.kit =
        kits.stream()
            .filter(one -> one.id().text().equals(chosen))
            .map(KeptKit::document)
            .findFirst();
  }

  WishesForm form(String action) {
    List<WishesForm.Group> groups =
        List.of(
            camera(), look(), headsAndPlaces(), pace(), lightNow(), tonight(), giveUp(), weights());
    return new WishesForm(
        action,
        List.of(kitField(), preset(), fields.typed(WishName.ISO, "")),
        groups.stream().filter(group -> !group.fields().isEmpty()).toList(),
        kept(),
        errors(groups));
  }

  private WishesForm.Field kitField() {
    List<WishesForm.Choice> choices = new ArrayList<>();
    if (kit.isEmpty()) {
      choices.add(
          new WishesForm.Choice(WishFieldMaker.ANY, words.say("adapting.form.choose"), true));
    }
    for (KeptKit one : kits) {
      choices.add(
          new WishesForm.Choice(
              one.id().text(),
              one.document().name(),
              one.id().text().equals(fields.value(WishPairs.KIT))));
    }
    return fields.choice(WishPairs.KIT, words.say("adapting.form.kit"), choices);
  }

  private WishesForm.Field preset() {
    String chosen = fields.value(WishName.PRESET.text());
    List<WishesForm.Choice> choices = new ArrayList<>();
    for (Weights.Preset preset : Weights.Preset.values()) {
      String value = preset.name().toLowerCase(Locale.ROOT);
      choices.add(
          new WishesForm.Choice(
              preset == Weights.Preset.CLOSEST_LOOK ? WishFieldMaker.ANY : value,
              WishWords.preset(value, words),
              value.equals(chosen)));
    }
    return fields.choice(WishName.PRESET.text(), WishName.PRESET.label(words), choices);
  }

  private WishesForm.Group camera() {
    return group(
        "adapting.form.camera",
        "",
        List.of(
            fields.typed(WishName.APERTURE, usual("free")),
            fields.typed(WishName.TIME, WishesForm.Kind.TEXT, usual("free")),
            fields.choice(WishName.BODY, usual("anyBody"), names(Kit::bodies, Body::name)),
            fields.choice(WishName.LENS, usual("anyLens"), names(Kit::lenses, Lens::name))));
  }

  private WishesForm.Group look() {
    return group(
        "adapting.form.look",
        "",
        List.of(
            fields.typed(WishName.AMBIENT_WITHIN, usual("any")),
            fields.typed(WishName.LIGHT_WITHIN, usual("weighed")),
            fields.typed(WishName.SOFTNESS_WITHIN, usual("any")),
            fields.typed(WishName.WAYS, "3")));
  }

  private WishesForm.Group headsAndPlaces() {
    return group(
        "adapting.form.heads",
        "",
        List.of(
            fields.tick(WishName.MOVE),
            fields.typed(WishName.NEAREST, words.fixed(0.5, 1)),
            fields.typed(WishName.HEADS, "2"),
            fields.typed(WishName.POPS, usual("asInSetup"))));
  }

  private WishesForm.Group pace() {
    return group(
        "adapting.form.pace",
        "",
        List.of(
            fields.typed(WishName.FRAMES, usual("asPlanned")),
            fields.typed(WishName.PACE, usual("asPlanned"))));
  }

  private WishesForm.Group lightNow() {
    return group(
        "adapting.form.now",
        words.say("adapting.form.nowHint"),
        List.of(
            fields.typed(WishName.AMBIENT, usual("asInSetup")),
            fields.typed(WishName.DATE, WishesForm.Kind.DATE, ""),
            fields.typed(WishName.CLOCK, WishesForm.Kind.TIME_OF_DAY, ""),
            fields.typed(WishName.PLACE, WishesForm.Kind.TEXT, usual("asInSetup")),
            fields.typed(WishName.LATITUDE, ""),
            fields.typed(WishName.LONGITUDE, ""),
            fields.typed(WishName.UTC, WishesForm.Kind.TEXT, usual("asInSetup"))));
  }

  private WishesForm.Group tonight() {
    List<WishesForm.Field> all = new ArrayList<>();
    for (Several<Head> heads : kit.map(Kit::heads).orElse(List.of())) {
      Head head = heads.item();
      boolean hasBattery = head.pack().isEmpty() && head.feed() == Head.Feed.BATTERY;
      addTonight(heads.count() + " × " + head.name(), head.name(), hasBattery, all);
    }
    for (Several<Pack> packs : kit.map(Kit::packs).orElse(List.of())) {
      Pack pack = packs.item();
      addTonight(
          packs.count() + " × " + pack.name(), pack.name(), pack.feed() == Head.Feed.BATTERY, all);
    }
    return group("adapting.form.tonight", "", all);
  }

  /** Names may hold what an id may not, so that ids go by number. */
  private void addTonight(
      String pieces, String name, boolean hasBattery, List<WishesForm.Field> all) {
    String id = "wish-tonight-" + all.size();
    all.add(
        fields.number(WishPairs.DEAD + name, id, words.say("adapting.form.dead", pieces), "", "0"));
    if (hasBattery) {
      all.add(
          fields.number(
              WishPairs.CHARGE + name,
              id + "-charge",
              words.say("adapting.form.charge", name),
              "%",
              "100"));
    }
  }

  private WishesForm.Group giveUp() {
    Map<LightId, Integer> numbers = setup.numbersInBuildOrder();
    return group(
        "adapting.form.giveUp",
        "",
        setup.lightsInBuildOrder().stream()
            .map(
                (Light light) ->
                    fields.tick(
                        WishPairs.GIVE_UP,
                        WishFieldMaker.id(WishPairs.GIVE_UP + "-" + light.id()),
                        light.id().text(),
                        words.light(numbers.getOrDefault(light.id(), 0), light)))
            .toList());
  }

  /** Every weight that can be set, with the one that the preset has. */
  private WishesForm.Group weights() {
    Weights.Preset preset =
        WishWords.findPreset(fields.value(WishName.PRESET.text()))
            .orElse(Weights.Preset.CLOSEST_LOOK);
    Map<String, Object> usual = WeightChanges.FORM.writeObject(WishWords.allOf(preset.weights()));
    return group(
        "adapting.form.weights",
        words.say("adapting.form.weightsHint", words.fixed(1.5, 1), words.fixed(0.75, 2)),
        usual.entrySet().stream()
            .map(
                entry ->
                    fields.number(
                        WishPairs.WEIGHT + entry.getKey(),
                        WishFieldMaker.id("weight-" + entry.getKey()),
                        WishWords.weight(entry.getKey(), words),
                        "",
                        words.notation().written(entry.getValue().toString())))
            .toList());
  }

  /** What holds where nothing is written. */
  private String usual(String key) {
    return words.say("adapting.usual." + key);
  }

  private WishesForm.Group group(String titleKey, String hint, List<WishesForm.Field> fields) {
    boolean used =
        fields.stream()
            .anyMatch(
                field ->
                    field.ticked()
                        || field.error().isPresent()
                        || (field.kind() != WishesForm.Kind.TICK && !field.value().isEmpty())
                        || field.choices().stream()
                            .anyMatch(choice -> choice.chosen() && !choice.value().isEmpty()));
    return new WishesForm.Group(words.say(titleKey), hint, used, fields);
  }

  /** Pins have no field: they are made at the lights. The kit that they are of goes with them. */
  private List<WishesForm.Kept> kept() {
    List<WishesForm.Kept> kept = new ArrayList<>();
    for (WishPairs.Pair pair : asked.pairs()) {
      if (pair.name().equals(WishPairs.WITHOUT)
          || List.of(WishPairs.HEAD, WishPairs.MODIFIER, WishPairs.COUNT).stream()
              .anyMatch(pair.name()::startsWith)) {
        kept.add(new WishesForm.Kept(pair.name(), pair.value()));
      }
    }
    if (kit.isPresent()) {
      kept.add(new WishesForm.Kept(WishPairs.SAID_OF, fields.value(WishPairs.KIT)));
    }
    return kept;
  }

  /** The same errors, each at the id of its field; what has no field is about the whole. */
  private FormErrors errors(List<WishesForm.Group> groups) {
    return new FormErrors(
        fields.errors().items().stream()
            .map(error -> new FormErrors.FormError(fieldId(groups, error.field()), error.message()))
            .toList());
  }

  private static String fieldId(List<WishesForm.Group> groups, String name) {
    if (name.equals(SaveForm.TITLE_ID)) {
      return name;
    }
    if (List.of(WishPairs.KIT, WishName.PRESET.text(), WishName.ISO.text()).contains(name)) {
      return WishFieldMaker.id(name);
    }
    return groups.stream()
        .flatMap(group -> group.fields().stream())
        .filter(field -> field.name().equals(name))
        .map(WishesForm.Field::id)
        .findFirst()
        .orElse("");
  }

  private <G> List<String> names(
      java.util.function.Function<Kit, List<G>> of, java.util.function.Function<G, String> name) {
    return kit.map(of).orElse(List.of()).stream().map(name).toList();
  }
}
