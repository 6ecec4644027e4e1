package lampwright.store;

/**
 * The person does not belong to the studio that they wanted to do something in, or there is none.
 * Nothing was done for them: not even what needs no row of it.
 */
public final class NotEntered extends RuntimeException {

  NotEntered() {
    super("Who is no member does not enter a studio.");
  }
}
