package lampwright.drawing;

import lampwright.engine.light.Point;

/** From where a drawing sees a setup: which two of its axes lie along and up the sheet. */
enum View {
  /** Straight from above, the camera's side at the bottom. */
  PLAN("plan") {
    @Override
    double along(double x, double y, double z) {
      return x;
    }

    @Override
    double up(double x, double y, double z) {
      return y;
    }
  },
  /** From the camera's right, the camera's side at the left. */
  SIDE("side") {
    @Override
    double along(double x, double y, double z) {
      return y;
    }

    @Override
    double up(double x, double y, double z) {
      return z;
    }
  },
  /** From the camera's side. */
  FRONT("front") {
    @Override
    double along(double x, double y, double z) {
      return x;
    }

    @Override
    double up(double x, double y, double z) {
      return z;
    }
  };

  private final String key;

  View(String key) {
    this.key = key;
  }

  /** As the drawing's {@code data-view} says it. */
  String key() {
    return key;
  }

  abstract double along(double x, double y, double z);

  abstract double up(double x, double y, double z);

  double along(Point point) {
    return along(point.x(), point.y(), point.z());
  }

  double up(Point point) {
    return up(point.x(), point.y(), point.z());
  }
}
