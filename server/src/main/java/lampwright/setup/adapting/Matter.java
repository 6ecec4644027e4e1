package lampwright.setup.adapting;

/** What an adaptation can be better or worse in; its cost is the sum over these. */
public enum Matter {
  /** The lights' levels. */
  LEVELS,
  /** The ambient against the flash. */
  AMBIENT,
  /** What is sharp in front of and behind the subject. */
  DEPTH,
  /** The shutter time: how movement shows. */
  MOVEMENT,
  /** The ISO: noise. */
  NOISE,
  /** How much the lens takes in. */
  FRAMING,
  /** The lights' softness, kind and spread. */
  SHAPE,
  /** The lights' colour. */
  COLOUR,
  /** What a shutter takes from an edge of the frame. */
  EVENNESS,
  /** Weight of heads, modifiers and packs. */
  CARRYING,
  /** The wait from frame to frame. */
  PACE,
  /** More heads or flashes on a light, moved lights, dials to touch. */
  HANDLING
}
