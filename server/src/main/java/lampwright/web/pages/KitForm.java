package lampwright.web.pages;

import java.util.List;

/**
 * "Recompute for another kit": asks {@code action?kit=…}.
 *
 * @param action the address that answers for a kit
 * @param choices the studio's kits; may be empty
 * @param makePath where a kit is made; empty where this member may not
 */
public record KitForm(String action, List<Choice> choices, String makePath) {

  public static final String KIT = "kit";

  public KitForm {
    choices = List.copyOf(choices);
  }

  /** One kit. */
  public record Choice(String id, String name, boolean chosen) {}
}
