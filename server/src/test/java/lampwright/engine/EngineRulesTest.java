package lampwright.engine;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What keeps the engine pure, and its doubles the same on the JVM and in JavaScript. Each rule is
 * shown to bite by a planted violation.
 */
final class EngineRulesTest {

  private static final Set<String> MATH =
      Set.of("sqrt", "floor", "ceil", "round", "abs", "min", "max", "floorDiv");
  private static final Set<String> STRICT_MATH =
      Set.of("sin", "cos", "tan", "asin", "acos", "atan", "atan2", "exp", "log");

  private static final ArchRule ONLY_THE_JDK =
      classes()
          .that()
          .resideInAPackage("lampwright.engine..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(
              "lampwright.engine..",
              "java.lang",
              "java.lang.invoke",
              "java.lang.runtime",
              "java.util",
              "java.util.function",
              "java.util.stream",
              "java.math",
              "java.time",
              "org.jspecify..",
              // The sun's alone; ArchitectureTest keeps it there.
              "net.e175.klaus.solarpositioning..");

  private static final ArchRule ONLY_FUNCTIONS_THAT_ARE_ALIKE_EVERYWHERE =
      noClasses()
          .that()
          .resideInAPackage("lampwright.engine..")
          .should()
          .callMethodWhere(
              describe("a function that differs between platforms", EngineRulesTest::differs));

  private static final ArchRule NO_CLOCK_AND_NO_THREADS =
      noClasses()
          .that()
          .resideInAPackage("lampwright.engine..")
          .should()
          .dependOnClassesThat()
          .belongToAnyOf(Thread.class, Runtime.class)
          .orShould()
          .callMethodWhere(
              describe(
                  "a method of the system but for copying arrays", EngineRulesTest::asksSystem))
          .orShould()
          .accessFieldWhere(
              describe("a stream of the system", access -> isSystem(access.getTargetOwner())));

  private static final ArchRule NO_STATIC_STATE =
      fields()
          .that()
          .areDeclaredInClassesThat()
          .resideInAPackage("lampwright.engine..")
          .and()
          .areStatic()
          .should()
          .beFinal();

  private static final ArchRule ARROWS_POINT_DOWNWARD =
      noClasses()
          .that()
          .resideInAnyPackage("lampwright.engine.unit", "lampwright.engine.match")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "lampwright.engine",
              "lampwright.engine.exposure",
              "lampwright.engine.light",
              "lampwright.engine.power",
              "lampwright.engine.lens",
              "lampwright.engine.sun");

  private static final ArchRule EXPOSURE_KNOWS_NO_HEADS =
      noClasses()
          .that()
          .resideInAnyPackage("lampwright.engine.exposure", "lampwright.engine.power")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "lampwright.engine.light", "lampwright.engine.lens", "lampwright.engine.sun");

  static Stream<ArchRule> rules() {
    return Stream.of(
        ONLY_THE_JDK,
        ONLY_FUNCTIONS_THAT_ARE_ALIKE_EVERYWHERE,
        NO_CLOCK_AND_NO_THREADS,
        NO_STATIC_STATE,
        ARROWS_POINT_DOWNWARD,
        EXPOSURE_KNOWS_NO_HEADS);
  }

  @ParameterizedTest
  @MethodSource("rules")
  void theEngineKeeps(ArchRule rule) {
    rule.check(
        new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("lampwright.engine"));
  }

  @Test
  void plantedViolationsAreFound() {
    JavaClasses planted = new ClassFileImporter().importClasses(Planted.class);
    for (ArchRule rule :
        new ArchRule[] {
          ONLY_THE_JDK,
          ONLY_FUNCTIONS_THAT_ARE_ALIKE_EVERYWHERE,
          NO_CLOCK_AND_NO_THREADS,
          NO_STATIC_STATE
        }) {
      assertThrows(AssertionError.class, () -> rule.check(planted), rule.getDescription());
    }
    JavaClasses plantedInUnit =
        new ClassFileImporter().importClasses(lampwright.engine.unit.PlantedArrow.class);
    assertThrows(AssertionError.class, () -> ARROWS_POINT_DOWNWARD.check(plantedInUnit));
    JavaClasses plantedInPower =
        new ClassFileImporter().importClasses(lampwright.engine.power.PlantedArrow.class);
    assertThrows(AssertionError.class, () -> EXPOSURE_KNOWS_NO_HEADS.check(plantedInPower));
    assertTrue(Planted.wrong() > 0);
  }

  private static boolean differs(JavaMethodCall call) {
    String owner = call.getTargetOwner().getName();
    String name = call.getTarget().getName();
    return (owner.equals("java.lang.Math") && !MATH.contains(name))
        || (owner.equals("java.lang.StrictMath") && !STRICT_MATH.contains(name));
  }

  /** Everything the rules forbid, once. */
  private static final class Planted {
    private static double state = 1;

    static double wrong() {
      state += Math.pow(2, 0.5) + Path.of("a").getNameCount() + System.nanoTime() % 2;
      return state;
    }
  }

  private static boolean asksSystem(JavaMethodCall call) {
    return isSystem(call.getTargetOwner()) && !call.getName().equals("arraycopy");
  }

  private static boolean isSystem(JavaClass owner) {
    return owner.isEquivalentTo(System.class);
  }
}
