package lampwright.benchmarks.crash;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a client knows of a setup that it made: everything that was acknowledged, and the one change
 * of which it does not know what became.
 */
final class Thing {

  /** The word that stands in every title of it and in nothing else. */
  final String word;

  /** Under which it is made, where a key came along; sending it again makes nothing. */
  final Optional<String> key;

  /** The title of each revision that was acknowledged, and of a deletion nothing. */
  final Map<Integer, String> acknowledged = new TreeMap<>();

  /** The hashes of the pictures that were acknowledged, as the server told them, by their ids. */
  final Map<String, String> pictures = new TreeMap<>();

  /** The ids of takes and notes that were acknowledged, as addresses. */
  final List<String> beside = new ArrayList<>();

  String address = "";
  boolean isDeleted;
  Optional<Doubt> doubt = Optional.empty();

  /**
   * A change that was sent and not answered.
   *
   * @param title what it would be called after; empty for a deletion
   */
  record Doubt(String title) {}

  Thing(String word, Optional<String> key) {
    this.word = word;
    this.key = key;
  }

  int revision() {
    return acknowledged.keySet().stream().reduce(0, Math::max);
  }

  String title() {
    return acknowledged.getOrDefault(revision(), "");
  }

  /** Whether it was made for certain. */
  boolean isMade() {
    return !address.isEmpty();
  }
}
