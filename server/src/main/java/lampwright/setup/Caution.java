package lampwright.setup;

/** A plain word of warning. */
public sealed interface Caution {

  /** Against a danger that follows from what stands in the setup. */
  record Of(Danger danger) implements Caution {}

  /** As the author wrote it. */
  record Own(String text) implements Caution {}
}
