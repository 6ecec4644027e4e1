package lampwright.web.pages;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import lampwright.document.Problem;
import lampwright.document.Reading;
import lampwright.gear.Kit;
import lampwright.gear.Piece;
import lampwright.gear.Several;
import lampwright.gear.stock.GearId;
import lampwright.gear.stock.WrittenKit;
import lampwright.tasks.Refused;
import lampwright.web.http.FormFields;

/**
 * A kit as a form holds it: name, note, and how many of each piece of the studio's gear. What is
 * written out in the kit itself stays as it is.
 */
final class KitFields {

  private static final String GEAR = "gear-";

  private KitFields() {}

  static String field(GearId gear) {
    return GEAR + gear.text();
  }

  /** What the fields hold for a kit. */
  static UnaryOperator<String> of(WrittenKit kit) {
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put(KitEditPage.NAME, kit.name());
    fields.put(KitEditPage.NOTE, kit.own().note().orElse(""));
    kit.gear().forEach(use -> fields.put(field(use.id()), Integer.toString(use.count())));
    return name -> fields.getOrDefault(name, "");
  }

  static int revision(FormFields sent) {
    String revision = sent.get(KitEditPage.REVISION);
    return revision.matches("[1-9]\\d{0,8}") ? Integer.parseInt(revision) : 0;
  }

  /** What is written out in a kit itself, in a line each. */
  static List<String> writtenOut(WrittenKit kit) {
    Kit own = kit.own();
    return Stream.of(
            own.heads().stream().map(KitFields::several),
            own.packs().stream().map(KitFields::several),
            own.modifiers().stream().map(KitFields::several),
            own.bodies().stream().map(Piece::name),
            own.lenses().stream().map(Piece::name),
            own.gels().stream().map(KitFields::several),
            own.neutralDensities().stream().map(Piece::name),
            own.stands().stream().map(KitFields::several))
        .flatMap(lines -> lines)
        .toList();
  }

  private static String several(Several<? extends Piece> of) {
    return of.count() + " × " + of.item().name();
  }

  /**
   * Reads a form.
   *
   * @param before the kit that is changed
   * @throws Refused Invalid, with pointers into the written kit
   */
  static WrittenKit read(FormFields sent, Optional<WrittenKit> before) {
    Map<String, Object> plain =
        new LinkedHashMap<>(before.map(KitFields::plain).orElseGet(LinkedHashMap::new));
    plain.put(KitEditPage.NAME, sent.get(KitEditPage.NAME).strip());
    plain.remove(KitEditPage.NOTE);
    if (!sent.get(KitEditPage.NOTE).isBlank()) {
      plain.put(KitEditPage.NOTE, sent.get(KitEditPage.NOTE).strip());
    }
    plain.put("gear", gear(sent));
    return switch (WrittenKit.FORM.read(plain)) {
      case Reading.Sound<WrittenKit>(WrittenKit kit) -> kit;
      case Reading.Faulty<WrittenKit> faulty -> throw Refused.invalid(faulty.problems());
    };
  }

  private static Map<String, Object> plain(WrittenKit kit) {
    Map<String, Object> plain = new LinkedHashMap<>();
    ((Map<?, ?>) WrittenKit.FORM.write(kit))
        .forEach((key, value) -> plain.put((String) key, value));
    return plain;
  }

  private static List<Object> gear(FormFields sent) {
    List<Object> gear = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (String name : sent.names()) {
      String typed = sent.get(name).strip();
      if (!name.startsWith(GEAR) || typed.isEmpty() || typed.equals("0")) {
        continue;
      }
      if (typed.matches("[1-9]\\d?")) {
        gear.add(Map.of("id", name.substring(GEAR.length()), "count", Double.valueOf(typed)));
      } else {
        problems.add(
            new Problem(
                "#" + name, "How many (“" + typed + "”) must be a whole number from 0 to 99."));
      }
    }
    if (!problems.isEmpty()) {
      throw Refused.invalid(problems);
    }
    return gear;
  }

  /** At the form's fields, as far as there is one. */
  static FormErrors errors(List<Problem> problems) {
    return new FormErrors(
        problems.stream()
            .map(problem -> new FormErrors.FormError(at(problem.pointer()), problem.message()))
            .toList());
  }

  private static String at(String pointer) {
    if (pointer.startsWith("#")) {
      return pointer.substring(1);
    }
    return switch (pointer) {
      case "/name" -> KitEditPage.NAME;
      case "/note" -> KitEditPage.NOTE;
      default -> "";
    };
  }
}
