package lampwright.web.pages;

import java.util.List;

/**
 * "If something changes": asks {@code action?ask=…}.
 *
 * @param action the address that answers
 * @param ambient what was typed as the ambient's reading; may be empty
 * @param lights of which a head may be dead, in build order
 * @param kits whose spare heads and filters may stand by; may be empty
 * @param keepsTime whether the shutter time must stay
 */
public record NowForm(
    String action, String ambient, List<Choice> lights, List<Choice> kits, boolean keepsTime) {

  /** The name of what a button asks, and its values. */
  public static final String ASK = "ask";

  public static final String READS = "reads";
  public static final String FALLS_ONE = "falls-1";
  public static final String FALLS_TWO = "falls-2";
  public static final String DEAD = "dead";

  public static final String AMBIENT = "ambient";
  public static final String LIGHT = "light";
  public static final String KIT = "kit";
  public static final String KEEP = "keep";
  public static final String TIME = "time";

  public NowForm {
    lights = List.copyOf(lights);
    kits = List.copyOf(kits);
  }

  /** A light or a kit. */
  public record Choice(String id, String name, boolean chosen) {}
}
