package lampwright.document;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * An object with named fields. Fields that it does not know are problems, so that a slip of the
 * keyboard is not lost in silence.
 *
 * @param <T> the record that the object stands for
 */
public final class ObjectForm<T> extends Form<T> {

  /** The fields that were read, for the record's constructor. */
  public static final class Values {
    private final Map<Object, Object> values;

    private Values(int most) {
      values = HashMap.newHashMap(most);
    }

    /** The value of a field of this object. */
    @SuppressWarnings("unchecked") // put() stores under a field only what that field has read
    public <V> V get(Field<?, V> field) {
      Object value = values.get(field.key());
      if (value == null) {
        throw new IllegalArgumentException("Field " + field.name() + " is not part of this form");
      }
      return (V) value;
    }

    private <V> void put(Field<?, V> field, V value) {
      values.put(field.key(), value);
    }
  }

  /** What an object as a whole must fulfil; adds a problem for each breach. */
  public interface Check<T> {
    void on(T value, Pointer at, Problems problems);
  }

  private final String name;
  private final String meaning;
  private final Function<Values, T> make;
  private final List<Field<T, ?>> fields;
  private final List<String> names;
  private final Set<String> known;
  private final Optional<Check<T>> check;

  private ObjectForm(
      String name,
      String meaning,
      Function<Values, T> make,
      List<Field<T, ?>> fields,
      Optional<Check<T>> check) {
    this.name = name;
    this.meaning = meaning;
    this.make = make;
    this.fields = fields;
    this.names = fields.stream().map(Field::name).toList();
    this.known = Set.copyOf(names);
    this.check = check;
  }

  /**
   * The form of a record.
   *
   * @param name what the schema calls it
   * @param meaning one sentence for the schema
   * @param make calls the record's constructor
   * @param fields in the order in which they are written
   */
  public static <T> ObjectForm<T> of(
      String name, String meaning, Function<Values, T> make, List<Field<T, ?>> fields) {
    return new ObjectForm<>(name, meaning, make, List.copyOf(fields), Optional.empty());
  }

  /**
   * The same form with a check over several fields. The schema cannot say it: say it in the
   * meaning.
   */
  public ObjectForm<T> checked(Check<T> by) {
    return new ObjectForm<>(name, meaning, make, fields, Optional.of(by));
  }

  /**
   * The form of an object that has all these fields and one more. It has no check.
   *
   * @param name what the schema calls it
   * @param more the further field, which is written last
   * @param part the object that has these fields, of the one that has all
   * @param join both together
   */
  public <U, V> ObjectForm<U> with(
      String name,
      String meaning,
      Field<U, V> more,
      Function<U, T> part,
      BiFunction<T, V, U> join) {
    List<Field<U, ?>> all = new ArrayList<>();
    for (Field<T, ?> field : fields) {
      all.add(field.within(part));
    }
    all.add(more);
    return of(name, meaning, values -> join.apply(make.apply(values), values.get(more)), all);
  }

  @Override
  public Optional<T> read(Object json, Pointer at, Problems problems) {
    if (!(json instanceof Map<?, ?> object)) {
      problems.add(at, Words.label(at) + " (" + Words.shown(json) + ") must be an object.");
      return Optional.empty();
    }
    return read(object, null, at, problems);
  }

  /** Reads an object that may have a tag besides its fields. */
  Optional<T> read(Map<?, ?> object, @Nullable String tag, Pointer at, Problems problems) {
    boolean sound = knowsAll(object, tag, at, problems);
    Values values = new Values(fields.size());
    for (Field<T, ?> field : fields) {
      sound &= readField(field, object, at, problems, values);
    }
    if (!sound) {
      return Optional.empty();
    }
    T value = make.apply(values);
    if (check.isEmpty()) {
      return Optional.of(value);
    }
    Problems breaches = new Problems();
    check.ifPresent(c -> c.on(value, at, breaches));
    breaches.list().forEach(p -> problems.add(new Pointer(p.pointer()), p.message()));
    return breaches.isEmpty() ? Optional.of(value) : Optional.empty();
  }

  private boolean knowsAll(Map<?, ?> object, @Nullable String tag, Pointer at, Problems problems) {
    boolean all = true;
    for (Object key : object.keySet()) {
      if (!known.contains(key.toString()) && !key.equals(tag)) {
        problems.add(
            at.field(key.toString()),
            "There is no field "
                + Words.shown(key)
                + " here. Known are: "
                + String.join(", ", names)
                + ".");
        all = false;
      }
    }
    return all;
  }

  private <V> boolean readField(
      Field<T, V> field, Map<?, ?> object, Pointer at, Problems problems, Values values) {
    Object json = object.get(field.name());
    Optional<V> value;
    if (json != null) {
      value = field.read(json, at.field(field.name()), problems);
    } else {
      value = field.absent();
      if (value.isEmpty()) {
        problems.add(
            at.field(field.name()), Words.label(field.name()) + " is missing. " + field.meaning());
      }
    }
    value.ifPresent(v -> values.put(field, v));
    return value.isPresent();
  }

  @Override
  public Object write(T value) {
    return writeObject(value);
  }

  /** What the fields are called, in order. */
  public List<String> fieldNames() {
    return names;
  }

  /** The object's fields in order; fields that stand for their usual value are left out. */
  public Map<String, Object> writeObject(T value) {
    Map<String, Object> written = new LinkedHashMap<>();
    for (Field<T, ?> field : fields) {
      field.write(value).ifPresent(json -> written.put(field.name(), json));
    }
    return written;
  }

  @Override
  public Map<String, Object> schema(Definitions definitions) {
    return definitions.reference(name, this, () -> body(Map.of(), definitions));
  }

  Map<String, Object> schemaWithTag(String tag, String kind, Definitions definitions) {
    return definitions.reference(
        name, this, () -> body(Map.of(tag, Map.of("const", kind)), definitions));
  }

  private Map<String, Object> body(Map<String, Object> tags, Definitions definitions) {
    Map<String, Object> properties = new LinkedHashMap<>(tags);
    List<String> required = new ArrayList<>(tags.keySet());
    for (Field<T, ?> field : fields) {
      Map<String, Object> schema = new LinkedHashMap<>(field.form().schema(definitions));
      schema.put("description", field.meaning());
      properties.put(field.name(), schema);
      if (field.isRequired()) {
        required.add(field.name());
      }
    }
    Map<String, Object> body = new LinkedHashMap<>();
    body.put("description", meaning);
    body.put("type", "object");
    body.put("properties", properties);
    body.put("required", required);
    body.put("additionalProperties", false);
    return body;
  }
}
