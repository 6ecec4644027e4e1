package lampwright.postgres;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The account that PostgreSQL's programs run under, and the path by which that account sees the
 * folder. PostgreSQL refuses to run as root, so where we are root they run as {@value #NOBODY}, an
 * account that may do nothing else. Where we are not, they run as we do.
 */
final class Account {

  /** Uid and gid of the account that owns nothing on a Linux system. */
  static final int NOBODY = 65534;

  private static final Path VIEW = Path.of("/mnt");

  private final Path folder;
  private final boolean isRoot;
  private final boolean throughView;
  private final List<String> prefix;

  private Account(Path folder, boolean isRoot, boolean throughView, List<String> prefix) {
    this.folder = folder;
    this.isRoot = isRoot;
    this.throughView = throughView;
    this.prefix = prefix;
  }

  /**
   * Chooses how the programs in a folder can be run.
   *
   * @throws DataFolderUnusable when they cannot be run at all
   */
  static Account forPrograms(Path folder, Binaries binaries) throws IOException {
    boolean isRoot = isRoot();
    if (!isRoot) {
      return new Account(
          folder,
          false,
          false,
          hasSetpriv() ? List.of("setpriv", "--pdeathsig", "INT") : List.of());
    }
    if (!hasSetpriv()) {
      throw new DataFolderUnusable(
          "PostgreSQL does not run as root, and the program setpriv (package util-linux) that would"
              + " run it as another user is missing. Install it, start Lampwright as a plain user,"
              + " or give LAMPWRIGHT_DATABASE_URL a PostgreSQL of your own.");
    }
    List<String> asNobody =
        List.of(
            "setpriv",
            "--reuid=" + NOBODY,
            "--regid=" + NOBODY,
            "--clear-groups",
            "--pdeathsig",
            "INT");
    Account direct = new Account(folder, true, false, asNobody);
    if (direct.canRun(binaries)) {
      return direct;
    }
    Account view = new Account(folder, true, true, behindView(folder, asNobody));
    if (view.canRun(binaries)) {
      return view;
    }
    throw new DataFolderUnusable(
        "PostgreSQL does not run as root, and the user that it runs as (uid %d) cannot reach the folder %s or may not run programs there. Choose a folder whose parents everybody may enter by LAMPWRIGHT_DATA, for example /var/lib/lampwright."
            .formatted(NOBODY, folder));
  }

  /**
   * A folder below a private home cannot be reached by another user. Inside a mount namespace of
   * its own PostgreSQL sees the folder, and only that, under a public path; the system outside does
   * not change.
   */
  private static List<String> behindView(Path folder, List<String> asNobody) {
    List<String> command =
        new ArrayList<>(
            List.of(
                "unshare",
                "--mount",
                "--propagation",
                "private",
                "sh",
                "-c",
                "mount --bind \"$0\" " + VIEW + " && exec \"$@\"",
                folder.toString()));
    command.addAll(asNobody);
    return List.copyOf(command);
  }

  /** Where the account finds a path of the folder. */
  Path seen(Path path) {
    return throughView ? VIEW.resolve(folder.relativize(path)) : path;
  }

  /** A process, not yet started, that runs a program of the folder under this account. */
  ProcessBuilder process(Path program, String... arguments) {
    List<String> command = new ArrayList<>(prefix);
    command.add(seen(program).toString());
    command.addAll(List.of(arguments));
    ProcessBuilder process = new ProcessBuilder(command);
    // Our own working folder may be closed to the account; the root never is.
    process.directory(Path.of("/").toFile());
    process.redirectErrorStream(true);
    process.redirectInput(ProcessBuilder.Redirect.from(Path.of("/dev/null").toFile()));
    process.environment().keySet().removeIf(name -> name.startsWith("PG"));
    process.environment().put("LC_ALL", "C");
    return process;
  }

  /** Gives a file or folder to the account. */
  void own(Path path) throws IOException {
    if (isRoot) {
      Files.setAttribute(path, "unix:uid", NOBODY, LinkOption.NOFOLLOW_LINKS);
      Files.setAttribute(path, "unix:gid", NOBODY, LinkOption.NOFOLLOW_LINKS);
    }
  }

  private boolean canRun(Binaries binaries) throws IOException {
    return Finished.of(process(binaries.program("postgres"), "--version")).succeeded();
  }

  private static boolean isRoot() throws IOException {
    Path self = Path.of("/proc/self");
    return Files.exists(self)
        ? Integer.valueOf(0).equals(Files.getAttribute(self, "unix:uid"))
        : "root".equals(System.getProperty("user.name"));
  }

  private static boolean hasSetpriv() {
    try {
      return Finished.of(new ProcessBuilder("setpriv", "--pdeathsig", "INT", "true")).succeeded();
    } catch (IOException absent) {
      return false;
    }
  }
}
