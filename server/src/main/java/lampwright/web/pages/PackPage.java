package lampwright.web.pages;

import java.util.List;
import java.util.Optional;

/**
 * A day with one or more setups: what is carried, what is charged, and who does what when.
 *
 * @param found setups that may be added, where somebody looked for some
 * @param day absent while no setup is chosen, or something is wrong
 */
public record PackPage(
    Layout layout, PackForm form, FormErrors errors, List<Link> found, Optional<Day> day) {

  public PackPage {
    found = List.copyOf(found);
  }

  /**
   * What the day takes.
   *
   * @param lead the day, and from when to when
   * @param problems what cannot be done in time, what the kits lack, leave that is over
   * @param weight all of it together, in words
   * @param batteries in sentences
   * @param unknown what nobody wrote down, in sentences
   * @param sheet who does what when
   * @param sun what it does, "sunset 19:12"
   */
  public record Day(
      String lead,
      List<String> problems,
      List<Section> sections,
      String weight,
      List<Battery> batteries,
      List<String> mains,
      List<String> unknown,
      DrawingView sheet,
      List<String> sun,
      List<String> cautions) {
    public Day {
      problems = List.copyOf(problems);
      sections = List.copyOf(sections);
      batteries = List.copyOf(batteries);
      mains = List.copyOf(mains);
      unknown = List.copyOf(unknown);
      sun = List.copyOf(sun);
      cautions = List.copyOf(cautions);
    }
  }

  /** Gear of one sort. */
  public record Section(String name, List<Piece> pieces) {
    public Section {
      pieces = List.copyOf(pieces);
    }
  }

  /**
   * One kind of gear.
   *
   * @param key what a tick of it is kept by
   * @param needs which setup needs how many; empty where there is one setup
   * @param weight "2 × 2.4 kg"; empty where it is not known
   * @param lacking "1 is missing in the kit"; empty where nothing is
   */
  public record Piece(
      String key, int count, String name, String needs, String weight, String lacking) {}

  /**
   * One feed.
   *
   * @param name "400 W·s battery head 2"
   * @param takes "2 batteries, 1 of them is missing"
   * @param changes when they are changed; may be empty
   */
  public record Battery(String key, String name, String takes, String changes) {}
}
