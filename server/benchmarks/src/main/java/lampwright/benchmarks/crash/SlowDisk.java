package lampwright.benchmarks.crash;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import lampwright.benchmarks.load.Run;

/**
 * A disk that takes a few writes a second: a file system in a file (loop device), throttled for all
 * who write to it by the kernel's block controller (cgroup v1, blkio.throttle). Nothing else on the
 * machine is slowed down.
 */
final class SlowDisk {

  private static final Path THROTTLE =
      Path.of("/sys/fs/cgroup/blkio/blkio.throttle.write_iops_device");
  private static final long IMAGE_BYTES = 700_000_000;
  private static final int WRITES_A_SECOND = 30;
  private static final Duration SLOW_FOR = Duration.ofSeconds(20);
  private static final String TROUBLE =
      "slow disk, " + WRITES_A_SECOND + " writes of blocks a second";

  private final Stage stage;

  SlowDisk(Stage stage) {
    this.stage = stage;
  }

  void show() throws Exception {
    if (!Files.isWritable(THROTTLE)) {
      stage.skip(TROUBLE, THROTTLE + " cannot be written");
      return;
    }
    Path image = stage.folder().resolve("slow.img");
    try (RandomAccessFile file = new RandomAccessFile(image.toFile(), "rw")) {
      file.setLength(IMAGE_BYTES);
    }
    Process attached = new ProcessBuilder("losetup", "-f", "--show", image.toString()).start();
    String device =
        new String(attached.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
    if (attached.waitFor() != 0) {
      stage.skip(TROUBLE, "a loop device may not be made here");
      return;
    }
    Path disk = Files.createDirectory(stage.folder().resolve("slow"));
    try {
      if (!Stage.runs("mkfs.ext4", "-q", device) || !Stage.runs("mount", device, disk.toString())) {
        stage.skip(TROUBLE, "a file system may not be made here");
        return;
      }
      String number =
          Files.readString(
                  Path.of("/sys/block", String.valueOf(Path.of(device).getFileName()), "dev"))
              .strip();
      try (Run server = stage.start(disk.resolve("data"), Map.of())) {
        show(server, number);
      } finally {
        throttle(number, 0);
        var _ = Stage.runs("umount", disk.toString());
      }
    } finally {
      var _ = Stage.runs("losetup", "-d", device);
    }
  }

  private void show(Run server, String device) throws Exception {
    var _ = server.awaitReady(Stage.READY);
    Entry entry = Entry.of(server);
    Crowd crowd = new Crowd(entry, "slowly");
    StringBuilder readiness = new StringBuilder();
    Crowd.Seen seen;
    try {
      throttle(device, WRITES_A_SECOND);
      seen =
          crowd.during(
              () -> {
                TimeUnit.NANOSECONDS.sleep(SLOW_FOR.toNanos());
                return readiness.append(entry.readiness());
              });
    } finally {
      throttle(device, 0);
    }
    Recovery recovery = Recovery.watch(server, entry, crowd, Optional.empty());
    stage.line(
        TROUBLE,
        "%s; readiness %s. Fast again: %s".formatted(seen.words(), readiness, recovery.words()),
        seen.isClear() && recovery.isWhole());
  }

  /** Zero is no bound. */
  private static void throttle(String device, int writesPerSecond) throws IOException {
    Files.writeString(THROTTLE, device + " " + writesPerSecond + "\n");
  }
}
