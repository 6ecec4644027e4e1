package lampwright.benchmarks.crash;

/**
 * What a client sees in each trouble, and whether the server comes out of it by itself: damaged
 * files of the index, a database that is gone for a while, full disks, a slow one, a clock that
 * jumps. Prints a line for each, and ends with 1 where the server did not recover or lost
 * something.
 *
 * <p>Argument {@code only}: {@code index}, {@code database}, {@code disk}, {@code slow}, {@code
 * clock}, several with commas; {@code short} is the first two and one full disk; all of them where
 * it is empty. Full and slow disks need root, the clock needs libfaketime; where one is refused, it
 * is said and the others go on.
 */
public final class Troubles {

  private Troubles() {}

  public static void main(String[] arguments) throws Exception {
    String only = "";
    for (String argument : arguments) {
      if (!argument.startsWith("only=")) {
        throw new IllegalArgumentException(argument + " is no argument of this.");
      }
      only = argument.substring("only=".length());
    }
    boolean isSound;
    try (Stage stage = new Stage()) {
      if (isWanted(only, "index") || isWanted(only, "database")) {
        new DamagedIndex(stage).show(only.equals("short"), isWanted(only, "database"));
      }
      if (isWanted(only, "disk")) {
        new FullDisks(stage).show(only.equals("short"));
      }
      if (only.isEmpty() || only.contains("slow")) {
        new SlowDisk(stage).show();
      }
      if (only.isEmpty() || only.contains("clock")) {
        new JumpingClock(stage).show();
      }
      isSound = stage.isSound();
    }
    System.exit(isSound ? 0 : 1);
  }

  private static boolean isWanted(String only, String trouble) {
    return only.isEmpty() || only.equals("short") || only.contains(trouble);
  }
}
