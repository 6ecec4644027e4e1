package lampwright.archive;

import java.util.Map;
import java.util.Optional;
import lampwright.document.Definitions;
import lampwright.document.Form;
import lampwright.document.Pointer;
import lampwright.document.Problems;

/** An object that is read as it stands: its own form has its say on it afterwards. */
final class AnyObject extends Form<Object> {

  static final Form<Object> FORM = new AnyObject();

  private AnyObject() {}

  @Override
  public Optional<Object> read(Object json, Pointer at, Problems problems) {
    if (json instanceof Map<?, ?>) {
      return Optional.of(json);
    }
    problems.add(at, "This must be an object.");
    return Optional.empty();
  }

  @Override
  public Object write(Object value) {
    return value;
  }

  @Override
  public Map<String, Object> schema(Definitions definitions) {
    return Map.of("type", "object");
  }
}
