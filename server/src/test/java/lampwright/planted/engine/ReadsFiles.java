package lampwright.planted.engine;

import java.nio.file.Path;

/** The engine must be plain Java without files. */
record ReadsFiles(Path file) {}
