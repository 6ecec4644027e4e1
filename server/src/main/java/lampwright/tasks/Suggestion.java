package lampwright.tasks;

import java.util.OptionalLong;

/** What a search that is being typed may become. */
public sealed interface Suggestion {

  /** What people read: {@code quarry}. */
  String words();

  /** What it is: {@code Kind of place}. */
  String kind();

  /**
   * A search with one more mark in brackets, or with the name of a mark to go on from.
   *
   * @param text of the whole search
   * @param count how many setups the mark by itself finds; none before it is whole
   */
  record Text(String words, String kind, String text, OptionalLong count) implements Suggestion {}

  /**
   * A setup by its title.
   *
   * @param id of the setup
   */
  record Setup(String words, String id) implements Suggestion {

    @Override
    public String kind() {
      return "Setup";
    }
  }
}
