package lampwright.tasks;

import lampwright.people.Seal;
import lampwright.store.Database;
import lampwright.store.SecondFactors;

/** Seals at the start what lies open of second factors, from before the server had a key. */
public final class FactorSealing {

  private FactorSealing() {}

  /**
   * What was found.
   *
   * @param sealed how many lay open and are sealed now
   * @param otherwise how many are sealed under another key: their devices' codes are good again
   *     once that key is back, and their recovery codes are good meanwhile
   */
  public record Found(int sealed, int otherwise) {}

  /** Seals all that lie open, and counts those that this key does not open. */
  public static Found sealAll(Database database, Seal seal) {
    return database.anonymous(
        in -> {
          SecondFactors factors = new SecondFactors(in);
          var open = factors.holdOpen();
          open.forEach(
              (person, kept) ->
                  seal.open(person, kept)
                      .ifPresent(secret -> factors.reseal(person, seal.seal(person, secret))));
          return new Found(open.size(), factors.countSealedOtherwise(seal.name()));
        });
  }
}
