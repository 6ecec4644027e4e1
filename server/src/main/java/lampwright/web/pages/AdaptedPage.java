package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import lampwright.setup.Caution;

/**
 * A setup recomputed for another kit, beside the original.
 *
 * @param setupTitle the setup's title
 * @param setupPath back to it
 * @param kitName the kit it was recomputed for
 * @param verdict the answer in one sentence ("All five lights within a third of a stop.")
 * @param enough whether the kit is enough; if not, {@code lights} is the nearest thing, or empty
 * @param figures the strip of key figures of this adaptation
 * @param alternatives the other adaptations, this one included
 * @param camera settings as shot and with this kit
 * @param losses what was lost and by how much, in words
 * @param shortfalls what the kit cannot make; empty where it is enough
 * @param kitForm to try another kit
 */
public record AdaptedPage(
    Layout layout,
    String setupTitle,
    String setupPath,
    String kitName,
    String verdict,
    boolean enough,
    List<Figure> figures,
    List<Alternative> alternatives,
    Optional<PlanView> plan,
    List<AdaptedLight> lights,
    List<Setting> camera,
    List<String> losses,
    List<Shortfall> shortfalls,
    List<Caution> cautions,
    KitForm kitForm) {

  public AdaptedPage {
    figures = List.copyOf(figures);
    alternatives = List.copyOf(alternatives);
    lights = List.copyOf(lights);
    camera = List.copyOf(camera);
    losses = List.copyOf(losses);
    shortfalls = List.copyOf(shortfalls);
    cautions = List.copyOf(cautions);
  }

  /**
   * One way to do it.
   *
   * @param name "A"
   * @param summary what sets it apart ("ISO 200, heads at half")
   * @param shown whether it is the one on this page
   */
  public record Alternative(String name, String summary, String path, boolean shown) {}

  /**
   * One camera setting.
   *
   * @param change by how much it differs ("+1 stop"); empty where it does not
   */
  public record Setting(String name, String was, String now, String change) {

    public boolean differs() {
      return !was.equals(now);
    }
  }
}
