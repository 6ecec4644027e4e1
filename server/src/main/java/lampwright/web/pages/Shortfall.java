package lampwright.web.pages;

import java.util.List;

/**
 * A light that this kit cannot make.
 *
 * @param light "5 Accent"
 * @param by "0.7 stop under"
 * @param remedies the smallest changes that would help, best first, in words
 */
public record Shortfall(String light, String by, List<String> remedies) {

  public Shortfall {
    remedies = List.copyOf(remedies);
  }
}
