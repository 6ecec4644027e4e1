package lampwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.teavm.backend.javascript.JSModuleType;
import org.teavm.diagnostics.Problem;
import org.teavm.tooling.TeaVMTargetType;
import org.teavm.tooling.TeaVMTool;
import org.teavm.vm.TeaVMOptimizationLevel;

/**
 * The engine compiled to JavaScript gives the same doubles as on the JVM, bit for bit. Both run the
 * same program; node stands for the browser.
 */
class BrowserDoublesTest {

  @Test
  void nodeComputesTheSameBitsAsTheJvm(@TempDir Path folder) throws Exception {
    List<String> onTheJvm = onTheJvm();
    List<String> onNode = onNode(folder);
    assertTrue(onTheJvm.size() > 4_000, () -> "only " + onTheJvm.size() + " results");
    assertEquals(onTheJvm.size(), onNode.size(), "results");
    assertEquals(List.of(), differences(onTheJvm, onNode));
  }

  private static List<String> differences(List<String> onTheJvm, List<String> onNode) {
    return IntStream.range(0, onTheJvm.size())
        .filter(i -> !onTheJvm.get(i).equals(onNode.get(i)))
        .mapToObj(i -> onTheJvm.get(i) + " on the JVM, " + onNode.get(i) + " on node")
        .limit(20)
        .toList();
  }

  private static List<String> onTheJvm() {
    List<String> printed = new ArrayList<>();
    EngineDoubles.print(printed::add);
    return printed;
  }

  private static List<String> onNode(Path folder) throws Exception {
    TeaVMTool compiler = new TeaVMTool();
    compiler.setTargetType(TeaVMTargetType.JAVASCRIPT);
    compiler.setJsModuleType(JSModuleType.COMMON_JS);
    // Higher levels inline, and then a * (b * c) loses its brackets: one unit in the last place.
    compiler.setOptimizationLevel(TeaVMOptimizationLevel.SIMPLE);
    compiler.setMainClass(EngineDoubles.class.getName());
    compiler.setTargetDirectory(folder.toFile());
    compiler.setTargetFileName("doubles.js");
    compiler.setClassLoader(BrowserDoublesTest.class.getClassLoader());
    compiler.setClassPath(
        Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
            .map(File::new)
            .toList());
    compiler.generate();
    List<Problem> problems = compiler.getProblemProvider().getSevereProblems();
    assertEquals(List.of(), problems.stream().map(BrowserDoublesTest::tell).toList());

    File printed = folder.resolve("printed.txt").toFile();
    Process node =
        new ProcessBuilder("node", "-e", "require('./doubles.js').main([])")
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(printed)
            .start();
    assertEquals(0, node.waitFor(), "node's exit code");
    return Files.readAllLines(printed.toPath());
  }

  private static String tell(Problem problem) {
    return problem.getText()
        + " "
        + Arrays.toString(problem.getParams())
        + " "
        + problem.getLocation();
  }
}
