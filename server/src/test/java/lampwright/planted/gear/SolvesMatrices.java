package lampwright.planted.gear;

import org.hipparchus.linear.RealMatrix;

/** Only gear.calibration may use the numerics library. */
record SolvesMatrices(RealMatrix matrix) {}
