package lampwright.setup;

/**
 * Where a setup comes from: another setup and which state of it. Neither changes any more.
 *
 * @param revision of the parent that the setup was made from
 * @param title the parent's then
 */
public record Parent(SetupId id, int revision, String title) {}
