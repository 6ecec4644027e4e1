package lampwright.web.pages;

import java.util.List;

/**
 * How the light of a setup is, in few facts.
 *
 * @param traits may be empty
 * @param like where setups with light like this are; empty where nowhere
 */
public record SignaturePart(List<Trait> traits, String like) {

  public SignaturePart {
    traits = List.copyOf(traits);
  }

  SignaturePart(List<Trait> traits) {
    this(traits, "");
  }

  SignaturePart withLike(String path) {
    return new SignaturePart(traits, path);
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
