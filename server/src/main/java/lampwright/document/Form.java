package lampwright.document;

import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * How values of one type stand in JSON.
 *
 * <p>JSON values are plain Java values: {@code Map<String, Object>} in the order written, {@code
 * List<Object>}, {@link String}, {@link Double} or {@link Long}, {@link Boolean} and {@link
 * JsonNull}.
 *
 * @param <T> the type; immutable
 */
public abstract class Form<T> {

  /**
   * Reads a JSON value.
   *
   * @return the value; empty where at least one problem was added
   */
  public abstract Optional<T> read(Object json, Pointer at, Problems problems);

  /** Writes a value so that {@link #read} gives an equal one. */
  public abstract Object write(T value);

  /** Describes the form as JSON Schema 2020-12; named objects go to the definitions. */
  public abstract Map<String, Object> schema(Definitions definitions);

  /** Reads a whole document. */
  public final Reading<T> read(Object json) {
    Problems problems = new Problems();
    Optional<T> value = read(json, Pointer.root(), problems);
    if (value.isPresent() && problems.isEmpty()) {
      return new Reading.Sound<>(value.get());
    }
    return new Reading.Faulty<>(problems.list());
  }

  /**
   * The same JSON for another Java type. Every value that this form reads must be acceptable to
   * {@code to}: bounds belong into this form, so that the schema states them.
   */
  public final <U> Form<U> as(Function<T, U> to, Function<U, T> from) {
    Form<T> inner = this;
    return new Form<>() {
      @Override
      public Optional<U> read(Object json, Pointer at, Problems problems) {
        return inner.read(json, at, problems).map(to);
      }

      @Override
      public Object write(U value) {
        return inner.write(from.apply(value));
      }

      @Override
      public Map<String, Object> schema(Definitions definitions) {
        return inner.schema(definitions);
      }
    };
  }
}
