package lampwright.web.pages;

import lampwright.drawing.Svg;
import lampwright.wording.LightRow;

/**
 * One light of a setup.
 *
 * @param row its words and figures
 * @param ruler the reading on the stop ruler
 */
public record SetupLight(LightRow row, Svg ruler) {}
