package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lampwright.engine.unit.Stops;
import lampwright.gear.Body;
import lampwright.gear.GearForms;
import lampwright.gear.Lens;
import lampwright.setup.Camera;
import lampwright.setup.SetupDocument;
import lampwright.setup.adapting.Adaptation;

/**
 * The camera's settings as shot and with a kit, line by line.
 *
 * @param asked what the address wishes, for the links that keep a setting
 * @param path of the page
 */
record AdaptedCamera(SetupDocument setup, WishPairs asked, String path) {

  List<AdaptedPage.Setting> settings(Adaptation adaptation) {
    List<AdaptedPage.Setting> settings = new ArrayList<>();
    SetupDocument now = adaptation.document();
    var old = setup.exposure();
    var next = now.exposure();
    settings.add(setting("Body", body(setup), body(now), ""));
    settings.add(
        setting(
            "Lens",
            lens(setup),
            lens(now),
            adaptation
                .framingChange()
                .filter(change -> Math.abs(change) >= 0.005)
                .map(
                    change ->
                        String.format(
                            Locale.ROOT,
                            "shows %.0f %% %s",
                            Math.abs(change) * 100,
                            change > 0 ? "more" : "less"))
                .orElse("")));
    settings.add(
        setting(
            "Aperture",
            old.fNumber().toString(),
            next.fNumber().toString(),
            change(old.fNumber().stopsAbove(next.fNumber())),
            keep(WishName.APERTURE, GearForms.fNumber().write(next.fNumber()))));
    settings.add(
        setting(
            "Time",
            old.time().toString(),
            next.time().toString(),
            change(next.time().stopsOver(old.time())),
            keep(WishName.TIME, GearForms.shutterTime().write(next.time()))));
    settings.add(
        setting(
            "ISO",
            SetupFigures.iso(old),
            SetupFigures.iso(next),
            change(next.iso().stopsOver(old.iso())),
            keep(WishName.ISO, GearForms.iso().write(next.iso()))));
    settings.add(
        setting(
            "Grey filter",
            filter(old.neutralDensity()),
            filter(next.neutralDensity()),
            change(old.neutralDensity().minus(next.neutralDensity()))));
    adaptation
        .ambientOffset()
        .ifPresent(
            offset ->
                settings.add(
                    setting(
                        "Ambient, stops",
                        adaptation
                            .ambientChange()
                            .map(change -> Wording.signed(offset.minus(change)))
                            .orElse("not known"),
                        Wording.signed(offset),
                        adaptation.ambientChange().map(AdaptedCamera::change).orElse(""))));
    return settings;
  }

  /** Asks again with this setting kept; of the ISO, with none above it. */
  private Optional<Link> keep(WishName name, Object json) {
    if (asked.find(name.text()).isPresent()) {
      return Optional.empty();
    }
    return Optional.of(
        new Link(
            name == WishName.ISO ? "no higher" : "keep",
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

  private static String filter(Stops density) {
    return density.value() == 0 ? "none" : Wording.signed(density.negated()) + " stops";
  }

  /** What a setting does to the picture's exposure; empty where it does nothing. */
  private static String change(Stops stops) {
    String signed = Wording.signed(stops);
    return signed.equals("0.0") ? "" : signed + " stops";
  }
}
