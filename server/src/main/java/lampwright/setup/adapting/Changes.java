package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.Camera;
import lampwright.setup.Light;
import lampwright.setup.SetupDocument;

/** What to touch to get from one setup to another: camera first, then light by light, in words. */
final class Changes {

  /** Less is not set with a tape. */
  private static final double SET_M = 0.02;

  private static final double ROUNDING = 1e-9;

  private Changes() {}

  static List<Said> inWords(SetupDocument before, SetupDocument after) {
    List<Said> changes = new ArrayList<>();
    ofCamera(before, after, changes);
    for (Light old : before.lights()) {
      Optional<Light> now =
          after.lights().stream().filter(light -> light.id().equals(old.id())).findFirst();
      if (now.isEmpty()) {
        changes.add(Said.of("adapting.change.leaveOut", Filling.text(old.id())));
      } else {
        ofLight(old, now.get(), changes);
      }
    }
    return changes;
  }

  private static void ofCamera(SetupDocument before, SetupDocument after, List<Said> changes) {
    name(
        changes,
        "adapting.change.body",
        before.camera().flatMap(Camera::body).map(b -> b.name()),
        after.camera().flatMap(Camera::body).map(b -> b.name()));
    name(
        changes,
        "adapting.change.lens",
        before.camera().flatMap(Camera::lens).map(l -> l.name()),
        after.camera().flatMap(Camera::lens).map(l -> l.name()));
    ExposureSettings was = before.exposure().settings();
    ExposureSettings is = after.exposure().settings();
    if (!was.aperture().equals(is.aperture())) {
      changes.add(to("adapting.change.aperture", was.aperture(), is.aperture()));
    }
    if (!was.time().equals(is.time())) {
      changes.add(to("adapting.change.time", was.time(), is.time()));
    }
    if (!was.iso().equals(is.iso())) {
      changes.add(to("adapting.change.iso", was.iso(), is.iso()));
    }
    if (!was.neutralDensity().equals(is.neutralDensity())) {
      changes.add(
          Said.of(
              "adapting.change.greyFilter",
              new Filling.Size(was.neutralDensity().value()),
              new Filling.Size(is.neutralDensity().value())));
    }
  }

  private static Said to(String key, Object was, Object is) {
    return Said.of(key, Filling.shown(was), Filling.shown(is));
  }

  private static void name(
      List<Said> changes, String key, Optional<String> was, Optional<String> is) {
    if (is.isPresent() && !was.equals(is)) {
      changes.add(Said.of(key, Filling.text(is.get())));
    }
  }

  private static void ofLight(Light old, Light now, List<Said> changes) {
    List<Filling> parts = new ArrayList<>();
    if (!old.head().equals(now.head()) || old.heads() != now.heads()) {
      Filling head = Filling.text(now.head().name());
      parts.add(
          now.heads() > 1
              ? part("adapting.change.heads", Filling.number(now.heads(), 0), head)
              : part("adapting.change.head", head));
    }
    if (!old.modifierOrStandard().equals(now.modifierOrStandard())) {
      parts.add(part("adapting.change.modifier", Filling.text(now.modifierOrStandard().name())));
    }
    if (!old.gels().equals(now.gels())) {
      parts.add(
          now.gels().isEmpty()
              ? part("adapting.change.noGel")
              : part("adapting.change.gels", gels(now)));
    }
    if (old.place().distanceTo(now.place()).value() > SET_M) {
      double before = old.place().distanceTo(old.target().at()).value();
      double after = now.place().distanceTo(now.target().at()).value();
      parts.add(
          part(
              after < before ? "adapting.change.closer" : "adapting.change.farther",
              Filling.length(Math.abs(after - before), 2),
              Filling.length(after, 2)));
    }
    if (old.pops() != now.pops()) {
      parts.add(part("adapting.change.pops", Filling.number(now.pops(), 0)));
    }
    if (!isSamePower(old, now)) {
      parts.add(
          now.stopsDown()
              .map(down -> now.head().scale().show(down, now.head().energy()))
              .map(shown -> part("adapting.change.power", Filling.shown(shown)))
              .orElse(part("adapting.change.powerAsItIs")));
    }
    if (!parts.isEmpty()) {
      changes.add(
          Said.of("adapting.change.light", Filling.text(old.id()), new Filling.Series(parts)));
    }
  }

  private static Filling part(String key, Filling... parts) {
    return Said.of(key, parts).asFilling();
  }

  private static Filling gels(Light light) {
    return new Filling.Series(
        light.gels().stream()
            .map(gel -> part("adapting.quoted", Filling.text(gel.name())))
            .toList());
  }

  private static boolean isSamePower(Light old, Light now) {
    return old.head().equals(now.head())
        && old.stopsDown().isPresent()
        && now.stopsDown().isPresent()
        && Math.abs(old.stopsDown().get().value() - now.stopsDown().get().value()) < ROUNDING;
  }
}
