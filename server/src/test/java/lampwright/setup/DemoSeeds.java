package lampwright.setup;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lampwright.document.Form;
import lampwright.document.Json;
import lampwright.document.Reading;
import lampwright.gear.Kit;
import lampwright.gear.stock.GearId;
import lampwright.gear.stock.GearItem;
import lampwright.gear.stock.WholeKit;
import lampwright.gear.stock.WrittenKit;
import lampwright.learning.trail.Trail;
import lampwright.place.Location;

/** The demo studio's files as the repository has them. */
public final class DemoSeeds {

  /** The tests run in {@code server/}. */
  public static final Path STUDIO = Path.of("../seed-data/studio");

  private final Map<?, ?> contents = (Map<?, ?>) json("studio.json");
  private final Map<String, SetupDocument> setups = all("setups", SetupDocument.FORM);
  private final Map<String, GearItem> gear = all("gear", GearItem.FORM);

  /** By their files' names, in the studio's order. */
  public Map<String, SetupDocument> setups() {
    return setups;
  }

  public SetupDocument setup(String name) {
    return there(setups, name);
  }

  public boolean isProven(String setup) {
    return "proven".equals(history(setup).get("state"));
  }

  public Map<?, ?> history(String setup) {
    return (Map<?, ?>) json("histories/" + setup + ".json");
  }

  public Map<String, GearItem> gear() {
    return gear;
  }

  public Map<String, Location> locations() {
    return all("locations", Location.FORM);
  }

  /** The names of the files of a kind as the studio lists them. */
  public List<String> named(String kind) {
    if (contents.get(kind) instanceof List<?> names) {
      return names.stream().map(String::valueOf).toList();
    }
    throw new AssertionError("studio.json has no list of " + kind);
  }

  public Trail trail(String name) {
    return sound(Trail.FORM, json("trails/" + name + ".json"), name);
  }

  public WrittenKit writtenKit(String name) {
    return sound(WrittenKit.FORM, json("kits/" + name + ".json"), name);
  }

  /** A kit with all that it takes of the studio's gear. */
  public Kit kit(String name) {
    Map<GearId, GearItem> stock = new HashMap<>();
    gear.forEach((id, item) -> stock.put(new GearId(id), item));
    WholeKit whole = WholeKit.of(writtenKit(name), stock);
    if (!whole.problems().isEmpty() || !whole.missing().isEmpty()) {
      throw new AssertionError(name + ": " + whole.problems() + whole.missing());
    }
    return whole.kit();
  }

  private <T> Map<String, T> all(String kind, Form<T> form) {
    Map<String, T> documents = new LinkedHashMap<>();
    for (String name : named(kind)) {
      documents.put(name, sound(form, json(kind + "/" + name + ".json"), name));
    }
    return documents;
  }

  private static <T> T there(Map<String, T> all, String name) {
    T found = all.get(name);
    if (found == null) {
      throw new AssertionError("There is no " + name);
    }
    return found;
  }

  static <T> T sound(Form<T> form, Object json, String name) {
    return switch (form.read(json)) {
      case Reading.Sound<T> sound -> sound.value();
      case Reading.Faulty<T> faulty -> throw new AssertionError(name + ": " + faulty.problems());
    };
  }

  private static Object json(String file) {
    try {
      return Json.parse(Files.readString(STUDIO.resolve(file)));
    } catch (IOException e) {
      throw new UncheckedIOException(file, e);
    }
  }
}
