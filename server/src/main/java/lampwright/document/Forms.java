package lampwright.document;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** The simple forms: numbers, text, choices, flags, dates, lists. */
public final class Forms {

  private static final String DATE_TIME =
      "^\\d{4}-\\d{2}-\\d{2}T\\d{2}:\\d{2}:\\d{2}(\\.\\d{1,9})?(Z|[+-](0\\d|1[0-4]):[0-5]\\d)$";

  private Forms() {}

  /** Any finite number; {@code unit} follows it in messages and may be empty. */
  public static NumberForm number(String unit) {
    return new NumberForm(
        unit,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        false);
  }

  /** A whole number between two bounds, both included. */
  public static Form<Integer> count(int atLeast, int atMost) {
    return number("")
        .wholeOnly()
        .atLeast(atLeast)
        .atMost(atMost)
        .as(Double::intValue, Integer::doubleValue);
  }

  /** Text that is not blank, of at most so many characters (Unicode code points). */
  public static TextForm text(int longest) {
    return TextForm.upTo(longest);
  }

  /** A calendar date, {@code 2024-10-03}. */
  public static Form<LocalDate> date() {
    return text(10)
        .like("^\\d{4}-\\d{2}-\\d{2}$", Forms::isDate, "a date such as 2024-10-03")
        .as(LocalDate::parse, LocalDate::toString);
  }

  /** A time of day to the minute, {@code 18:40}. */
  public static Form<LocalTime> timeOfDay() {
    return text(5)
        .like("^([01]\\d|2[0-3]):[0-5]\\d$", Forms::isTimeOfDay, "a time of day such as 18:40")
        .as(LocalTime::parse, LocalTime::toString);
  }

  /** How far a clock is ahead of universal time, {@code +01:00}; read up to 14:59. */
  public static Form<ZoneOffset> utcOffset() {
    return text(6)
        .like(
            "^[+-](0\\d|1[0-4]):[0-5]\\d$",
            written -> written.matches("[+-](0\\d|1[0-4]):[0-5]\\d"),
            "hours and minutes ahead of universal time such as +01:00")
        .as(ZoneOffset::of, Forms::writtenOffset);
  }

  /**
   * A moment with the offset of the clocks that told it (RFC 3339), {@code
   * 2025-09-12T19:13:00+01:00}; to the nanosecond, without leap seconds, offsets up to 14:59.
   */
  public static Form<OffsetDateTime> dateTime() {
    return text(40)
        .like(
            DATE_TIME,
            Forms::isDateTime,
            "a date and time with the clock's offset such as 2025-09-12T19:13:00+01:00")
        .as(OffsetDateTime::parse, DateTimeFormatter.ISO_OFFSET_DATE_TIME::format);
  }

  /** The JDK writes zero as one letter. */
  private static String writtenOffset(ZoneOffset offset) {
    return offset.equals(ZoneOffset.UTC) ? "+00:00" : offset.getId();
  }

  private static boolean isDateTime(String text) {
    try {
      return text.matches(DATE_TIME) && OffsetDateTime.parse(text).getYear() > 0;
    } catch (DateTimeParseException noSuchMoment) {
      return false;
    }
  }

  private static boolean isDate(String text) {
    try {
      return text.length() == 10 && LocalDate.parse(text).getYear() > 0;
    } catch (DateTimeParseException notADate) {
      return false;
    }
  }

  private static boolean isTimeOfDay(String text) {
    try {
      return text.length() == 5 && LocalTime.parse(text).getSecond() == 0;
    } catch (DateTimeParseException notATime) {
      return false;
    }
  }

  /** True or false. */
  public static Form<Boolean> flag() {
    return new Form<>() {
      @Override
      public Optional<Boolean> read(Object json, Pointer at, Problems problems) {
        if (json instanceof Boolean truth) {
          return Optional.of(truth);
        }
        problems.add(at, Words.label(at) + " (" + Words.shown(json) + ") must be true or false.");
        return Optional.empty();
      }

      @Override
      public Object write(Boolean value) {
        return value;
      }

      @Override
      public Map<String, Object> schema(Definitions definitions) {
        return Map.of("type", "boolean");
      }
    };
  }

  /** One of an enum's constants, in lower case. */
  public static <E extends Enum<E>> Form<E> choice(E[] constants) {
    Map<String, E> byName = new LinkedHashMap<>();
    for (E constant : constants) {
      byName.put(constant.name().toLowerCase(Locale.ROOT), constant);
    }
    String names = byName.keySet().stream().collect(Collectors.joining(", "));
    return new Form<>() {
      @Override
      public Optional<E> read(Object json, Pointer at, Problems problems) {
        if (json instanceof String text && byName.containsKey(text)) {
          return Optional.of(byName.get(text));
        }
        problems.add(
            at, Words.label(at) + " (" + Words.shown(json) + ") must be one of " + names + ".");
        return Optional.empty();
      }

      @Override
      public Object write(E value) {
        return value.name().toLowerCase(Locale.ROOT);
      }

      @Override
      public Map<String, Object> schema(Definitions definitions) {
        return Map.of("enum", List.copyOf(byName.keySet()));
      }
    };
  }

  /** A list of so many items, each of the same form. */
  public static <T> Form<List<T>> list(Form<T> item, int fewest, int most) {
    return new Form<>() {
      @Override
      public Optional<List<T>> read(Object json, Pointer at, Problems problems) {
        if (!(json instanceof List<?> items)) {
          problems.add(at, Words.label(at) + " (" + Words.shown(json) + ") must be a list.");
          return Optional.empty();
        }
        if (items.size() < fewest || items.size() > most) {
          problems.add(
              at,
              Words.label(at)
                  + " ("
                  + items.size()
                  + " items) must have "
                  + (items.size() < fewest ? "at least " + fewest : "at most " + most)
                  + ".");
          return Optional.empty();
        }
        List<T> values = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
          item.read(items.get(i), at.item(i), problems).ifPresent(values::add);
        }
        return values.size() == items.size() ? Optional.of(List.copyOf(values)) : Optional.empty();
      }

      @Override
      public Object write(List<T> values) {
        return values.stream().map(item::write).toList();
      }

      @Override
      public Map<String, Object> schema(Definitions definitions) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "array");
        schema.put("items", item.schema(definitions));
        schema.put("minItems", fewest);
        schema.put("maxItems", most);
        return schema;
      }
    };
  }

  /**
   * One of several kinds of object, told apart by the text in one field.
   *
   * @param tag the field
   * @param kinds the forms by the tag's text; the tag is written first
   */
  public static <T> Form<T> oneOf(String tag, List<Kind<? extends T>> kinds) {
    return new KindForm<>(tag, List.copyOf(kinds));
  }

  /**
   * One kind of a {@link #oneOf}.
   *
   * @param is whether a value of this type is of this kind, where several kinds have one type
   */
  public record Kind<K>(String name, Class<K> type, Predicate<K> is, ObjectForm<K> form) {

    /** A kind that has the type for itself. */
    public Kind(String name, Class<K> type, ObjectForm<K> form) {
      this(name, type, _ -> true, form);
    }

    boolean covers(Object value) {
      return type.isInstance(value) && is.test(type.cast(value));
    }
  }
}
