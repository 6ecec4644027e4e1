package lampwright.browser;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.teavm.backend.javascript.JSModuleType;
import org.teavm.diagnostics.DefaultProblemTextConsumer;
import org.teavm.diagnostics.Problem;
import org.teavm.model.AccessLevel;
import org.teavm.model.ClassHolder;
import org.teavm.model.ClassHolderTransformer;
import org.teavm.model.ClassHolderTransformerContext;
import org.teavm.model.ElementModifier;
import org.teavm.model.MethodHolder;
import org.teavm.model.ValueType;
import org.teavm.model.emit.ProgramEmitter;
import org.teavm.tooling.TeaVMTargetType;
import org.teavm.tooling.TeaVMTool;
import org.teavm.vm.TeaVMOptimizationLevel;

/**
 * Compiles the engine to the ES module that browsers load. The build runs it by its source, before
 * the tests are compiled; the tests call it. It knows no class of ours but by name, so that it can.
 *
 * <p>The module is made anew only where a class that may be in it has changed.
 */
public final class EngineModule {

  /** The rooms of the house that a browser may be sent. */
  private static final List<String> ROOMS =
      List.of(
          "browser",
          "document",
          "drawing",
          "engine",
          "gear",
          "language",
          "people",
          "place",
          "setup",
          "wording");

  /** Changed with the settings below, so that a new way to compile makes a new module. */
  private static final String WAY = "ES2015, SIMPLE, obfuscated, 1";

  private final Path classes;
  private final Path folder;

  private EngineModule(Path classes) {
    this.classes = classes.toAbsolutePath();
    this.folder = this.classes.resolveSibling("engine-module");
  }

  /**
   * Puts the module among the assets.
   *
   * @param arguments the folder of compiled classes
   */
  public static void main(String[] arguments) throws Exception {
    Path classes = Path.of(arguments[0]);
    Path asset = classes.resolve("lampwright/assets/engine.js");
    Files.createDirectories(asset.getParent());
    Files.copy(newest(classes), asset, StandardCopyOption.REPLACE_EXISTING);
  }

  /**
   * The module of the classes as they are, compiled if need be; the file is beside their folder.
   *
   * @param classes the folder of compiled classes
   */
  public static Path newest(Path classes) throws Exception {
    return new EngineModule(classes).newest();
  }

  private Path newest() throws Exception {
    Path module = folder.resolve("engine.js");
    Path stamp = folder.resolve("engine.stamp");
    String fingerprint = fingerprint();
    boolean isNewest =
        Files.exists(module) && Files.exists(stamp) && Files.readString(stamp).equals(fingerprint);
    if (!isNewest) {
      Files.createDirectories(folder);
      Files.deleteIfExists(stamp);
      compile();
      Files.writeString(stamp, fingerprint);
    }
    return module;
  }

  private void compile() throws Exception {
    long began = System.nanoTime();
    TeaVMTool compiler = new TeaVMTool();
    compiler.setTargetType(TeaVMTargetType.JAVASCRIPT);
    compiler.setJsModuleType(JSModuleType.ES2015);
    // Higher levels inline, and then a * (b * c) loses its brackets: one unit in the last place.
    compiler.setOptimizationLevel(TeaVMOptimizationLevel.SIMPLE);
    compiler.setObfuscated(true);
    compiler.setMainClass("lampwright.browser.BrowserEngine");
    compiler.setTargetDirectory(folder.toFile());
    compiler.setTargetFileName("engine.js");
    compiler.getTransformers().add(FusedForTheSun.class.getName());
    compiler.setClassLoader(EngineModule.class.getClassLoader());
    compiler.setClassPath(
        Stream.concat(
                Stream.of(classes.toString()),
                Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator, -1)))
            .map(File::new)
            .toList());
    compiler.generate();
    List<String> problems =
        compiler.getProblemProvider().getSevereProblems().stream().map(EngineModule::tell).toList();
    if (!problems.isEmpty()) {
      throw new IllegalStateException(
          "The engine does not compile for a browser:\n" + String.join("\n", problems));
    }
    System.out.printf(
        Locale.ROOT,
        "engine.js: %,d bytes in %.1f s%n",
        Files.size(folder.resolve("engine.js")),
        (System.nanoTime() - began) / 1e9);
  }

  private static String tell(Problem problem) {
    DefaultProblemTextConsumer words = new DefaultProblemTextConsumer();
    problem.render(words);
    return words.getText() + " in " + problem.getLocation().getMethod();
  }

  /** Gives the compiler's own mathematics the one function that our sun library finds missing. */
  public static final class FusedForTheSun implements ClassHolderTransformer {

    @Override
    public void transformClass(ClassHolder of, ClassHolderTransformerContext context) {
      if (of.getName().equals("java.lang.Math")) {
        of.addMethod(fusedMultiplyAdd(context));
      }
    }

    private static MethodHolder fusedMultiplyAdd(ClassHolderTransformerContext context) {
      ValueType number = ValueType.DOUBLE;
      MethodHolder method = new MethodHolder("fma", number, number, number, number);
      method.setLevel(AccessLevel.PUBLIC);
      method.getModifiers().add(ElementModifier.STATIC);
      ProgramEmitter program = ProgramEmitter.create(method, context.getHierarchy());
      program
          .invoke(
              "lampwright.browser.FusedMultiplyAdd",
              "of",
              number,
              program.var(1, number),
              program.var(2, number),
              program.var(3, number))
          .returnValue();
      return method;
    }
  }

  private String fingerprint() throws IOException, NoSuchAlgorithmException {
    MessageDigest digest = MessageDigest.getInstance("SHA-256");
    digest.update(WAY.getBytes(StandardCharsets.UTF_8));
    for (String room : ROOMS) {
      Path folderOfRoom = classes.resolve("lampwright").resolve(room);
      if (Files.exists(folderOfRoom)) {
        addAll(digest, folderOfRoom);
      }
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  private void addAll(MessageDigest digest, Path folderOfRoom) throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.walk(folderOfRoom)) {
      files = all.filter(file -> file.toString().endsWith(".class")).sorted().toList();
    }
    for (Path file : files) {
      digest.update(classes.relativize(file).toString().getBytes(StandardCharsets.UTF_8));
      digest.update(Files.readAllBytes(file));
    }
  }
}
