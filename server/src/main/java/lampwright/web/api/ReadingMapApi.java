package lampwright.web.api;

import static lampwright.document.Field.required;

import io.javalin.http.Context;
import java.util.List;
import lampwright.document.Field;
import lampwright.document.Form;
import lampwright.document.ObjectForm;
import lampwright.setup.MapQuestion;
import lampwright.setup.SetupDocument;
import lampwright.tasks.Adapting;
import lampwright.web.http.Door;

/** What a meter would read all over a plane; computed, not stored. */
public final class ReadingMapApi {

  private final Door door;
  private final Adapting adapting;

  public ReadingMapApi(Door door, Adapting adapting) {
    this.door = door;
    this.adapting = adapting;
  }

  /** A setup of the caller's own, and what is asked of it. */
  private record Own(SetupDocument document, MapQuestion map) {

    private static final Field<Own, SetupDocument> DOCUMENT =
        required("document", SetupDocument.FORM, Own::document, "The setup.");
    private static final Field<Own, MapQuestion> MAP =
        required("map", MapQuestion.FORM, Own::map, "What the map is to show.");

    static final ObjectForm<Own> FORM =
        ObjectForm.of(
            "own_reading_map_request",
            "Map the light of a setup in the body.",
            values -> new Own(values.get(DOCUMENT), values.get(MAP)),
            List.of(DOCUMENT, MAP));
  }

  /** What is read here beside the documents themselves. */
  static List<Form<?>> forms() {
    return List.of(MapQuestion.FORM, Own.FORM);
  }

  /** The levels of a setup of the catalogue. */
  public void map(Context context) {
    MapQuestion question = Documents.read(context, MapQuestion.FORM);
    context.json(
        ReadingMapJson.of(
            adapting.map(
                door.caller(context), SetupApi.studio(context), SetupApi.setup(context), question),
            question));
  }

  /** The levels of a document in the body. */
  public void mapBody(Context context) {
    Own own = Documents.read(context, Own.FORM);
    context.json(
        ReadingMapJson.of(
            adapting.map(door.caller(context), SetupApi.studio(context), own.document(), own.map()),
            own.map()));
  }
}
