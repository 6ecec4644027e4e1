package lampwright.web.pages;

import com.openhtmltopdf.extend.FSTextBreaker;

/** Ends lines after spaces alone: "1/8" and "−1.6" stay whole. */
final class SpaceBreaker implements FSTextBreaker {

  private static final int NONE = -1;

  private String text = "";
  private int at;

  @Override
  public void setText(String text) {
    this.text = text;
    this.at = 0;
  }

  @Override
  public int next() {
    int space = text.indexOf(' ', at);
    if (space >= 0) {
      at = space + 1;
      return space;
    }
    return NONE;
  }
}
