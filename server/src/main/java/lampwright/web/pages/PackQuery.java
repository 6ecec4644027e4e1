package lampwright.web.pages;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lampwright.tasks.DayPacking;
import lampwright.web.api.PackingQuery;

/**
 * What the form of a day sends, put into the address that means the same: without empty fields, a
 * typed time in the place of a named light, setups taken out or built sooner.
 */
record PackQuery(Map<String, List<String>> sent) {

  static final String SETUP = "setup";
  static final String KIT = "kit";
  static final String READY_BY = "ready_by";
  static final String HANDS = "hands";
  static final String ADAPTED = "adapted";
  static final String DAY = "day";
  static final String NOT_BEFORE = "not_before";
  static final String COLD = "cold";

  private static final Set<String> OF_THE_FORM = Set.of(PackForm.AT, PackForm.OUT, PackForm.SOONER);

  static PackQuery of(Context context) {
    return new PackQuery(context.queryParamMap());
  }

  /** What is asked, by the rules of the API. */
  static DayPacking.Asked asked(Context context) {
    return PackingQuery.asked(context, Set.of(PackForm.WORDS));
  }

  boolean isEmpty() {
    return all(SETUP).isEmpty();
  }

  List<String> all(String name) {
    return sent.getOrDefault(name, List.of());
  }

  String one(String name) {
    return all(name).stream().filter(value -> !value.isBlank()).findFirst().orElse("");
  }

  /** Whether it is an address as a form leaves it. */
  boolean isRaw() {
    return sent.keySet().stream().anyMatch(OF_THE_FORM::contains)
        || sent.values().stream().flatMap(List::stream).anyMatch(String::isBlank);
  }

  /** The address that means the same. */
  String tidied(String path) {
    List<String> setups = new ArrayList<>(all(SETUP).stream().filter(id -> !id.isBlank()).toList());
    List<String> lights = new ArrayList<>();
    for (int i = 0; i < setups.size(); i++) {
      lights.add(light(i, setups.size()));
    }
    index(PackForm.SOONER, setups.size())
        .filter(i -> i > 0)
        .ifPresent(
            i -> {
              setups.add(i - 1, setups.remove((int) i));
              lights.add(i - 1, lights.remove((int) i));
            });
    index(PackForm.OUT, setups.size())
        .ifPresent(
            i -> {
              setups.remove((int) i);
              lights.remove((int) i);
            });
    Address address = Address.of(path);
    for (String setup : setups) {
      address = address.with(SETUP, setup);
    }
    for (String light : lights) {
      address = address.with(READY_BY, light);
    }
    for (Map.Entry<String, List<String>> field : sent.entrySet()) {
      if (!field.getKey().equals(SETUP)
          && !field.getKey().equals(READY_BY)
          && !OF_THE_FORM.contains(field.getKey())) {
        for (String value : field.getValue()) {
          if (!value.isBlank()) {
            address = address.with(field.getKey(), value);
          }
        }
      }
    }
    return address.text();
  }

  /** With one more setup, without what was looked for. */
  String adding(String path, String setup) {
    Address address = Address.of(path);
    for (String there : all(SETUP)) {
      address = address.with(SETUP, there);
    }
    address = address.with(SETUP, setup);
    for (int i = 0; i < all(SETUP).size(); i++) {
      address = address.with(READY_BY, light(i, all(SETUP).size()));
    }
    address = address.with(READY_BY, PackingQuery.SUN_AS_IT_WAS);
    for (Map.Entry<String, List<String>> field : sent.entrySet()) {
      if (!Set.of(SETUP, READY_BY, PackForm.WORDS).contains(field.getKey())) {
        for (String value : field.getValue()) {
          address = address.with(field.getKey(), value);
        }
      }
    }
    return address.text();
  }

  /** What a setup waits for: of fewer lights than setups they are the last ones'. */
  String light(int setup, int setups) {
    List<String> times = all(PackForm.AT);
    if (setup < times.size() && !times.get(setup).isBlank()) {
      return times.get(setup);
    }
    int index = setup - setups + all(READY_BY).size();
    return index < 0 || index >= all(READY_BY).size() || all(READY_BY).get(index).isBlank()
        ? PackingQuery.ANY_TIME
        : all(READY_BY).get(index);
  }

  private Optional<Integer> index(String name, int setups) {
    return Optional.of(one(name))
        .filter(text -> text.matches("\\d"))
        .map(Integer::valueOf)
        .filter(i -> i < setups);
  }
}
