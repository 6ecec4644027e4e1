package lampwright.archive;

import java.util.Map;
import java.util.Optional;
import lampwright.document.Definitions;
import lampwright.document.Form;
import lampwright.document.Pointer;
import lampwright.document.Problems;

/** Text of at most so many characters that somebody once wrote; blank text too. */
final class AnyText extends Form<String> {

  private final int longest;

  private AnyText(int longest) {
    this.longest = longest;
  }

  static Form<String> upTo(int longest) {
    return new AnyText(longest);
  }

  @Override
  public Optional<String> read(Object json, Pointer at, Problems problems) {
    if (json instanceof String text && text.codePointCount(0, text.length()) <= longest) {
      return Optional.of(text);
    }
    problems.add(at, "This must be text of at most " + longest + " characters.");
    return Optional.empty();
  }

  @Override
  public Object write(String value) {
    return value;
  }

  @Override
  public Map<String, Object> schema(Definitions definitions) {
    return Map.of("type", "string", "maxLength", longest);
  }
}
