package lampwright;

/** Starts the server. */
public final class Lampwright {

  private Lampwright() {}

  public static void main(String[] arguments) {
    System.exit(0);
  }
}
