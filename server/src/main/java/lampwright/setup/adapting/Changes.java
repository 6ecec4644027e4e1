package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.gear.Gel;
import lampwright.setup.Camera;
import lampwright.setup.Light;
import lampwright.setup.SetupDocument;

/** What to touch to get from one setup to another: camera first, then light by light, in words. */
final class Changes {

  /** Less is not set with a tape. */
  private static final double SET_M = 0.02;

  private static final double ROUNDING = 1e-9;

  private Changes() {}

  static List<String> inWords(SetupDocument before, SetupDocument after) {
    List<String> changes = new ArrayList<>();
    ofCamera(before, after, changes);
    for (Light old : before.lights()) {
      Optional<Light> now =
          after.lights().stream().filter(light -> light.id().equals(old.id())).findFirst();
      if (now.isEmpty()) {
        changes.add("“" + old.id() + "”: leave it out.");
      } else {
        ofLight(old, now.get(), changes);
      }
    }
    return changes;
  }

  private static void ofCamera(SetupDocument before, SetupDocument after, List<String> changes) {
    name(
        changes,
        "Body",
        before.camera().flatMap(Camera::body).map(b -> b.name()),
        after.camera().flatMap(Camera::body).map(b -> b.name()));
    name(
        changes,
        "Lens",
        before.camera().flatMap(Camera::lens).map(l -> l.name()),
        after.camera().flatMap(Camera::lens).map(l -> l.name()));
    ExposureSettings was = before.exposure().settings();
    ExposureSettings is = after.exposure().settings();
    if (!was.aperture().equals(is.aperture())) {
      changes.add("Aperture: " + was.aperture() + " to " + is.aperture() + ".");
    }
    if (!was.time().equals(is.time())) {
      changes.add("Time: " + was.time() + " to " + is.time() + ".");
    }
    if (!was.iso().equals(is.iso())) {
      changes.add("ISO: " + was.iso() + " to " + is.iso() + ".");
    }
    if (!was.neutralDensity().equals(is.neutralDensity())) {
      changes.add(
          String.format(
              Locale.ROOT,
              "Grey filter: %.1f to %.1f stops.",
              was.neutralDensity().value(),
              is.neutralDensity().value()));
    }
  }

  private static void name(
      List<String> changes, String what, Optional<String> was, Optional<String> is) {
    if (is.isPresent() && !was.equals(is)) {
      changes.add(what + ": “" + is.get() + "”.");
    }
  }

  private static void ofLight(Light old, Light now, List<String> changes) {
    List<String> parts = new ArrayList<>();
    if (!old.head().equals(now.head()) || old.heads() != now.heads()) {
      parts.add((now.heads() > 1 ? now.heads() + " × " : "") + "“" + now.head().name() + "”");
    }
    if (!old.modifierOrStandard().equals(now.modifierOrStandard())) {
      parts.add("“" + now.modifierOrStandard().name() + "” in front");
    }
    if (!old.gels().equals(now.gels())) {
      parts.add(
          now.gels().isEmpty()
              ? "no gel"
              : "gel “" + String.join("”, “", now.gels().stream().map(Gel::name).toList()) + "”");
    }
    if (old.place().distanceTo(now.place()).value() > SET_M) {
      double before = old.place().distanceTo(old.target().at()).value();
      double after = now.place().distanceTo(now.target().at()).value();
      parts.add(
          String.format(
              Locale.ROOT,
              "%.2f m %s, %.2f m from its target",
              Math.abs(after - before),
              after < before ? "closer" : "farther away",
              after));
    }
    if (old.pops() != now.pops()) {
      parts.add(now.pops() + " flashes for each picture");
    }
    if (!isSamePower(old, now)) {
      parts.add(
          "power "
              + now.stopsDown()
                  .map(down -> now.head().scale().show(down, now.head().energy()))
                  .orElse("as it is"));
    }
    if (!parts.isEmpty()) {
      changes.add("“" + old.id() + "”: " + String.join(", ", parts) + ".");
    }
  }

  private static boolean isSamePower(Light old, Light now) {
    return old.head().equals(now.head())
        && old.stopsDown().isPresent()
        && now.stopsDown().isPresent()
        && Math.abs(old.stopsDown().get().value() - now.stopsDown().get().value()) < ROUNDING;
  }
}
