package lampwright.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lampwright.document.Forms.Kind;

/** One of several kinds of object, told apart by a tag; made by {@link Forms#oneOf}. */
final class KindForm<T> extends Form<T> {

  private final String tag;
  private final List<Kind<? extends T>> kinds;

  KindForm(String tag, List<Kind<? extends T>> kinds) {
    this.tag = tag;
    this.kinds = kinds;
  }

  @Override
  public Optional<T> read(Object json, Pointer at, Problems problems) {
    if (!(json instanceof Map<?, ?> object)) {
      problems.add(at, Words.label(at) + " (" + Words.shown(json) + ") must be an object.");
      return Optional.empty();
    }
    Object given = object.get(tag);
    for (Kind<? extends T> kind : kinds) {
      if (kind.name().equals(given)) {
        return kind.form().read(object, tag, at, problems).map(value -> value);
      }
    }
    String names = kinds.stream().map(Kind::name).collect(Collectors.joining(", "));
    problems.add(
        at.field(tag),
        given == null
            ? Words.label(tag) + " is missing. It must be one of " + names + "."
            : Words.label(tag) + " (" + Words.shown(given) + ") must be one of " + names + ".");
    return Optional.empty();
  }

  @Override
  public Object write(T value) {
    for (Kind<? extends T> kind : kinds) {
      if (kind.covers(value)) {
        return write(kind, value);
      }
    }
    throw new IllegalArgumentException("No kind for " + value.getClass().getName());
  }

  private <K> Map<String, Object> write(Kind<K> kind, Object value) {
    Map<String, Object> written = new LinkedHashMap<>();
    written.put(tag, kind.name());
    written.putAll(kind.form().writeObject(kind.type().cast(value)));
    return written;
  }

  @Override
  public Map<String, Object> schema(Definitions definitions) {
    List<Object> choices = new ArrayList<>();
    for (Kind<? extends T> kind : kinds) {
      choices.add(kind.form().schemaWithTag(tag, kind.name(), definitions));
    }
    return Map.of("oneOf", choices);
  }
}
