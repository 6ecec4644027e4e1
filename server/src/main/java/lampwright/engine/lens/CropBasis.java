package lampwright.engine.lens;

/**
 * By which measure two formats are compared. Between formats of different shape there is no single
 * equivalent: take the one that the composition needs, the height for a standing figure.
 */
public enum CropBasis {
  /** By the diagonal, the usual one. */
  DIAGONAL,
  /** By the longer side. */
  LONG_SIDE,
  /** By the shorter side. */
  SHORT_SIDE
}
