package lampwright.benchmarks.crash;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/** A small file system of its own, in memory, which only root may mount. */
final class SmallDisk implements AutoCloseable {

  private final Path folder;

  private SmallDisk(Path folder) {
    this.folder = folder;
  }

  /** Mounts one on a folder, which is made; empty where that is refused. */
  static Optional<SmallDisk> on(Path folder, int megabytes)
      throws IOException, InterruptedException {
    var _ = Files.createDirectories(folder);
    return Stage.runs(
            "mount",
            "-t",
            "tmpfs",
            "-o",
            "mode=755,size=" + megabytes + "m",
            "none",
            folder.toString())
        ? Optional.of(new SmallDisk(folder))
        : Optional.empty();
  }

  Path folder() {
    return folder;
  }

  private Path filler() {
    return folder.resolve("filler");
  }

  /** To the last page. */
  void fill() throws IOException {
    for (int bytes = 64 * 1024; bytes >= 512; bytes /= 2) {
      try (FileChannel channel =
          FileChannel.open(
              filler(),
              StandardOpenOption.CREATE,
              StandardOpenOption.WRITE,
              StandardOpenOption.APPEND)) {
        ByteBuffer block = ByteBuffer.allocate(bytes);
        while (channel.write(block) > 0) {
          block.clear();
        }
      } catch (IOException full) {
        if (!Files.exists(filler())) {
          throw full;
        }
      }
    }
  }

  void makeRoom() throws IOException {
    Files.deleteIfExists(filler());
  }

  @Override
  public void close() throws InterruptedException {
    var _ = Stage.runs("umount", "-l", folder.toString());
  }
}
