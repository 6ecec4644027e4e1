package lampwright.schema;

import java.util.List;

/**
 * A table and the columns of it that are written; what the database generates from them is not
 * among them.
 *
 * @param name without the schema
 * @param columns in the table's order
 */
public record TableShape(String name, List<String> columns) {

  public TableShape {
    columns = List.copyOf(columns);
  }

  String quoted() {
    return Migrations.SCHEMA + "." + quoted(name);
  }

  String quotedWithColumns() {
    return quoted()
        + " ("
        + String.join(", ", columns.stream().map(TableShape::quoted).toList())
        + ")";
  }

  static String quoted(String identifier) {
    return '"' + identifier.replace("\"", "\"\"") + '"';
  }
}
