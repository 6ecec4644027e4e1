package lampwright.drawing;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32;
import lampwright.engine.unit.Bounds;

/**
 * A drawing with its parts, before it has ids.
 *
 * @param title what it is of
 * @param description what it says, in words
 */
record Drawing(
    Sheet sheet, String title, String description, List<Label.Placed> labels, Markup body) {

  /** On paper figures are set in 9 points, the least that the field sheet has. */
  static final double PT_A_UNIT = 9 / Sheet.Format.PAPER.figures;

  /** With a title and a description that screen readers are led to; ids come from the content. */
  Svg svg() {
    String id = sheet.view().key() + "-" + fingerprint();
    return svg(
        "plan",
        List.of("aria-labelledby", id + "-title", "aria-describedby", id + "-desc"),
        new Markup()
            .words("title", title, "id", id + "-title")
            .words("desc", description, "id", id + "-desc"));
  }

  /**
   * As large as it is printed. What makes PDFs draws SVG 1.1 and no more: words stand in the middle
   * of their line by a shift, and on a ground of their own in the place of a halo.
   */
  Svg svgOnPaper() {
    String id = sheet.view().key() + "-" + fingerprint();
    return Svg.trusted(
        svg(
                "plan plan-paper",
                List.of("aria-labelledby", id + "-title"),
                new Markup().words("title", title, "id", id + "-title"))
            .markup()
            // No attribute that people wrote can read so: their quotes are escaped.
            .replace("dominant-baseline=\"central\"", "dy=\"0.35em\""));
  }

  /** With a title only and no ids: in a list a copied setup may look the same as another. */
  Svg svgWithoutIds() {
    return svg("plan plan-small", List.of(), new Markup().words("title", title));
  }

  private Svg svg(String cssClass, List<String> references, Markup words) {
    String width = Markup.number(sheet.width());
    String height = Markup.number(sheet.height());
    List<String> attributes =
        new ArrayList<>(List.of("xmlns", "http://www.w3.org/2000/svg", "class", cssClass));
    attributes.addAll(List.of("viewBox", "0 0 " + width + " " + height));
    attributes.addAll(
        List.of("width", size(sheet.width()), "height", size(sheet.height()), "role", "img"));
    attributes.addAll(references);
    Spot origin = sheet.spot(0, 0);
    attributes.addAll(List.of("data-view", sheet.view().key()));
    attributes.addAll(List.of("data-units-per-metre", Bounds.rounded(sheet.unitsPerMetre(), 3)));
    attributes.addAll(List.of("data-origin-x", Bounds.rounded(origin.x(), 2)));
    attributes.addAll(List.of("data-origin-y", Bounds.rounded(origin.y(), 2)));
    Markup markup = new Markup().open("svg", attributes.toArray(String[]::new));
    return Svg.trusted(markup.add(words).add(body).close("svg").toString());
  }

  private String size(double units) {
    return sheet.isPaper() ? Markup.number(units * PT_A_UNIT) + "pt" : Markup.number(units);
  }

  private String fingerprint() {
    CRC32 sum = new CRC32();
    sum.update((title + body).getBytes(StandardCharsets.UTF_8));
    return Long.toHexString(sum.getValue());
  }
}
