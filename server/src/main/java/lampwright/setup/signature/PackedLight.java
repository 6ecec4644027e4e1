package lampwright.setup.signature;

import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import lampwright.engine.light.Direction;
import lampwright.setup.Role;

/**
 * What {@link LightLikeness} goes by of a signature, as numbers that need no reading: so many that
 * all setups of a large studio are compared one by one. What is not known is NaN.
 *
 * <p>Whoever stores the bytes must make them anew when {@link Signature#VERSION} or this layout
 * changes.
 */
public final class PackedLight {

  /** The roles in the order in which their counts stand. */
  private static final List<Role> ROLES = List.of(Role.values());

  /** How movements come out, in steps. */
  private static final List<Freezing.Kind> STEPS = List.of(Freezing.Kind.values());

  /** A unit vector: to camera right, along the nose, up. */
  private static final int KEY = ROLES.size();

  /** The binary logarithm of degrees. */
  private static final int SOFTNESS = KEY + 3;

  private static final int RATIO = SOFTNESS + 1;
  private static final int AMBIENT = RATIO + 1;

  /** The binary logarithm of watt seconds. */
  private static final int ENERGY = AMBIENT + 1;

  private static final int FREEZING = ENERGY + 1;

  /** 1 where it lights the picture, 0 where not. */
  private static final int SUN_LIGHTS = FREEZING + 1;

  private static final int SUN = SUN_LIGHTS + 1;

  /** Numbers of one setup. */
  public static final int NUMBERS = SUN + 3;

  /**
   * The same light from the other side counts as so many degrees more: the pattern is the same, the
   * face is not (a judgement).
   */
  static final double OTHER_SIDE_DEG = 15;

  /** What one sun and none are apart: as one from a quarter turn aside (a judgement). */
  private static final double SUN_OR_NONE_DEG = 90;

  /** Below this a source counts as a point: about the sun's own width in the sky. */
  private static final double POINT_DEG = 0.5;

  /** Less than any flash gives; so no flash at all is a number too. */
  private static final double NO_ENERGY_WS = 1;

  private final float[] numbers;

  private PackedLight(float[] numbers) {
    this.numbers = numbers;
  }

  public static PackedLight of(Signature signature) {
    float[] numbers = new float[NUMBERS];
    Arrays.fill(numbers, Float.NaN);
    for (int i = 0; i < ROLES.size(); i++) {
      numbers[i] = signature.lights().of(ROLES.get(i));
    }
    signature.key().ifPresent(key -> put(numbers, KEY, key.fromNose()));
    put(numbers, SOFTNESS, signature.softness().map(s -> softness(s.angularSize().value())));
    put(numbers, RATIO, signature.ratio().map(ratio -> ratio.keyOverFill().value()));
    put(numbers, AMBIENT, signature.ambient().map(ambient -> ambient.fromShooting().value()));
    put(numbers, ENERGY, signature.energy().map(energy -> energy(energy.energy().value())));
    put(
        numbers,
        FREEZING,
        signature.freezing().map(freezing -> 1.0 * STEPS.indexOf(freezing.kind())));
    Optional<SunInSetup> sun = signature.sun();
    put(numbers, SUN_LIGHTS, sun.flatMap(SunInSetup::lights).map(does -> does ? 1.0 : 0.0));
    sun.ifPresent(
        stands ->
            stands
                .fromCamera()
                .ifPresent(
                    azimuth ->
                        stands
                            .elevation()
                            .ifPresent(up -> put(numbers, SUN, new Direction(azimuth, up)))));
    return new PackedLight(numbers);
  }

  private static void put(float[] numbers, int at, Optional<Double> value) {
    value.ifPresent(known -> numbers[at] = known.floatValue());
  }

  private static void put(float[] numbers, int at, Direction direction) {
    double azimuth = Math.toRadians(direction.azimuth().value());
    double elevation = Math.toRadians(direction.elevation().value());
    numbers[at] = (float) (Math.cos(elevation) * Math.sin(azimuth));
    numbers[at + 1] = (float) (Math.cos(elevation) * Math.cos(azimuth));
    numbers[at + 2] = (float) Math.sin(elevation);
  }

  private static double softness(double deg) {
    return log2(Math.max(POINT_DEG, deg));
  }

  private static double energy(double ws) {
    return log2(Math.max(NO_ENERGY_WS, ws));
  }

  private static double log2(double value) {
    return Math.log(value) / Math.log(2);
  }

  /** The numbers one after the other, the most significant byte first. */
  public byte[] toBytes() {
    ByteBuffer bytes = ByteBuffer.allocate(NUMBERS * Float.BYTES);
    bytes.asFloatBuffer().put(numbers);
    return bytes.array();
  }

  /**
   * Reads what {@link #toBytes} wrote.
   *
   * @throws IllegalArgumentException where it is not so long
   */
  public static PackedLight ofBytes(byte[] bytes, int offset, int length) {
    if (length != NUMBERS * Float.BYTES) {
      throw new IllegalArgumentException("A packed light has not " + length + " bytes.");
    }
    float[] numbers = new float[NUMBERS];
    ByteBuffer.wrap(bytes, offset, length).asFloatBuffer().get(numbers);
    return new PackedLight(numbers);
  }

  /** How many lights of a role there are. */
  int lights(Role role) {
    return Math.round(numbers[ROLES.indexOf(role)]);
  }

  /** The key's degrees to camera right of the nose. */
  double keyAzimuthDeg() {
    return Math.toDegrees(Math.atan2(numbers[KEY], numbers[KEY + 1]));
  }

  /** The key's degrees above its target. */
  double keyElevationDeg() {
    return Math.toDegrees(Math.asin(Math.clamp(numbers[KEY + 2], -1.0, 1.0)));
  }

  double softnessDeg() {
    return Math.pow(2, numbers[SOFTNESS]);
  }

  double ratioStops() {
    return numbers[RATIO];
  }

  double ambientStops() {
    return numbers[AMBIENT];
  }

  double energyStops() {
    return numbers[ENERGY];
  }

  Freezing.Kind freezing() {
    return STEPS.get(Math.round(numbers[FREEZING]));
  }

  boolean isSunlit() {
    return numbers[SUN_LIGHTS] > 0;
  }

  /**
   * The distance of one part, 0 to 1.
   *
   * @return NaN where one of both does not know it
   */
  double distance(LikenessPart part, PackedLight other) {
    return part.distance(difference(part, other));
  }

  /** The difference of one part in its unit; NaN where one of both does not know it. */
  private double difference(LikenessPart part, PackedLight other) {
    return switch (part) {
      case LIGHTS -> lightsApart(other);
      case DIRECTION -> apart(KEY, other);
      case HEIGHT ->
          isAlike(KEY + 2, other) ? 0 : Math.abs(keyElevationDeg() - other.keyElevationDeg());
      case SOFTNESS -> between(SOFTNESS, other);
      case RATIO -> between(RATIO, other);
      case AMBIENT -> between(AMBIENT, other);
      case ENERGY -> between(ENERGY, other);
      case FREEZING -> between(FREEZING, other);
      case SUN -> sunApart(other);
    };
  }

  private boolean isAlike(int at, PackedLight other) {
    return numbers[at] == other.numbers[at];
  }

  private double between(int at, PackedLight other) {
    return Math.abs(numbers[at] - other.numbers[at]);
  }

  /** M. Ružička 1958: 1 less the sum of the smaller counts over that of the larger. */
  private double lightsApart(PackedLight other) {
    float both = 0;
    float either = 0;
    for (int role = 0; role < ROLES.size(); role++) {
      both += Math.min(numbers[role], other.numbers[role]);
      either += Math.max(numbers[role], other.numbers[role]);
    }
    return either > 0 ? 1 - both / either : 0;
  }

  /**
   * The angle on the sphere in degrees between two directions, or where that is less, that to the
   * other's mirror image and {@link #OTHER_SIDE_DEG}.
   */
  private double apart(int at, PackedLight other) {
    double straight = angleDeg(at, other, 1);
    return numbers[at] * other.numbers[at] < 0
        ? Math.min(straight, angleDeg(at, other, -1) + OTHER_SIDE_DEG)
        : straight;
  }

  /** Whether the keys are nearer to one another when one is mirrored. */
  boolean isOtherSide(PackedLight other) {
    return apart(KEY, other) < angleDeg(KEY, other, 1);
  }

  /**
   * By the chord, which is exact where the angle is small.
   *
   * @param side -1 mirrors the other
   */
  private double angleDeg(int at, PackedLight other, int side) {
    double right = numbers[at] - side * other.numbers[at];
    double ahead = numbers[at + 1] - other.numbers[at + 1];
    double up = numbers[at + 2] - other.numbers[at + 2];
    double chord = Math.sqrt(right * right + ahead * ahead + up * up);
    return 2 * Math.toDegrees(Math.asin(Math.min(1, chord / 2)));
  }

  private double sunApart(PackedLight other) {
    double lights = between(SUN_LIGHTS, other);
    if (lights == 0 && isSunlit()) {
      double angle = apart(SUN, other);
      // Where it stands is unknown in one of both, but that it lights is known.
      return Double.isNaN(angle) ? 0 : angle;
    }
    return lights * SUN_OR_NONE_DEG;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof PackedLight that && Arrays.equals(numbers, that.numbers);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(numbers);
  }

  @Override
  public String toString() {
    return Arrays.toString(numbers);
  }
}
