package lampwright.place;

import java.time.ZoneId;
import java.util.Set;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.engine.unit.Degrees;

/** Forms that several parts of a location's document have in common. */
final class PlaceForms {

  private static final Set<String> ZONES = Set.copyOf(ZoneId.getAvailableZoneIds());

  private PlaceForms() {}

  static Form<String> name() {
    return Forms.text(400);
  }

  static Form<String> line() {
    return Forms.text(400);
  }

  static Form<String> paragraph() {
    return Forms.text(4_000);
  }

  /** An angle on the earth, either way from 0. */
  static Form<Degrees> degrees(double most) {
    return Forms.number("°").atLeast(-most).atMost(most).as(Degrees::new, Degrees::value);
  }

  /** A name of the IANA time zone database, {@code Europe/Lisbon}. */
  static Form<ZoneId> timeZone() {
    return Forms.text(60)
        .like("^[A-Za-z0-9/_+-]+$", ZONES::contains, "a time zone such as \"Europe/Lisbon\"")
        .as(ZoneId::of, ZoneId::getId);
  }
}
