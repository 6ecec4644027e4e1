package lampwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;

class StopRulerTest {

  private static Document read(Svg svg) {
    return Jsoup.parse(svg.markup(), "", Parser.xmlParser());
  }

  private static double number(Element element, String name) {
    return Double.parseDouble(element.attr(name));
  }

  private static Element one(Document svg, String query) {
    assertEquals(1, svg.select(query).size(), svg::outerHtml);
    return svg.expectFirst(query);
  }

  @Test
  void theShootingExposureIsAtTheMiddle() {
    Document svg = read(StopRuler.of("Key", UsualNotation.READ).withDot(0).withBar(0).svg());
    double middle = Double.parseDouble(svg.expectFirst("svg").attr("width")) / 2;
    assertEquals(middle, number(one(svg, "circle.ruler-dot"), "cx"));
    Element bar = one(svg, "rect.ruler-bar");
    assertEquals(middle, number(bar, "x") + number(bar, "width") / 2);
  }

  @Test
  void aStopIsAsLongEverywhereAndMoreLightIsToTheRight() {
    double[] x = new double[9];
    for (int stop = -4; stop <= 4; stop++) {
      x[stop + 4] =
          number(
              one(
                  read(StopRuler.of("Key", UsualNotation.READ).withDot(stop).svg()),
                  "circle.ruler-dot"),
              "cx");
    }
    for (int i = 1; i < x.length; i++) {
      assertEquals(24, x[i] - x[i - 1], 1e-9);
    }
  }

  @Test
  void whatLiesBeyondAnEndBecomesAnArrowThere() {
    Document svg = read(StopRuler.of("Rim", UsualNotation.READ).withDot(-5.5).withBar(4.2).svg());
    assertTrue(svg.select("circle, rect").isEmpty());
    String left = one(svg, "path.ruler-dot.ruler-beyond").attr("d");
    String right = one(svg, "path.ruler-bar.ruler-beyond").attr("d");
    assertTrue(left.contains("l-8"), left);
    assertTrue(right.contains("l8"), right);
  }

  @Test
  void theBandLiesAroundTheBarAndEndsWithTheScale() {
    Element inside =
        one(
            read(
                StopRuler.of("Key", UsualNotation.READ).withDot(2).withBar(-1).withBand(0.5).svg()),
            ".ruler-band");
    assertEquals(24, number(inside, "width"));
    double middle = 108;
    assertEquals(middle - 1.5 * 24, number(inside, "x"));
    Element cut =
        one(
            read(StopRuler.of("Key", UsualNotation.READ).withDot(4).withBand(0.5).svg()),
            ".ruler-band");
    assertEquals(12, number(cut, "width"));
  }

  @Test
  void theTitleSaysTheSameInWords() {
    assertEquals(
        "Key: as shot 0.1 stops under, this kit 1.0 stop over, give or take 0.3",
        one(
                read(
                    StopRuler.of("Key", UsualNotation.READ)
                        .withDot(-0.1)
                        .withBar(1)
                        .withBand(0.3)
                        .svg()),
                "title")
            .text());
    assertEquals(
        "Fill: metered at the shooting exposure",
        one(
                read(
                    StopRuler.of("Fill", UsualNotation.READ)
                        .withDot(0.04)
                        .withNames("metered", "expected")
                        .svg()),
                "title")
            .text());
    assertEquals(
        "Hair: no level known",
        one(read(StopRuler.of("Hair", UsualNotation.READ).svg()), "title").text());
  }

  @Test
  void theNameOfALightCannotBecomeMarkup() {
    Svg svg = StopRuler.of("</title><script>x</script>&\"'", UsualNotation.READ).withDot(0).svg();
    assertTrue(read(svg).select("script").isEmpty());
    assertTrue(svg.markup().contains("&lt;script&gt;"));
  }

  @Test
  void aLevelThatIsNoNumberIsRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> StopRuler.of("Key", UsualNotation.READ).withDot(Double.NaN));
    assertThrows(
        IllegalArgumentException.class,
        () -> StopRuler.of("Key", UsualNotation.READ).withBand(-0.1));
  }
}
