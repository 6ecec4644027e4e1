package lampwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaPackage;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.EvaluationResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;

/** The house keeps its rules, and a planted house that breaks each shows that they can fail. */
class ArchitectureTest {

  private static final Map<String, ArchRule> RULES = new ArchitectureRules("lampwright").all();
  static final Set<String> NAMES = RULES.keySet();

  private static final JavaClasses HOUSE =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("lampwright");

  private static final JavaClasses PLANTED =
      new ClassFileImporter().importPackages("lampwright.planted");

  @ParameterizedTest
  @FieldSource("NAMES")
  void theHouseKeepsTheRule(String rule) {
    Objects.requireNonNull(RULES.get(rule)).check(HOUSE);
  }

  @ParameterizedTest
  @CsvSource({
    "arrowsPointDownward, engine.LooksUp",
    "arrowsPointDownward, gear.KnowsSetups",
    "arrowsPointDownward, setup.ReachesStore",
    "arrowsPointDownward, store.ReachesWeb",
    "arrowsPointDownward, web.SkipsTasks",
    "arrowsPointDownward, drawing.ReadsTheStore",
    "arrowsPointDownward, people.KnowsGear",
    "arrowsPointDownward, search.AsksTheStore",
    "arrowsPointDownward, document.KnowsTheEngine",
    "theEngineIsPlainJava, engine.ReadsFiles",
    "theEngineIsPlainJava, engine.LooksUp",
    "noClockAndNoDiceInWhatIsPure, engine.ThrowsDice",
    "noClockAndNoDiceInWhatIsPure, setup.LooksAtClock",
    "noUnseededDiceInWhatIsPure, gear.SeedsItself",
    "httpStaysInTheWeb, tasks.SpeaksHttp",
    "templatesStayInTheWeb, tasks.Renders",
    "sqlStaysInTheStore, web.SpeaksSql",
    "connectionsStayInTheStore, tasks.Connects",
    "theIndexStaysInTheSearch, store.Searches",
    "jsonTextStaysInTheDocumentAndTheWeb, search.ParsesJson",
    "theSunLibraryStaysInEngineSun, engine.AsksTheSun",
    "theNumericsStayInTheCalibration, gear.SolvesMatrices",
    "tablesStayInTheExchange, gear.WritesTables",
    "decodingStaysInThePicture, tasks.Decodes",
    "theScriptStaysInTheBrowser, drawing.CallsScript",
    "theModelStaysInTheMeaning, search.RunsTheModel",
    "metersStayInTheMetrics, tasks.Measures",
    "objectStoresStayInTheStore, web.AsksAnObjectStore",
    "noJunkDrawers, util.Anything",
    "noJunkDrawers, drawing.DrawingHelper",
    "noCycles, store.ReachesWeb"
  })
  void aPlantedClassBreaksTheRule(String rule, String planted) {
    ArchRule onPlanted =
        Objects.requireNonNull(new ArchitectureRules("lampwright.planted").all().get(rule));
    EvaluationResult result = onPlanted.evaluate(PLANTED);
    assertTrue(
        String.join("\n", result.getFailureReport().getDetails())
            .contains("lampwright.planted." + planted),
        () -> result.getFailureReport().toString());
  }

  @Test
  void everyRuleHasAPlantedClassThatBreaksIt() throws NoSuchMethodException {
    CsvSource planted =
        Objects.requireNonNull(
            ArchitectureTest.class
                .getDeclaredMethod("aPlantedClassBreaksTheRule", String.class, String.class)
                .getAnnotation(CsvSource.class));
    Set<String> broken = new java.util.TreeSet<>();
    for (String line : planted.value()) {
      broken.add(line.substring(0, line.indexOf(',')));
    }
    assertEquals(new java.util.TreeSet<>(NAMES), broken);
  }

  @Test
  void everyPackageSaysWhatItIsAndHasNoNulls() {
    List<String> bare = new ArrayList<>();
    for (JavaPackage room : HOUSE.getPackage("lampwright").getSubpackagesInTree()) {
      boolean generated = room.getName().startsWith("lampwright.schema.");
      if (!generated && !room.getClasses().isEmpty() && !room.isAnnotatedWith(NullMarked.class)) {
        bare.add(room.getName());
      }
    }
    assertEquals(List.of(), bare);
  }
}
