package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.wording.Wording;

/**
 * Makes the fields of the wishes form.
 *
 * @param asked as it was sent
 * @param errors at the names of the address
 * @param words of the person who fills it in
 */
record WishFieldMaker(WishPairs asked, FormErrors errors, Wording words) {

  /** Nothing is chosen. */
  static final String ANY = "";

  /** The id of the field with a name: what an address may hold and an id should not is a hyphen. */
  static String id(String name) {
    return "wish-" + name.replaceAll("[^A-Za-z0-9_-]", "-");
  }

  WishesForm.Field typed(WishName name, String usual) {
    return typed(name, WishesForm.Kind.NUMBER, usual);
  }

  WishesForm.Field typed(WishName name, WishesForm.Kind kind, String usual) {
    return field(name.text(), id(name.text()), name.label(words), kind)
        .of(value(name.text()), name.unit(words), usual);
  }

  /** A number under a name that says what it is about. */
  WishesForm.Field number(String name, String id, String label, String unit, String usual) {
    return field(name, id, label, WishesForm.Kind.NUMBER).of(value(name), unit, usual);
  }

  WishesForm.Field tick(WishName name) {
    return tick(name.text(), id(name.text()), WishName.Kind.SAID, name.label(words));
  }

  WishesForm.Field tick(String name, String id, String value, String label) {
    return new WishesForm.Field(
        id,
        name,
        label,
        WishesForm.Kind.TICK,
        value,
        "",
        "",
        asked.has(name, value),
        List.of(),
        errors.find(name));
  }

  WishesForm.Field choice(String name, String label, List<WishesForm.Choice> choices) {
    return new WishesForm.Field(
        id(name),
        name,
        label,
        WishesForm.Kind.CHOICE,
        "",
        "",
        "",
        false,
        choices,
        errors.find(name));
  }

  /** One of the names, or any; a name that is not among them stays, so that it can be seen. */
  WishesForm.Field choice(WishName name, String any, List<String> names) {
    String chosen = value(name.text());
    List<WishesForm.Choice> choices = new ArrayList<>();
    choices.add(new WishesForm.Choice(ANY, any, chosen.isEmpty()));
    names.forEach(one -> choices.add(new WishesForm.Choice(one, one, one.equals(chosen))));
    if (!chosen.isEmpty() && !names.contains(chosen)) {
      choices.add(new WishesForm.Choice(chosen, chosen, true));
    }
    return choice(name.text(), name.label(words), choices);
  }

  String value(String name) {
    return asked.find(name).orElse("");
  }

  private Started field(String name, String id, String label, WishesForm.Kind kind) {
    return new Started(name, id, label, kind, errors.find(name));
  }

  /** A field before its value. */
  private record Started(
      String name, String id, String label, WishesForm.Kind kind, Optional<String> error) {

    WishesForm.Field of(String value, String unit, String usual) {
      return new WishesForm.Field(
          id, name, label, kind, value, unit, usual, false, List.of(), error);
    }
  }
}
