package lampwright.setup.packing;

/**
 * How long the work of a day takes, in whole minutes: all of it common practice, no source, and for
 * a crew to put right by its own watch.
 *
 * @param ground to walk the ground at a new place: hazards, leave, shelter
 * @param carry one light with its stand and ballast from the van
 * @param stand to open a stand and lay its ballast on
 * @param head to put head, modifier and gels on
 * @param aim to raise and aim it and set its power
 * @param meter to meter it alone and with those before it
 * @param step any other step of the build order
 * @param camera to set the camera, frame and focus
 * @param runThrough with a stand-in: marks, focus, readings
 * @param subject until the subject stands ready
 * @param shoot where the setup does not say how many frames at what pace
 * @param strike one light, back to the van
 * @param move from one setup to the next
 * @param reserve kept free before the wanted light
 */
public record WorkTimes(
    int ground,
    int carry,
    int stand,
    int head,
    int aim,
    int meter,
    int step,
    int camera,
    int runThrough,
    int subject,
    int shoot,
    int strike,
    int move,
    int reserve) {

  /** As long as any of them may take, in minutes. */
  public static final int MOST = 240;

  /** What is taken where nobody says: common practice, no source. */
  public static WorkTimes usual() {
    return new WorkTimes(5, 3, 3, 4, 2, 2, 3, 6, 8, 3, 15, 3, 15, 10);
  }
}
