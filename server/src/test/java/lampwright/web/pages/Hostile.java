package lampwright.web.pages;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Optional;

/**
 * Copies a page's record with markup planted in every text. Reflection, so that a slot added later
 * cannot be forgotten; in tests only.
 */
final class Hostile {

  static final String PLANTED =
      "<script>alert(1)</script>\"' onmouseover=\"x\" <b class=planted>&lt;</b>"
          + "<i class='planted'>";

  private int count;

  /** How many texts were changed. */
  int count() {
    return count;
  }

  Record rewrite(Record value) {
    RecordComponent[] components = value.getClass().getRecordComponents();
    Class<?>[] types = new Class<?>[components.length];
    Object[] values = new Object[components.length];
    try {
      for (int i = 0; i < components.length; i++) {
        types[i] = components[i].getType();
        var accessor = components[i].getAccessor();
        accessor.setAccessible(true);
        values[i] = rewritten(accessor.invoke(value));
      }
      var constructor = value.getClass().getDeclaredConstructor(types);
      constructor.setAccessible(true);
      return (Record) constructor.newInstance(values);
    } catch (NoSuchMethodException
        | IllegalAccessException
        | InstantiationException
        | InvocationTargetException e) {
      throw new IllegalStateException("Cannot rewrite " + value.getClass(), e);
    }
  }

  private Object rewritten(Object value) {
    return switch (value) {
      case String text -> {
        count++;
        yield text + PLANTED;
      }
      case List<?> list -> list.stream().map(this::rewritten).toList();
      case Optional<?> optional -> optional.map(this::rewritten);
      case Record record -> rewrite(record);
      default -> value;
    };
  }
}
