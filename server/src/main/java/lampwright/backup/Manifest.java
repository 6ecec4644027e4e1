package lampwright.backup;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.document.Json;
import lampwright.schema.TableShape;

/**
 * What a backup is.
 *
 * @param madeBy the version of the program that made it
 * @param schema the number of the newest migration of the database
 * @param madeAt about the moment whose rows it has
 * @param tables whose rows it has, in their order in the file
 * @param pictures how many pictures' files it has, each in several sizes
 * @param pictureFiles how many files that makes
 * @param lost the hashes of pictures whose files were missing already
 * @param checksums the SHA-256 of the list of checksums
 */
public record Manifest(
    String madeBy,
    int schema,
    Instant madeAt,
    List<Rows> tables,
    long pictures,
    long pictureFiles,
    List<String> lost,
    String checksums) {

  private static final String FORMAT = "Lampwright backup 1";

  public Manifest {
    tables = List.copyOf(tables);
    lost = List.copyOf(lost);
  }

  /** A table and how many rows of it there are. */
  public record Rows(TableShape table, long count) {}

  /** All rows of all tables. */
  public long rows() {
    return tables.stream().mapToLong(Rows::count).sum();
  }

  String toJson() {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("format", FORMAT);
    json.put("made_by", madeBy);
    json.put("schema", schema);
    json.put("made_at", madeAt.toString());
    json.put("tables", tables.stream().map(Manifest::plain).toList());
    json.put("pictures", pictures);
    json.put("picture_files", pictureFiles);
    json.put("lost_pictures", lost);
    json.put("checksums_sha256", checksums);
    return Json.print(json);
  }

  private static Map<String, Object> plain(Rows rows) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("name", rows.table().name());
    json.put("columns", rows.table().columns());
    json.put("rows", rows.count());
    return json;
  }

  /** Empty where the text is no manifest of a format that this program reads. */
  static Optional<Manifest> parse(String text) {
    try {
      Part manifest = new Part(Json.parse(text));
      if (!manifest.text("format").equals(FORMAT)) {
        return Optional.empty();
      }
      List<Rows> tables = new ArrayList<>();
      for (Object table : manifest.list("tables")) {
        Part part = new Part(table);
        tables.add(
            new Rows(new TableShape(part.text("name"), part.texts("columns")), part.count("rows")));
      }
      return Optional.of(
          new Manifest(
              manifest.text("made_by"),
              Math.toIntExact(manifest.count("schema")),
              Instant.parse(manifest.text("made_at")),
              tables,
              manifest.count("pictures"),
              manifest.count("picture_files"),
              manifest.texts("lost_pictures"),
              manifest.text("checksums_sha256")));
    } catch (Json.NotJson | NotSo | DateTimeException | ArithmeticException e) {
      return Optional.empty();
    }
  }

  private static final class NotSo extends RuntimeException {
    private static final long serialVersionUID = 1L;
  }

  /** An object of JSON, whose keys are asked for as what they must be. */
  private record Part(Object plain) {

    Object at(String key) {
      Object value = plain instanceof Map<?, ?> map ? map.get(key) : null;
      if (value != null) {
        return value;
      }
      throw new NotSo();
    }

    String text(String key) {
      if (at(key) instanceof String text) {
        return text;
      }
      throw new NotSo();
    }

    long count(String key) {
      if (at(key) instanceof Number number
          && number.doubleValue() == number.longValue()
          && number.longValue() >= 0) {
        return number.longValue();
      }
      throw new NotSo();
    }

    List<?> list(String key) {
      if (at(key) instanceof List<?> list) {
        return list;
      }
      throw new NotSo();
    }

    List<String> texts(String key) {
      List<String> texts = new ArrayList<>();
      for (Object one : list(key)) {
        if (!(one instanceof String text)) {
          throw new NotSo();
        }
        texts.add(text);
      }
      return texts;
    }
  }
}
