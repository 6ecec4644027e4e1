package lampwright.tasks;

import java.time.Duration;
import java.util.Optional;
import java.util.function.Function;
import lampwright.people.Ids;
import lampwright.store.MadeOnce;
import lampwright.store.StudioTransaction;

/**
 * Under which key something is made, so that the same request makes it once however often it comes:
 * the key and what was made under it are kept in one transaction. A key is a person's own, in one
 * studio, for {@link #KEPT}.
 *
 * @param key absent where each request makes something new
 */
public record Once(Optional<Key> key) {

  /** How long a key is remembered at the least. */
  public static final Duration KEPT = Duration.ofDays(7);

  /**
   * A key with what it is for.
   *
   * @param fingerprint hexadecimal SHA-256 of all that makes out the request
   */
  public record Key(String text, String fingerprint) {}

  /** Each time anew. */
  public static Once unkeyed() {
    return new Once(Optional.empty());
  }

  /** Under a key; see {@link Key}. */
  public static Once keyed(String key, String fingerprint) {
    return new Once(Optional.of(new Key(key, fingerprint)));
  }

  /**
   * Makes something, or finds what was made under the key before, as it is now.
   *
   * @param make makes it under an id
   * @param find finds what has an id
   * @throws Refused KeyReused where the key was taken for another request, Clash where what was
   *     made has been taken away since
   */
  <T> T make(
      StudioTransaction in, Ids ids, Function<String, T> make, Function<String, Optional<T>> find) {
    String id = ids.next();
    Optional<MadeOnce.Before> before = key.flatMap(of -> take(in, of, id));
    if (before.isEmpty()) {
      return make.apply(id);
    }
    if (!before.get().isSame()) {
      throw new Refused(new Refusal.KeyReused());
    }
    return find.apply(before.get().id())
        .orElseThrow(
            () ->
                new Refused(
                    new Refusal.Clash(
                        "What was made under this key has been taken away since. Use a new key.")));
  }

  private static Optional<MadeOnce.Before> take(StudioTransaction in, Key key, String id) {
    return new MadeOnce(in).take(key.text(), key.fingerprint(), id, KEPT);
  }
}
