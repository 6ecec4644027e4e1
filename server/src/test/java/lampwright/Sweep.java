package lampwright;

/**
 * How many cases a test draws that could draw any number: some in every build, and ten times as
 * many where the system property {@code lampwright.sweep} is {@code whole}.
 */
public final class Sweep {

  private static final int TIMES = 10;

  private Sweep() {}

  public static int cases(int inEveryBuild) {
    return "whole".equals(System.getProperty("lampwright.sweep"))
        ? TIMES * inEveryBuild
        : inEveryBuild;
  }
}
