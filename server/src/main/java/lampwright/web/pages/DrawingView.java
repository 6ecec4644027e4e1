package lampwright.web.pages;

import lampwright.drawing.DrawingTable;
import lampwright.drawing.Svg;

/**
 * A drawing with the same facts as a table.
 *
 * @param caption how to read it; may be empty
 */
public record DrawingView(Svg drawing, String caption, DrawingTable table) {}
