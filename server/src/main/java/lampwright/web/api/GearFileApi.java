package lampwright.web.api;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.document.Json;
import lampwright.gear.exchange.FiledGear;
import lampwright.gear.exchange.GearFile;
import lampwright.gear.exchange.GearList;
import lampwright.gear.exchange.GearTable;
import lampwright.gear.exchange.GearTableReader;
import lampwright.gear.stock.GearKind;
import lampwright.tasks.GearImport;
import lampwright.tasks.GearImporting;
import lampwright.tasks.GearKeeping;
import lampwright.tasks.Refused;
import lampwright.web.http.Body;
import lampwright.web.http.Door;

/** A studio's gear as a file: out, and in again. */
public final class GearFileApi {

  private static final String FORMAT = "format";
  private static final String TRIAL = "trial";
  private static final String MESSAGE = "message";
  private static final String CSV = "text/csv";
  private static final String JSON = "application/json";

  private final Door door;
  private final GearKeeping gear;
  private final GearImporting importing;

  public GearFileApi(Door door, GearKeeping gear, GearImporting importing) {
    this.door = door;
    this.gear = gear;
    this.importing = importing;
  }

  /** What is read here. */
  static List<Form<?>> forms() {
    return List.of(GearList.entryForm());
  }

  private enum Format {
    JSON,
    CSV
  }

  private record FaultJson(Optional<Integer> column, String pointer, String message) {}

  private record LineJson(
      int number,
      String outcome,
      Optional<String> id,
      Optional<String> name,
      List<FaultJson> faults) {

    static LineJson of(GearImport.Line line) {
      return new LineJson(
          line.number(),
          word(line.outcome()),
          line.id().map(id -> id.text()),
          line.name(),
          line.faults().stream()
              .map(fault -> new FaultJson(fault.column(), fault.pointer(), fault.message()))
              .toList());
    }
  }

  private record ImportJson(
      boolean trial, Map<String, Integer> counts, List<LineJson> lines, Optional<String> clash) {

    static ImportJson of(GearImport done) {
      Map<String, Integer> counts = new LinkedHashMap<>();
      for (GearImport.Outcome outcome : GearImport.Outcome.values()) {
        counts.put(word(outcome), done.count(outcome));
      }
      return new ImportJson(
          done.trial(), counts, done.lines().stream().map(LineJson::of).toList(), done.clash());
    }
  }

  private static String word(GearImport.Outcome outcome) {
    return outcome.name().toLowerCase(Locale.ROOT);
  }

  /** All of it as JSON, or one kind as a table: {@code ?format=csv&kind=head}. */
  public void show(Context context) {
    Query query = new Query(context, Set.of(FORMAT, GearApi.KIND));
    Format format = query.text(FORMAT, Forms.choice(Format.values())).orElse(Format.JSON);
    Optional<GearKind> kind = query.text(GearApi.KIND, GearKind.FORM);
    query.mustBeSound();
    if (format == Format.CSV && kind.isEmpty()) {
      throw Refused.invalid(
          "/kind", "Kind is missing. A table holds one kind, since each has columns of its own.");
    }
    List<FiledGear> filed =
        gear.listAll(door.caller(context), SetupApi.studio(context), kind).stream()
            .map(kept -> new FiledGear(kept.id(), kept.document()))
            .toList();
    String name = kind.map(GearKind::word).orElse("gear");
    if (format == Format.CSV) {
      send(context, name + ".csv", CSV + "; charset=utf-8", GearTable.write(kind.get(), filed));
    } else {
      send(context, name + ".json", JSON, Json.print(GearList.write(filed)));
    }
  }

  private static void send(Context context, String name, String type, String text) {
    context.header("Content-Disposition", "attachment; filename=\"" + name + "\"");
    context.result(text.getBytes(StandardCharsets.UTF_8)).contentType(type);
  }

  /** Takes a file in; with {@code ?trial=true} says what that would do. */
  public void take(Context context) {
    Query query = new Query(context, Set.of(TRIAL, MESSAGE));
    boolean trial = query.flag(TRIAL);
    query.mustBeSound();
    GearFile file =
        Body.isTable(context)
            ? GearTableReader.read(Body.table(context))
            : GearList.read(Body.json(context));
    context.json(
        ImportJson.of(
            importing.take(
                door.caller(context),
                SetupApi.studio(context),
                file,
                trial,
                Messages.of(context))));
  }
}
