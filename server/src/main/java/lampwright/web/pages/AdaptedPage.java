package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import lampwright.wording.CautionLine;
import lampwright.wording.Figure;

/**
 * A setup recomputed for another kit, beside the original.
 *
 * @param setupTitle the setup's title
 * @param setupPath back to it
 * @param kitName the kit it was recomputed for; empty where none is chosen
 * @param verdict the answer in one sentence ("All five lights within a third of a stop.")
 * @param proof how sure it is that there is nothing better; may be empty
 * @param enough whether the kit is enough; if not, {@code lights} is the nearest thing, or empty
 * @param chips what is wished, each to be let go
 * @param wishes to ask otherwise
 * @param changes what to touch now against the setup as it stands; empty where nobody asked
 * @param shortfalls what the kit cannot make; empty where it is enough
 * @param remedies what would help the whole, best first
 * @param comparison the ways side by side; absent where there is none
 * @param figures the strip of key figures of this adaptation
 * @param camera settings as shot and with this kit
 * @param costs what this adaptation costs, the dearest first
 * @param losses what was lost and by how much, in words
 * @param leftOut what was not taken into account, in words
 * @param sheetPath to the field sheet of this way; empty where there is none
 * @param save keeps it; absent where this member may not
 */
public record AdaptedPage(
    Layout layout,
    String setupTitle,
    String setupPath,
    String kitName,
    String verdict,
    String proof,
    boolean enough,
    List<Chip> chips,
    WishesForm wishes,
    List<String> changes,
    List<Shortfall> shortfalls,
    List<String> remedies,
    Optional<Comparison> comparison,
    List<Figure> figures,
    Optional<PlanView> plan,
    List<AdaptedLight> lights,
    List<Setting> camera,
    Costs costs,
    List<String> losses,
    List<String> leftOut,
    List<CautionLine> cautions,
    Optional<SaveForm> save,
    String sheetPath) {

  public AdaptedPage {
    chips = List.copyOf(chips);
    changes = List.copyOf(changes);
    shortfalls = List.copyOf(shortfalls);
    remedies = List.copyOf(remedies);
    figures = List.copyOf(figures);
    lights = List.copyOf(lights);
    camera = List.copyOf(camera);
    losses = List.copyOf(losses);
    leftOut = List.copyOf(leftOut);
    cautions = List.copyOf(cautions);
  }

  /** A page that computes nothing: what was asked cannot be, and the form says why. */
  static AdaptedPage of(
      Layout layout, String setupTitle, String setupPath, String kitName, WishesForm wishes) {
    return new AdaptedPage(
        layout,
        setupTitle,
        setupPath,
        kitName,
        "",
        "",
        true,
        List.of(),
        wishes,
        List.of(),
        List.of(),
        List.of(),
        Optional.empty(),
        List.of(),
        Optional.empty(),
        List.of(),
        List.of(),
        new Costs("", List.of()),
        List.of(),
        List.of(),
        List.of(),
        Optional.empty(),
        "");
  }

  /**
   * Something that is wished.
   *
   * @param words "ISO 400 at most"
   * @param path the same without it
   */
  public record Chip(String words, String path) {}

  /**
   * One camera setting.
   *
   * @param change by how much it differs ("+1 stop"); empty where it does not
   * @param keep asks again with this setting kept; absent where it cannot be or is
   */
  public record Setting(String name, String was, String now, String change, Optional<Link> keep) {

    public boolean differs() {
      return !was.equals(now);
    }
  }

  /**
   * What it costs in stops-like units.
   *
   * @param total "1.4"
   * @param items the dearest first
   */
  public record Costs(String total, List<Cost> items) {
    public Costs {
      items = List.copyOf(items);
    }
  }

  /**
   * One part of the cost.
   *
   * @param stops "0.6"
   * @param width of its bar, in hundredths of the longest
   */
  public record Cost(String name, String stops, int width) {}
}
