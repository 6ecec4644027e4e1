package lampwright.engine.light;

import lampwright.engine.unit.Degrees;

/** Which side of a turned face the key lights. */
public enum FaceSide {
  /** The side nearer the camera, the ear that is seen. */
  BROAD,
  /** The side away from the camera. */
  SHORT,
  /** A face to the camera, or a key straight before the nose: neither word means anything. */
  NEITHER;

  /** A face turned less than this, in degrees, counts as facing the camera. */
  private static final double FACING = 10;

  /**
   * Returns the side: short where the light lies beyond the nose, seen from the camera.
   *
   * @param lightAzimuth from the direction to the camera, positive to camera right
   * @param faceYaw where the nose points, measured alike
   */
  public static FaceSide of(Degrees lightAzimuth, Degrees faceYaw) {
    double yaw = faceYaw.toHalfTurns().value();
    double beyond = lightAzimuth.minus(faceYaw).toHalfTurns().value();
    if (Math.abs(yaw) < FACING || beyond == 0) {
      return NEITHER;
    }
    return beyond > 0 == yaw > 0 ? SHORT : BROAD;
  }

  /** Returns the word: "broad", "short", "neither". */
  public String tradeName() {
    return switch (this) {
      case BROAD -> "broad";
      case SHORT -> "short";
      case NEITHER -> "neither";
    };
  }
}
