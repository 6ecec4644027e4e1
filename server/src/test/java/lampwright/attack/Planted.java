package lampwright.attack;

import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.IntFunction;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.document.Json;
import org.jspecify.annotations.Nullable;

/** Documents with a text of the attacker's in the place of one of theirs. */
public final class Planted {

  private Planted() {}

  /** How many texts a document holds. */
  public static int texts(Object plain) {
    return switch (plain) {
      case String _ -> 1;
      case Map<?, ?> map -> map.values().stream().mapToInt(Planted::texts).sum();
      case List<?> list -> list.stream().mapToInt(Planted::texts).sum();
      default -> 0;
    };
  }

  /** The same document with the text of a number in the place of that one of its own. */
  public static Object in(Object plain, int number, String text) {
    return new Walk(i -> i == number ? text : null).of(plain);
  }

  /**
   * The same document with a text behind every one of its own that may hold it, as what keeps it
   * says: what is refused at a place gets its own text back.
   *
   * @param keep tries to keep a document
   * @return the address of what was kept
   */
  public static String everywhere(
      Object plain, String text, Function<String, HttpResponse<String>> keep) {
    Set<String> without = new TreeSet<>();
    for (int tries = 0; tries < 40; tries++) {
      HttpResponse<String> answer = keep.apply(Json.print(behind(plain, "", text, without)));
      if (answer.statusCode() == 201) {
        return answer.headers().firstValue("Location").orElseThrow();
      }
      if (answer.statusCode() != 422) {
        throw new AssertionError(answer.body());
      }
      int before = without.size();
      for (Object error : Told.list(Visitor.object(answer), "errors")) {
        without.add(String.valueOf(Told.at(error, "pointer")));
      }
      if (without.size() == before) {
        throw new AssertionError(answer.body());
      }
    }
    throw new AssertionError("It is refused again and again: " + without);
  }

  private static Object behind(Object plain, String at, String text, Set<String> without) {
    return switch (plain) {
      case String own ->
          without.stream().anyMatch(place -> at.equals(place) || at.startsWith(place + "/"))
              ? own
              : own + text;
      case Map<?, ?> map -> {
        Map<String, Object> copy = new LinkedHashMap<>();
        map.forEach(
            (key, value) -> copy.put(key.toString(), behind(value, at + "/" + key, text, without)));
        yield copy;
      }
      case List<?> list -> {
        List<Object> copy = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
          copy.add(behind(list.get(i), at + "/" + i, text, without));
        }
        yield copy;
      }
      default -> plain;
    };
  }

  /** A visit of every text in its order. */
  private static final class Walk {

    private final IntFunction<@Nullable String> other;
    private int next;

    Walk(IntFunction<@Nullable String> other) {
      this.other = other;
    }

    Object of(Object plain) {
      return switch (plain) {
        case String text -> {
          String replaced = other.apply(next++);
          yield replaced == null ? text : replaced;
        }
        case Map<?, ?> map -> {
          Map<String, Object> copy = new LinkedHashMap<>();
          map.forEach((key, value) -> copy.put(key.toString(), of(value)));
          yield copy;
        }
        case List<?> list -> {
          List<Object> copy = new ArrayList<>();
          list.forEach(item -> copy.add(of(item)));
          yield copy;
        }
        default -> plain;
      };
    }
  }
}
