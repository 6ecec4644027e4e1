package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * What an address wishes, as names and values in their order; nothing of it is checked.
 *
 * <p>Beside the names of {@link WishName} there are some that carry what they are about after a
 * point: {@code head.key} is the head that is kept for the light "key", {@code dead.} and {@code
 * charge.} are about a head of the kit, {@code weight.} about a matter that counts.
 */
record WishPairs(List<Pair> pairs) {

  static final String KIT = KitForm.KIT;

  /** Which of the ways is shown. */
  static final String WAY = "way";

  /** The kit that the rest was said of, when a form is sent. */
  static final String SAID_OF = "for";

  static final String HEAD = "head.";
  static final String MODIFIER = "modifier.";
  static final String COUNT = "count.";
  static final String WITHOUT = "without";
  static final String GIVE_UP = "give_up";
  static final String DEAD = "dead.";
  static final String CHARGE = "charge.";
  static final String WEIGHT = "weight.";

  /** More than any form of ours has; a hostile address must not make a long page. */
  private static final int MOST = 400;

  /** A name and its value. */
  record Pair(String name, String value) {}

  WishPairs {
    pairs = List.copyOf(pairs);
  }

  /** Those of a query; empty fields, which forms send too, say nothing. */
  static WishPairs of(Map<String, List<String>> query) {
    List<Pair> pairs = new ArrayList<>();
    query.forEach(
        (name, values) ->
            values.stream()
                .filter(value -> !value.isBlank())
                .forEach(value -> pairs.add(new Pair(name, value.strip()))));
    return new WishPairs(pairs.stream().limit(MOST).toList());
  }

  Optional<String> find(String name) {
    return pairs.stream().filter(pair -> pair.name().equals(name)).map(Pair::value).findFirst();
  }

  boolean has(String name, String value) {
    return pairs.contains(new Pair(name, value));
  }

  /** The same with this value alone under its name. */
  WishPairs with(String name, String value) {
    return without(pair -> pair.name().equals(name)).and(name, value);
  }

  /** The same with one more. */
  WishPairs and(String name, String value) {
    List<Pair> more = new ArrayList<>(pairs);
    more.add(new Pair(name, value));
    return new WishPairs(more);
  }

  WishPairs without(Predicate<Pair> gone) {
    return new WishPairs(pairs.stream().filter(gone.negate()).toList());
  }

  /** The same for another question: the ways would be others. */
  WishPairs fromTheFirstWay() {
    return without(pair -> pair.name().equals(WAY));
  }

  /** The same without what only one kit can fulfil. */
  WishPairs forAnyKit() {
    return without(
        pair ->
            pair.name().equals(WishName.BODY.text())
                || pair.name().equals(WishName.LENS.text())
                || List.of(HEAD, MODIFIER, DEAD, CHARGE).stream()
                    .anyMatch(pair.name()::startsWith));
  }

  /** The pairs whose name begins so, with what follows in place of the name. */
  List<Pair> about(String prefix) {
    return pairs.stream()
        .filter(pair -> pair.name().startsWith(prefix))
        .map(pair -> new Pair(pair.name().substring(prefix.length()), pair.value()))
        .toList();
  }

  String address(String path) {
    Address address = Address.of(path);
    for (Pair pair : pairs) {
      address = address.with(pair.name(), pair.value());
    }
    return address.toString();
  }
}
