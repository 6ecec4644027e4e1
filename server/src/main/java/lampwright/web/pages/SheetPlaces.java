package lampwright.web.pages;

import lampwright.engine.lens.DepthOfField;
import lampwright.engine.light.Point;
import lampwright.engine.unit.Degrees;
import lampwright.setup.SetupDocument;
import lampwright.setup.building.FromHitMark;
import lampwright.wording.Wording;

/** How the field sheet says where something stands: a direction from the hit mark, and a tape. */
record SheetPlaces(SetupDocument setup, Wording words) {

  /** Empty on the hit mark, from which no direction leads to itself. */
  String direction(Point place) {
    FromHitMark from = FromHitMark.of(place, setup);
    return from.isOnTheMark() ? "" : bearing(from.direction());
  }

  /** Over the ground. */
  String distance(Point place) {
    FromHitMark from = FromHitMark.of(place, setup);
    return from.isOnTheMark()
        ? words.say("sheet.onTheMark")
        : words.notation().tape(from.overGround());
  }

  /** Both: "242° 3.42 m". */
  String whole(Point place) {
    return (direction(place) + " " + distance(place)).strip();
  }

  /** "3.1 to 3.6 m"; to infinity where the far end is there. */
  String sharp(DepthOfField depth) {
    String near = words.notation().tape(depth.near());
    return depth
        .far()
        .map(far -> words.say("sheet.camera.fromTo", near, words.notation().tape(far)))
        .orElseGet(() -> words.say("sheet.camera.from", near));
  }

  /** As a compass says it: "007°". */
  static String bearing(Degrees bearing) {
    long whole = Math.floorMod(Math.round(bearing.value()), 360L);
    String digits = Long.toString(whole);
    return "000".substring(digits.length()) + digits + "°";
  }
}
