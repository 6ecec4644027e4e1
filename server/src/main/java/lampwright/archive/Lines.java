package lampwright.archive;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.document.Json;
import lampwright.document.ObjectForm;
import lampwright.document.Pointer;
import lampwright.document.Problems;

/** The lines of one of an archive's files, one JSON value each, one after the other. */
final class Lines {

  private final String file;
  private final InputStream in;
  private final int longest;
  private int number;

  Lines(String file, InputStream in, Limits limits) {
    this.file = file;
    this.in = new BufferedInputStream(in, 1 << 16);
    this.longest = limits.lineBytes();
  }

  /** The number of the line that was read last, from 1. */
  int number() {
    return number;
  }

  /**
   * The next line's value by its form.
   *
   * @param faults gets what is wrong with it
   * @return empty after the last
   * @throws Unsound where the line cannot be read at all
   */
  <T> Optional<Line<T>> next(ObjectForm<T> form, Faults faults) throws IOException, Unsound {
    Optional<String> text = text();
    if (text.isEmpty()) {
      return Optional.empty();
    }
    Object json;
    try {
      json = Json.parse(text.get());
    } catch (Json.NotJson e) {
      throw new Unsound(Fault.ofLine(file, number, "The line is not JSON. " + e.getMessage()));
    }
    mustBeKeepable(json);
    Problems problems = new Problems();
    Optional<T> value = form.read(json, Pointer.root(), problems);
    faults.add(file, number, problems);
    return Optional.of(new Line<>(value, number));
  }

  /**
   * One line.
   *
   * @param value empty where it was faulty
   */
  record Line<T>(Optional<T> value, int number) {}

  private Optional<String> text() throws IOException, Unsound {
    ByteArrayOutputStream line = new ByteArrayOutputStream();
    int one = in.read();
    if (one < 0) {
      return Optional.empty();
    }
    number++;
    while (one >= 0 && one != '\n') {
      if (line.size() >= longest) {
        throw new Unsound(
            Fault.ofLine(file, number, "The line must have at most " + longest + " bytes."));
      }
      line.write(one);
      one = in.read();
    }
    try {
      return Optional.of(
          StandardCharsets.UTF_8
              .newDecoder()
              .decode(ByteBuffer.wrap(line.toByteArray()))
              .toString());
    } catch (CharacterCodingException e) {
      throw new Unsound(Fault.ofLine(file, number, "The line is not UTF-8."));
    }
  }

  /** What JSON can say and no database of ours can keep. */
  private void mustBeKeepable(Object json) throws Unsound {
    switch (json) {
      case String text when text.codePoints().anyMatch(Lines::isUnkeepable) ->
          throw new Unsound(
              Fault.ofLine(file, number, "A text holds U+0000 or half of a character."));
      case Double value when value.isInfinite() || value.isNaN() ->
          throw new Unsound(Fault.ofLine(file, number, "A number is larger than any kept here."));
      case List<?> list -> {
        for (Object item : list) {
          mustBeKeepable(item);
        }
      }
      case Map<?, ?> map -> {
        for (Map.Entry<?, ?> entry : map.entrySet()) {
          mustBeKeepable(entry.getKey());
          mustBeKeepable(entry.getValue());
        }
      }
      default -> {}
    }
  }

  private static boolean isUnkeepable(int codePoint) {
    return codePoint == 0
        || (codePoint >= Character.MIN_SURROGATE && codePoint <= Character.MAX_SURROGATE);
  }
}
