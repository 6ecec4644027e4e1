package lampwright.setup.reacting;

/** What is turned at the camera. */
public enum CameraDial {
  TIME,
  APERTURE,
  ISO,
  /** Grey filters before the lens, put on or taken off. */
  FILTER
}
