package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.unit.Stops;
import lampwright.gear.Body;
import lampwright.gear.GearForms;
import lampwright.gear.Lens;
import lampwright.setup.Camera;
import lampwright.setup.SetupDocument;
import lampwright.setup.adapting.Adaptation;
import lampwright.wording.Wording;

/**
 * The camera's settings as shot and with a kit, line by line.
 *
 * @param asked what the address wishes, for the links that keep a setting
 * @param path of the page
 */
record AdaptedCamera(SetupDocument setup, WishPairs asked, String path, Wording words) {

  List<AdaptedPage.Setting> settings(Adaptation adaptation) {
    List<AdaptedPage.Setting> settings = new ArrayList<>();
    SetupDocument now = adaptation.document();
    var old = setup.exposure();
    var next = now.exposure();
    settings.add(setting(words.say("pages.common.body"), body(setup), body(now), ""));
    settings.add(
        setting(
            words.say("pages.common.lens"),
            lens(setup),
            lens(now),
            adaptation
                .framingChange()
                .filter(change -> Math.abs(change) >= 0.005)
                .map(
                    change ->
                        words.say(
                            change > 0 ? "pages.adapted.showsMore" : "pages.adapted.showsLess",
                            words.fixed(Math.abs(change) * 100, 0)))
                .orElse("")));
    settings.add(
        setting(
            words.say("pages.common.aperture"),
            words.aperture(old.fNumber()),
            words.aperture(next.fNumber()),
            change(old.fNumber().stopsAbove(next.fNumber())),
            keep(WishName.APERTURE, GearForms.fNumber().write(next.fNumber()))));
    settings.add(
        setting(
            words.say("pages.common.time"),
            words.notation().written(old.time().toString()),
            words.notation().written(next.time().toString()),
            change(next.time().stopsOver(old.time())),
            keep(WishName.TIME, GearForms.shutterTime().write(next.time()))));
    settings.add(
        setting(
            words.say("pages.common.iso"),
            words.iso(old.iso()),
            words.iso(next.iso()),
            change(next.iso().stopsOver(old.iso())),
            keep(WishName.ISO, GearForms.iso().write(next.iso()))));
    settings.add(
        setting(
            words.say("pages.common.greyFilter"),
            filter(old.neutralDensity()),
            filter(next.neutralDensity()),
            change(old.neutralDensity().minus(next.neutralDensity()))));
    adaptation
        .ambientOffset()
        .ifPresent(
            offset ->
                settings.add(
                    setting(
                        words.say("pages.adapted.ambientStops"),
                        adaptation
                            .ambientChange()
                            .map(change -> words.signed(offset.minus(change)))
                            .orElseGet(words::notKnown),
                        words.signed(offset),
                        adaptation.ambientChange().map(this::change).orElse(""))));
    return settings;
  }

  /** Asks again with this setting kept; of the ISO, with none above it. */
  private Optional<Link> keep(WishName name, Object json) {
    if (asked.find(name.text()).isPresent()) {
      return Optional.empty();
    }
    return Optional.of(
        new Link(
            name == WishName.ISO
                ? words.say("pages.adapted.noHigher")
                : words.say("pages.adapted.keep"),
            asked.with(name.text(), name.kind().toText(json)).fromTheFirstWay().address(path)));
  }

  private static AdaptedPage.Setting setting(String name, String was, String now, String change) {
    return setting(name, was, now, change, Optional.empty());
  }

  private static AdaptedPage.Setting setting(
      String name, String was, String now, String change, Optional<Link> keep) {
    return new AdaptedPage.Setting(name, was, now, change, keep);
  }

  private static String body(SetupDocument of) {
    return of.camera().flatMap(Camera::body).map(Body::name).orElse("–");
  }

  private static String lens(SetupDocument of) {
    return of.camera().flatMap(Camera::lens).map(Lens::name).orElse("–");
  }

  private String filter(Stops density) {
    return density.value() == 0 ? words.say("pages.common.none") : words.change(density.negated());
  }

  /** What a setting does to the picture's exposure; empty where it does nothing. */
  private String change(Stops stops) {
    return words.change(stops);
  }
}
