package lampwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** What holds for every drawing. */
final class DrawingChecks {

  private DrawingChecks() {}

  static void check(Drawing drawing, String which) {
    checkLabels(drawing.sheet().frame(), drawing.labels(), which);
    checkMarkup(drawing.svg(), which);
  }

  /** No label leaves the frame or touches another. */
  static void checkLabels(Box frame, List<Label.Placed> placed, String which) {
    List<Label.Placed> labels = new ArrayList<>(placed);
    for (int i = 0; i < labels.size(); i++) {
      Label.Placed label = labels.get(i);
      String what = which + ", \"" + label.label().words() + "\"";
      assertTrue(frame.contains(label.box()), what);
      for (Label.Placed other : labels.subList(i + 1, labels.size())) {
        assertFalse(label.box().overlaps(other.box()), what + " on " + other.label().words());
      }
    }
  }

  /** Well-formed XML with a title and a description, and no style of its own. */
  static void checkMarkup(Svg svg, String which) {
    try {
      org.w3c.dom.Document xml =
          DocumentBuilderFactory.newDefaultNSInstance()
              .newDocumentBuilder()
              .parse(new InputSource(new StringReader(svg.markup())));
      for (String element : List.of("title", "desc")) {
        assertEquals(1, xml.getElementsByTagName(element).getLength(), which + ": " + element);
        assertFalse(
            xml.getElementsByTagName(element).item(0).getTextContent().isBlank(),
            which + ": " + element);
      }
    } catch (ParserConfigurationException | SAXException | IOException e) {
      throw new AssertionError(which + " is not well-formed: " + svg.markup(), e);
    }
    assertFalse(svg.markup().contains("style="), which);
  }
}
