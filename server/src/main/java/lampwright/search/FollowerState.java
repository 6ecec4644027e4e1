package lampwright.search;

/** How the index stands to the database. */
public sealed interface FollowerState {

  /** The index shows everything that the change log showed at the last look. */
  record Ready() implements FollowerState {}

  /**
   * The index is being built anew; searches find what is there so far.
   *
   * @param done setups taken in
   * @param total about how many there are
   */
  record Rebuilding(long done, long total) implements FollowerState {}

  /** More changes wait than one pull takes. */
  record Behind() implements FollowerState {}

  /**
   * It could not go on, and tries again by itself.
   *
   * @param reason for whoever runs the server
   */
  record Failed(String reason) implements FollowerState {}
}
