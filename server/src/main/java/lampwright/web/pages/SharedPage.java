package lampwright.web.pages;

import java.util.List;
import lampwright.wording.CautionLine;
import lampwright.wording.Figure;

/**
 * A setup as somebody outside sees it. It leads nowhere.
 *
 * @param placeAndDate where and when; empty where that is not shown
 * @param pinned which revision it is, and that it stays so
 * @param ends when the link ends
 * @param moods may be empty
 * @param pictures the finished ones; may be empty
 * @param figures the strip of key figures
 * @param cameraNote body, lens, how high it stands; may be empty
 * @param camera camera figures; may be empty
 * @param lines the other figures in short
 */
public record SharedPage(
    Layout layout,
    String title,
    String placeAndDate,
    String pinned,
    String ends,
    List<String> moods,
    List<PictureTile> pictures,
    List<Figure> figures,
    PlanView plan,
    List<CautionLine> cautions,
    String cameraNote,
    List<Figure> camera,
    List<SetupLight> lights,
    List<ShortLine> lines,
    List<String> leftOut) {

  public SharedPage {
    moods = List.copyOf(moods);
    pictures = List.copyOf(pictures);
    figures = List.copyOf(figures);
    cautions = List.copyOf(cautions);
    camera = List.copyOf(camera);
    lights = List.copyOf(lights);
    lines = List.copyOf(lines);
    leftOut = List.copyOf(leftOut);
  }
}
