package lampwright.document;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * One field of an object: its name, its form, how to get it from the object.
 *
 * @param <T> the object
 * @param <V> what the object keeps: for an optional field an {@link Optional}
 */
public final class Field<T, V> {

  private final String name;
  private final String meaning;
  private final boolean required;
  private final FieldForm<V> form;
  private final Function<T, V> getter;

  /** What was read stands under it; a field and its {@link #within} have one. */
  private final Object key;

  /** A form that can also stand for an absent field. */
  private record FieldForm<V>(
      ReadingOf<V> read, Optional<V> absent, Function<V, Optional<Object>> write, Form<?> inner) {}

  /** Reads a present field. */
  private interface ReadingOf<V> {
    Optional<V> read(Object json, Pointer at, Problems problems);
  }

  private Field(
      String name,
      String meaning,
      boolean required,
      FieldForm<V> form,
      Function<T, V> getter,
      Object key) {
    this.name = name;
    this.meaning = meaning;
    this.required = required;
    this.form = form;
    this.getter = getter;
    this.key = key;
  }

  /**
   * A field that must be there.
   *
   * @param meaning one sentence for the schema
   */
  public static <T, V> Field<T, V> required(
      String name, Form<V> form, Function<T, V> getter, String meaning) {
    return new Field<>(
        name,
        meaning,
        true,
        new FieldForm<>(
            form::read, Optional.empty(), value -> Optional.of(form.write(value)), form),
        getter,
        new Object());
  }

  /** A field that may be left out. */
  public static <T, V> Field<T, Optional<V>> optional(
      String name, Form<V> form, Function<T, Optional<V>> getter, String meaning) {
    return new Field<>(
        name,
        meaning,
        false,
        new FieldForm<>(
            (json, at, problems) -> {
              Optional<V> present = form.read(json, at, problems);
              return present.isPresent() ? Optional.of(present) : Optional.empty();
            },
            Optional.of(Optional.empty()),
            value -> value.map(form::write),
            form),
        getter,
        new Object());
  }

  /** A field that stands for a usual value when it is left out; the usual value is not written. */
  public static <T, V> Field<T, V> usually(
      V usual, String name, Form<V> form, Function<T, V> getter, String meaning) {
    return new Field<>(
        name,
        meaning,
        false,
        new FieldForm<>(
            form::read,
            Optional.of(usual),
            value -> value.equals(usual) ? Optional.empty() : Optional.of(form.write(value)),
            form),
        getter,
        new Object());
  }

  /** A list that is empty when it is left out. */
  public static <T, V> Field<T, List<V>> list(
      String name, Form<V> item, int most, Function<T, List<V>> getter, String meaning) {
    return usually(List.of(), name, Forms.list(item, 0, most), getter, meaning);
  }

  /** The same field of an object that the owner is a part of. */
  <U> Field<U, V> within(Function<U, T> part) {
    return new Field<>(
        name, meaning, required, form, owner -> getter.apply(part.apply(owner)), key);
  }

  Object key() {
    return key;
  }

  String name() {
    return name;
  }

  String meaning() {
    return meaning;
  }

  boolean isRequired() {
    return required;
  }

  Form<?> form() {
    return form.inner();
  }

  Optional<V> read(Object json, Pointer at, Problems problems) {
    return form.read().read(json, at, problems);
  }

  Optional<V> absent() {
    return form.absent();
  }

  Optional<Object> write(T owner) {
    return form.write().apply(getter.apply(owner));
  }
}
