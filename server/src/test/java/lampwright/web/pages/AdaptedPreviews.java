package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import lampwright.drawing.StopRuler;
import lampwright.setup.Caution;

/** The page of a setup for another kit: it fits, it nearly fits, nothing fits. */
final class AdaptedPreviews {

  private AdaptedPreviews() {}

  static AdaptedPage full() {
    return page(
        "the van, five battery heads",
        "van",
        "All five lights within a third of a stop.",
        lights(-0.2),
        List.of());
  }

  static AdaptedPage notEnough() {
    return page(
        "two small heads and an umbrella",
        "two",
        "Not quite: the accent falls short. The rest is within a third of a stop.",
        lights(-0.7),
        List.of(
            new Shortfall(
                "5 Accent",
                "0.7 stop under",
                List.of(
                    "half a metre closer",
                    "the dish without its grid",
                    "ISO 200, and every other light a stop down",
                    "a second head on it"))));
  }

  static AdaptedPage nothingFits() {
    return new AdaptedPage(
        PagePreviews.layout("For one torch"),
        "Last ferry, slate quay",
        "/demo/setups/k3v9",
        "one torch",
        "This kit has one head; the setup needs five.",
        false,
        List.of(),
        List.of(),
        Optional.empty(),
        List.of(),
        List.of(),
        List.of(),
        List.of(
            new Shortfall("1 Key", "no head left", List.of("one more head of 200 W·s or more")),
            new Shortfall(
                "4 Background", "no head left", List.of("give it up; the sky carries it"))),
        List.of(),
        PagePreviews.kitForm("hire"));
  }

  private static AdaptedPage page(
      String kit,
      String kitId,
      String verdict,
      List<AdaptedLight> lights,
      List<Shortfall> shortfalls) {
    return new AdaptedPage(
        PagePreviews.layout("For " + kit),
        "Last ferry, slate quay",
        "/demo/setups/k3v9",
        kit,
        verdict,
        shortfalls.isEmpty(),
        List.of(
            Figure.of("f/4", "", "aperture"),
            Figure.of("1/125", "", "time"),
            Figure.of("100", "", "ISO"),
            Figure.of("−1.3", "stops", "ambient"),
            Figure.of("0.62", "kJ", "a frame, 5 heads"),
            Figure.of("210", "", "frames a charge")),
        List.of(
            new AdaptedPage.Alternative(
                "A", "f/4, heads at half, nothing moves", "/demo/a?way=a", true),
            new AdaptedPage.Alternative(
                "B", "f/5.6 and ISO 200; recycles faster", "/demo/a?way=b", false),
            new AdaptedPage.Alternative(
                "C", "f/5.6, the key half a metre closer", "/demo/a?way=c", false)),
        Optional.of(PagePreviews.plan()),
        lights,
        List.of(
            new AdaptedPage.Setting("Aperture", "f/5.6", "f/4", "1 stop wider"),
            new AdaptedPage.Setting("Time", "1/125", "1/125", ""),
            new AdaptedPage.Setting("ISO", "100", "100", ""),
            new AdaptedPage.Setting("ND", "none", "0.3", "1 stop"),
            new AdaptedPage.Setting("Focus", "4.0 m", "4.0 m", "")),
        List.of(
            "Sharp from 3.6 to 4.5 m instead of 3.4 to 4.9 m.",
            "The key is a little harder: 15° wide instead of 19°."),
        shortfalls,
        List.of(
            new Caution(
                "Stands in wind", "The umbrella lifts; ballast it and take it down in gusts.")),
        PagePreviews.kitForm(kitId));
  }

  private static List<AdaptedLight> lights(double accentOff) {
    return List.of(
        light(1, "Key", "400 W·s, 0.9 × 1.2 m box", "1/2 − 0.2", "f/5.6", -0.1)
            .now("250 W·s, 1.0 m umbrella", "1/2", "f/4", 0.1, "Harder: 15° instead of 19°."),
        light(2, "Fill", "400 W·s, 1.5 m octagon", "1/8", "f/3.2", -1.7)
            .now("250 W·s, 1.5 m octagon", "1/8 + 0.1", "f/2.2", 0.0, ""),
        light(3, "Rim", "400 W·s, reflector", "1/16 + 0.3", "f/7.1", 0.6)
            .now("250 W·s, reflector", "1/16", "f/5.6", 0.4, ""),
        light(4, "Background", "200 W·s, reflector", "1/8", "f/4", -1.0)
            .now("200 W·s, reflector", "1/16", "f/2.8", 0.0, ""),
        light(5, "Accent", "200 W·s, gridded dish", "1/32", "f/3.5", -1.3)
            .now(
                "60 W·s, gridded dish",
                "1/1",
                "f/2",
                accentOff,
                "At full power it recycles in 4.8 s; the path takes 3.1 s."));
  }

  /** A light as it was shot. */
  private record Shot(int number, String role, AdaptedLight.Means means, double stops) {

    private AdaptedLight now(String gear, String power, String reading, double off, String notes) {
      return new AdaptedLight(
          number,
          role,
          means,
          new AdaptedLight.Means(gear, power, reading, Known.COMPUTED),
          StopRuler.of(role).withDot(stops).withBar(stops + off).withBand(0.3).svg(),
          Deviation.ofTenths(off),
          notes);
    }
  }

  private static Shot light(
      int number, String role, String gear, String power, String reading, double stops) {
    return new Shot(
        number, role, new AdaptedLight.Means(gear, power, reading, Known.METERED), stops);
  }
}
