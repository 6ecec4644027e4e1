package lampwright.web.pages;

import java.util.List;

/**
 * How the light of a setup is, in few facts.
 *
 * @param traits may be empty
 */
public record SignaturePart(List<Trait> traits) {

  public SignaturePart {
    traits = List.copyOf(traits);
  }

  /**
   * One fact.
   *
   * @param name what it is about ("Softness")
   * @param words it in short ("fairly soft"); empty where it is not known
   * @param sentence how it was found, or why it was not
   */
  public record Trait(String name, String words, String sentence) {}
}
