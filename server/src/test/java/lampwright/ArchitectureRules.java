package lampwright;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaCall.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaConstructorCall;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.Architectures.LayeredArchitecture;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;

/** The rules of the house, for the packages under one root. */
final class ArchitectureRules {

  /** Who may use whom: a layer, then the layers that it may use. The front door may use all. */
  private static final String[][] ARROWS = {
    {
      "web",
      "tasks",
      "metrics",
      "archive",
      "search",
      "drawing",
      "wording",
      "learning",
      "picture",
      "meaning",
      "setup",
      "gear",
      "place",
      "people",
      "document",
      "language",
      "engine"
    },
    {
      "tasks",
      "store",
      "archive",
      "search",
      "drawing",
      "wording",
      "learning",
      "picture",
      "meaning",
      "setup",
      "gear",
      "place",
      "people",
      "document",
      "language",
      "engine"
    },
    {
      "store",
      "schema",
      "archive",
      "learning",
      "meaning",
      "setup",
      "gear",
      "place",
      "people",
      "document",
      "language",
      "engine"
    },
    {"backup", "store", "schema", "document"},
    {"search", "meaning", "setup", "gear", "place", "people", "language", "engine"},
    {
      "browser",
      "drawing",
      "wording",
      "setup",
      "gear",
      "place",
      "people",
      "document",
      "language",
      "engine"
    },
    {"drawing", "wording", "setup", "gear", "place", "language", "engine"},
    {"wording", "setup", "gear", "place", "language", "engine"},
    {"learning", "setup", "gear", "place", "people", "document", "language", "engine"},
    {"picture", "engine"},
    {"meaning"},
    {"metrics"},
    {"archive", "learning", "setup", "gear", "place", "people", "document", "engine"},
    {"setup", "gear", "place", "people", "document", "language", "engine"},
    {"gear", "people", "document", "engine"},
    {"place", "people", "document", "engine"},
    {"people", "language"},
    {"language", "engine"},
    {"document"},
    {"schema"},
    {"engine"},
  };

  private final String root;

  ArchitectureRules(String root) {
    this.root = root;
  }

  /** Every rule by its name. */
  Map<String, ArchRule> all() {
    Map<String, ArchRule> rules = new LinkedHashMap<>();
    rules.put("arrowsPointDownward", arrows());
    rules.put("theEngineIsPlainJava", plainEngine());
    rules.put("noClockAndNoDiceInWhatIsPure", noClock());
    rules.put("noUnseededDiceInWhatIsPure", noUnseededDice());
    rules.put("httpStaysInTheWeb", fence("io.javalin..", "web.."));
    rules.put("templatesStayInTheWeb", fence("gg.jte..", "web.."));
    rules.put("sqlStaysInTheStore", fence("org.jooq..", "store..", "schema.."));
    rules.put("connectionsStayInTheStore", fence("com.zaxxer..", "store.."));
    rules.put("theIndexStaysInTheSearch", fence("org.apache.lucene..", "search.."));
    rules.put(
        "jsonTextStaysInTheDocumentAndTheWeb",
        // The vocabulary of the model of sentences is a file of its own kind.
        fence("tools.jackson..", "document..", "web..", "meaning.."));
    rules.put("theSunLibraryStaysInEngineSun", fence("net.e175.klaus..", "engine.sun.."));
    rules.put("theNumericsStayInTheCalibration", fence("org.hipparchus..", "gear.calibration.."));
    rules.put("tablesStayInTheExchange", fence("de.siegmar.fastcsv..", "gear.exchange.."));
    rules.put("decodingStaysInThePicture", fence("javax.imageio..", "picture.."));
    rules.put("theScriptStaysInTheBrowser", fence("org.teavm..", "browser.."));
    rules.put("theModelStaysInTheMeaning", fence("ai.onnxruntime..", "meaning.."));
    rules.put("metersStayInTheMetrics", fence("io.micrometer..", "metrics..", "store.."));
    rules.put("objectStoresStayInTheStore", fence("software.amazon..", "store.."));
    rules.put("noJunkDrawers", noJunkDrawers());
    rules.put("noCycles", noCycles());
    return rules;
  }

  private ArchRule arrows() {
    LayeredArchitecture layers =
        layeredArchitecture().consideringOnlyDependenciesInLayers().withOptionalLayers(true);
    for (String[] arrow : ARROWS) {
      layers = layers.layer(arrow[0]).definedBy(root + "." + arrow[0] + "..");
    }
    for (String[] arrow : ARROWS) {
      String[] may = Arrays.copyOfRange(arrow, 1, arrow.length);
      layers =
          may.length == 0
              ? layers.whereLayer(arrow[0]).mayNotAccessAnyLayer()
              : layers.whereLayer(arrow[0]).mayOnlyAccessLayers(may);
    }
    return layers;
  }

  private ArchRule plainEngine() {
    return classes()
        .that()
        .resideInAPackage(root + ".engine..")
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage(
            root + ".engine..",
            "java.lang..",
            "java.util..",
            "java.math..",
            "java.time..",
            "net.e175.klaus.solarpositioning..",
            "org.jspecify..");
  }

  private String[] pure() {
    return new String[] {
      root + ".engine..",
      root + ".gear..",
      root + ".place..",
      root + ".setup..",
      root + ".picture..",
      root + ".document..",
      root + ".browser.."
    };
  }

  private ArchRule noClock() {
    return noClasses()
        .that()
        .resideInAnyPackage(pure())
        .should()
        .callMethodWhere(target(nameMatching("random|currentTimeMillis|nanoTime")))
        .orShould()
        .callMethodWhere(
            describe(
                "asks what time it is",
                call ->
                    call.getName().equals("now")
                        && call.getTargetOwner().getPackageName().startsWith("java.time")));
  }

  private ArchRule noUnseededDice() {
    return noClasses()
        .that()
        .resideInAnyPackage(pure())
        .should()
        .callConstructorWhere(
            describe("makes dice without a seed", ArchitectureRules::isUnseededDice));
  }

  private static boolean isUnseededDice(JavaConstructorCall call) {
    return call.getTargetOwner().isEquivalentTo(Random.class)
        && call.getTarget().getRawParameterTypes().isEmpty();
  }

  private ArchRule fence(String library, String... homes) {
    String[] packages = Arrays.stream(homes).map(home -> root + "." + home).toArray(String[]::new);
    return noClasses()
        .that()
        .resideOutsideOfPackages(packages)
        .should()
        .dependOnClassesThat()
        .resideInAPackage(library);
  }

  /** Generated tables know their schema and it knows them; that is not ours to change. */
  private ArchRule noCycles() {
    String generated = root + ".schema.generated..";
    return slices()
        .matching(root + ".(**)")
        .should()
        .beFreeOfCycles()
        .ignoreDependency(resideInAPackage(generated), resideInAPackage(generated));
  }

  private static ArchRule noJunkDrawers() {
    return noClasses()
        .should()
        .resideInAnyPackage("..util..", "..common..", "..helper..", "..misc..", "..impl..")
        .orShould()
        .haveNameMatching(".*(Util|Utils|Helper|Manager|Impl)");
  }
}
