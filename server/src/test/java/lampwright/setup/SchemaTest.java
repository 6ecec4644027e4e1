package lampwright.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import java.util.Random;
import lampwright.document.Definitions;
import lampwright.document.Form;
import lampwright.document.Json;
import lampwright.document.Problem;
import lampwright.document.Reading;
import lampwright.gear.Kit;
import lampwright.gear.stock.GearItem;
import lampwright.gear.stock.WrittenKit;
import org.junit.jupiter.api.Test;

/**
 * The published schema against the reader, by the schema validator of another house: what the
 * schema refuses the reader refuses, and what the reader accepts the schema accepts.
 */
class SchemaTest {

  private static final String SETUP_ID = "https://lampwright.example/api/schemas/setup.json";
  private static final String KIT_ID = "https://lampwright.example/api/schemas/kit.json";

  /**
   * What the reader refuses and the schema cannot say: the ends of the pointers and the openings of
   * the messages.
   */
  private static final List<String> ONLY_THE_READER =
      List.of(
          "is another light's already",
          "is not one of this setup's lights",
          "is built already in an earlier step",
          "A light needs its power or a reading",
          "must be within the head's range",
          "away from the target",
          "away from the light's own place",
          "the meter lies on a surface",
          "Latitude and longitude must be given together",
          "A build step must name a light or say what is done",
          "must not be above the highest",
          "must not be smaller than the smallest",
          "must be the name of one of this kit's heads",
          "must be the name of one of this kit's modifiers",
          "must be the name of one of this kit's packs",
          "is another pack's already",
          "are paired already",
          "in all) must be at most 200",
          "must be a shutter time such as",
          "must be a date such as",
          "must not hold control characters or broken characters",
          "must not hold characters that turn the direction",
          // Spaces that a regular expression of Java does not know for such.
          "must not be empty");

  private static Schema schema(Form<?> form, String id) {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(Json.print(Definitions.schemaOf(form, id)), InputFormat.JSON);
  }

  private static boolean accepts(Schema schema, String json) {
    return schema.validate(json, InputFormat.JSON).isEmpty();
  }

  @Test
  void theSchemasAreSchemasOfTheDraftThatTheyName() {
    Schema meta =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
    for (Form<?> form : List.of(SetupDocument.FORM, Kit.FORM, WrittenKit.FORM, GearItem.FORM)) {
      String text = Json.print(Definitions.schemaOf(form, SETUP_ID));
      assertEquals(List.of(), meta.validate(text, InputFormat.JSON));
    }
    String broken =
        Json.print(Definitions.schemaOf(Kit.FORM, KIT_ID)).replace("\"array\"", "\"arrow\"");
    assertTrue(!meta.validate(broken, InputFormat.JSON).isEmpty(), "the metaschema checks nothing");
  }

  @Test
  void theSchemaAcceptsTheCorpus() {
    Schema setups = schema(SetupDocument.FORM, SETUP_ID);
    for (String name : Documents.SETUPS) {
      String json = Json.print(Documents.resource(name));
      assertEquals(List.of(), setups.validate(json, InputFormat.JSON), name);
    }
    assertTrue(
        accepts(schema(Kit.FORM, KIT_ID), Json.print(Documents.resource("kit.json"))), "kit");
  }

  @Test
  void readerAndSchemaAgreeOnTwoThousandDamagedDocuments() {
    Schema setups = schema(SetupDocument.FORM, SETUP_ID);
    for (int i = 0; i < Documents.SETUPS.size(); i++) {
      agree(SetupDocument.FORM, setups, Documents.resource(Documents.SETUPS.get(i)), 100 + i, 500);
    }
    agree(Kit.FORM, schema(Kit.FORM, KIT_ID), Documents.resource("kit.json"), 200, 500);
  }

  private static <T> void agree(Form<T> form, Schema schema, Object good, long seed, int rounds) {
    Random random = new Random(seed);
    int accepted = 0;
    for (int round = 0; round < rounds; round++) {
      Object damaged = good;
      for (int times = 0; times <= random.nextInt(2); times++) {
        damaged = Damage.of(damaged, random);
      }
      String json = Json.print(damaged);
      String where = "seed " + seed + ", round " + round + ": " + json;
      boolean bySchema = accepts(schema, json);
      switch (form.read(Json.parse(json))) {
        case Reading.Sound<T> sound -> {
          assertTrue(bySchema, () -> "The reader accepts, the schema refuses, " + where);
          assertEquals(sound, form.read(form.write(sound.value())), where);
        }
        case Reading.Faulty<T> faulty -> {
          assertTrue(!faulty.problems().isEmpty(), where);
          if (bySchema) {
            assertTrue(
                faulty.problems().stream().allMatch(SchemaTest::isOnlyTheReaders),
                () -> faulty.problems() + " but the schema accepts, " + where);
          }
        }
      }
      accepted += bySchema ? 1 : 0;
    }
    assertTrue(
        accepted > rounds / 50 && accepted < rounds / 2,
        "Damage must leave some documents right, not most: " + accepted);
  }

  private static boolean isOnlyTheReaders(Problem problem) {
    return ONLY_THE_READER.stream().anyMatch(problem.message()::contains);
  }
}
