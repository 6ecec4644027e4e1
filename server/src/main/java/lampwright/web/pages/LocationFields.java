package lampwright.web.pages;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import lampwright.document.Problem;
import lampwright.document.Reading;
import lampwright.place.Location;
import lampwright.place.Power;

/** The fields of a location's form: filled from a document, and read over it again. */
final class LocationFields {

  private LocationFields() {}

  static LocationForm.Fields empty() {
    return typed(field -> "");
  }

  static LocationForm.Fields of(Location location) {
    Optional<Power> power = location.power();
    return new LocationForm.Fields(
        location.name(),
        location.kind().orElse(""),
        plain(location.latitude().value()),
        plain(location.longitude().value()),
        location.altitude().map(height -> plain(height.value())).orElse(""),
        location.timeZone().map(zone -> zone.getId()).orElse(""),
        location.access().orElse(""),
        power.map(of -> of.mains() ? "yes" : "no").orElse(""),
        power.flatMap(Power::outlets).map(count -> Integer.toString(count)).orElse(""),
        power.flatMap(Power::current).map(current -> plain(current.value())).orElse(""),
        power.flatMap(Power::note).orElse(""),
        String.join("\n", location.hazards()),
        location.notes().orElse(""));
  }

  private static String plain(double value) {
    return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
  }

  static LocationForm.Fields typed(UnaryOperator<String> sent) {
    return new LocationForm.Fields(
        sent.apply("name"),
        sent.apply("kind"),
        sent.apply("latitude_deg"),
        sent.apply("longitude_deg"),
        sent.apply("altitude_m"),
        sent.apply("time_zone"),
        sent.apply("access"),
        sent.apply("mains"),
        sent.apply("outlets"),
        sent.apply("current_a"),
        sent.apply("power_note"),
        sent.apply("hazards"),
        sent.apply("notes"));
  }

  /**
   * What was sent, over what was there: what the form does not ask stays.
   *
   * @param before absent for a new one
   */
  static Reading<Location> read(UnaryOperator<String> sent, Optional<Location> before) {
    Map<String, Object> location = new LinkedHashMap<>();
    before.ifPresent(old -> location.putAll(Location.FORM.writeObject(old)));
    for (String field : List.of("name", "kind", "time_zone", "access", "notes")) {
      put(location, field, sent.apply(field).strip());
    }
    for (String field : List.of("latitude_deg", "longitude_deg", "altitude_m")) {
      put(location, field, number(sent.apply(field)));
    }
    put(location, "power", power(sent));
    location.put(
        "hazards",
        sent.apply("hazards").lines().map(String::strip).filter(l -> !l.isEmpty()).toList());
    return Location.FORM.read(location);
  }

  private static Object power(UnaryOperator<String> sent) {
    Map<String, Object> power = new LinkedHashMap<>();
    put(power, "outlets", number(sent.apply("outlets")));
    put(power, "current_a", number(sent.apply("current_a")));
    put(power, "note", sent.apply("power_note").strip());
    String mains = sent.apply("mains");
    if (power.isEmpty() && mains.isEmpty()) {
      return "";
    }
    power.put("mains", mains.equals("yes"));
    return power;
  }

  /** An empty text stands for a field that is left out. */
  private static void put(Map<String, Object> object, String field, Object typed) {
    if (typed.equals("")) {
      object.remove(field);
    } else {
      object.put(field, typed);
    }
  }

  private static Object number(String typed) {
    String text = typed.strip().replace('−', '-').replace(',', '.');
    return text.matches("-?\\d{1,9}(\\.\\d{1,15})?") ? (Object) Double.valueOf(text) : text;
  }

  static FormErrors errors(List<Problem> problems) {
    return new FormErrors(
        problems.stream()
            .map(
                problem -> {
                  String[] parts = problem.pointer().split("/", -1);
                  boolean ofPower = parts.length > 2 && parts[1].equals("power");
                  String field =
                      ofPower
                          ? (parts[2].equals("note") ? "power_note" : parts[2])
                          : parts.length > 1 ? parts[1] : "";
                  return new FormErrors.FormError(field, problem.message());
                })
            .toList());
  }
}
