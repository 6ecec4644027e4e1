package lampwright.setup.packing;

/** What is done on a day, in the order in which it comes up. */
public enum Work {
  GROUND,
  CARRY,
  STAND,
  HEAD,
  AIM,
  METER,
  STEP,
  CAMERA,
  RUN_THROUGH,
  SUBJECT,
  SHOOT,
  STRIKE,
  STRIKE_CAMERA,
  MOVE
}
