package lampwright.web.api;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lampwright.document.Definitions;
import lampwright.document.Form;
import lampwright.document.Json;
import lampwright.gear.Kit;
import lampwright.gear.calibration.CalibrationSheet;
import lampwright.setup.SetupDocument;
import lampwright.setup.adapting.Limits;

/**
 * The API's description of itself (OpenAPI 3.1). What is written by hand stands in the resources of
 * {@link #PARTS}, one a subject, each with paths and components; the schemas of what is read come
 * from the forms that read it, so that the two cannot disagree.
 */
public final class OpenApi {

  private static final String FOLDER = "/lampwright/openapi/";

  /** In the order in which the subjects are told; the first says what holds for all. */
  private static final List<String> PARTS =
      List.of(
          "description",
          "server",
          "people",
          "account",
          "leaving",
          "members",
          "setups",
          "suggestions",
          "shown-pictures",
          "saved-searches",
          "histories",
          "figures",
          "signature",
          "reading-maps",
          "adapting",
          "reacting",
          "sheet",
          "packing",
          "kits",
          "gear",
          "calibration",
          "locations",
          "takes-and-notes",
          "drills",
          "trails",
          "pictures",
          "share-links",
          "archives",
          "audit",
          "index");

  private static final String IN_A_SCHEMA = "#/$defs/";
  private static final String IN_THE_DESCRIPTION = "#/components/schemas/";

  private final String description;

  public OpenApi() {
    List<Form<?>> forms =
        new ArrayList<>(List.of(SetupDocument.FORM, Kit.FORM, Limits.FORM, CalibrationSheet.FORM));
    forms.addAll(ComputingApi.forms());
    forms.addAll(ReadingMapApi.forms());
    forms.addAll(ReactionApi.forms());
    forms.add(SessionApi.credentialsForm());
    forms.addAll(AccountApi.forms());
    forms.addAll(SecondFactorApi.forms());
    forms.add(TokenApi.wishForm());
    forms.add(LeavingApi.form());
    forms.add(PreferencesApi.form());
    forms.add(StudioApi.form());
    forms.add(MemberApi.form());
    forms.add(InvitationApi.form());
    forms.add(InvitationApi.answerForm());
    forms.add(UsedApi.form());
    forms.addAll(HistoryApi.forms());
    forms.add(LocationApi.form());
    forms.addAll(TakeApi.forms());
    forms.add(NoteApi.form());
    forms.add(ShareLinkApi.form());
    forms.add(DrillApi.form());
    forms.addAll(TrailApi.forms());
    forms.add(ProposalApi.form());
    forms.add(SavedSearchApi.form());
    forms.add(PictureApi.form());
    forms.addAll(GearApi.forms());
    forms.addAll(GearFileApi.forms());
    description = Json.print(completed(byHand(), Definitions.of(forms)));
  }

  /** Shows it. */
  public void show(Context context) {
    context.header("Cache-Control", "public, max-age=300");
    context.result(description).contentType("application/json");
  }

  private static Map<String, Object> byHand() {
    Map<String, Object> all = new LinkedHashMap<>();
    PARTS.forEach(part -> add(all, read(FOLDER + part + ".json"), part));
    return all;
  }

  private static Map<?, ?> read(String resource) {
    try (InputStream in = OpenApi.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("The resource " + resource + " is missing");
      }
      return (Map<?, ?>) Json.parse(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Puts a part's members beside those that are there; none may be there twice. */
  private static void add(Map<String, Object> all, Map<?, ?> part, String where) {
    part.forEach(
        (key, value) -> {
          String name = key.toString();
          Object there = all.get(name);
          if (there instanceof Map<?, ?> && value instanceof Map<?, ?> more) {
            Map<String, Object> both = members(there);
            add(both, more, where + "/" + name);
            all.put(name, both);
          } else if (there == null) {
            all.put(name, value);
          } else {
            throw new IllegalStateException(where + " tells " + name + " a second time");
          }
        });
  }

  private static Map<String, Object> completed(
      Map<String, Object> byHand, Map<String, Object> definitions) {
    Map<String, Object> schemas = new LinkedHashMap<>();
    definitions.forEach((name, schema) -> schemas.put(name, moved(schema)));
    add(byHand, Map.of("components", Map.of("schemas", schemas)), "a form");
    return byHand;
  }

  private static Map<String, Object> members(Object object) {
    Map<String, Object> members = new LinkedHashMap<>();
    if (object instanceof Map<?, ?> map) {
      map.forEach((name, value) -> members.put(name.toString(), value));
    }
    return members;
  }

  /** A schema whose references point to where the definitions stand in the description. */
  private static Object moved(Object schema) {
    return switch (schema) {
      case Map<?, ?> map -> {
        Map<Object, Object> copy = new LinkedHashMap<>();
        map.forEach(
            (key, value) ->
                copy.put(
                    key,
                    key.equals("$ref") && value instanceof String reference
                        ? reference.replace(IN_A_SCHEMA, IN_THE_DESCRIPTION)
                        : moved(value)));
        yield copy;
      }
      case List<?> list -> list.stream().map(OpenApi::moved).toList();
      default -> schema;
    };
  }
}
