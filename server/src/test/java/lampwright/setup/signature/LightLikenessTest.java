package lampwright.setup.signature;

import static lampwright.wording.WordsForTests.english;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleFunction;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Stops;
import lampwright.engine.unit.WattSeconds;
import lampwright.setup.DemoSeeds;
import lampwright.setup.LightId;
import lampwright.setup.RandomDocuments;
import lampwright.setup.Role;
import org.junit.jupiter.api.Test;

class LightLikenessTest {

  /** Floats keep seven digits. */
  private static final double CLOSE = 1e-4;

  private static final Signature PORTRAIT =
      light(45, 30, 40, 1.5, -1, 400, List.of(Role.KEY, Role.FILL));

  private static Signature light(
      double azimuthDeg,
      double elevationDeg,
      double softnessDeg,
      double ratioStops,
      double ambientStops,
      double energyWs,
      List<Role> roles) {
    return new Signature(
        counts(roles),
        Optional.of(
            new KeyLight(
                new LightId("key"),
                true,
                new Degrees(azimuthDeg),
                new Degrees(elevationDeg),
                new Degrees(0))),
        Optional.of(new Softness(new Degrees(softnessDeg))),
        Optional.of(new KeyToFill(new Stops(ratioStops))),
        Optional.empty(),
        Optional.of(new AmbientOffset(new Stops(ambientStops))),
        Optional.of(
            new SunInSetup(
                SunInSetup.Height.INDOORS,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(false),
                List.of())),
        Optional.of(new Freezing(Optional.empty())),
        Optional.of(new FrameEnergy(new WattSeconds(energyWs))),
        Optional.empty(),
        List.of());
  }

  private static LightCounts counts(List<Role> roles) {
    return new LightCounts(
        roles.stream()
            .distinct()
            .sorted()
            .map(
                role ->
                    new LightCounts.OfRole(role, (int) roles.stream().filter(role::equals).count()))
            .toList());
  }

  private static Signature onlyLights(Role... roles) {
    return new Signature(
        counts(List.of(roles)),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of());
  }

  private static double part(LikenessPart part, Signature asked, Signature here) {
    return LightLikeness.of(asked, here).parts().getOrDefault(part, Double.NaN);
  }

  private static List<Signature> many() {
    List<Signature> many = new ArrayList<>();
    new DemoSeeds().setups().values().forEach(setup -> many.add(Signature.of(setup)));
    for (int seed = 0; seed < 20; seed++) {
      many.add(Signature.of(RandomDocuments.setup(new Random(seed))));
    }
    return many;
  }

  @Test
  void everySetupIsTheSameAsItselfAndTheDistanceIsSymmetricAndWithinBounds() {
    List<Signature> many = many();
    for (Signature one : many) {
      assertEquals(0, LightLikeness.of(one, one).distance());
      for (Signature other : many) {
        LightLikeness there = LightLikeness.of(one, other);
        LightLikeness back = LightLikeness.of(other, one);
        assertEquals(there.distance(), back.distance());
        assertEquals(there.sureness(), back.sureness());
        assertTrue(there.distance() >= 0 && there.distance() <= 1, there.parts().toString());
        assertTrue(there.sureness() > 0 && there.sureness() <= 1, there.parts().toString());
        double rank = LightLikeness.rank(PackedLight.of(one), PackedLight.of(other));
        assertTrue(rank >= 0 && rank <= 1, there.parts().toString());
      }
      LightLikeness.of(many.getFirst(), one)
          .sentences()
          .forEach(sentence -> assertTrue(!english(sentence).contains("NaN"), english(sentence)));
      PackedLight packed = PackedLight.of(one);
      byte[] bytes = packed.toBytes();
      assertEquals(PackedLight.NUMBERS * 4, bytes.length);
      assertEquals(packed, PackedLight.ofBytes(bytes, 0, bytes.length));
    }
  }

  /**
   * M. Ružička 1958: the smaller counts over the larger. Key and fill, and a key with two rims: 1
   * of 4.
   */
  @Test
  void lightsAreComparedByWhatBothHaveOfWhatEitherHas() {
    Signature rims = onlyLights(Role.KEY, Role.RIM, Role.RIM);
    assertEquals(0.75, part(LikenessPart.LIGHTS, onlyLights(Role.KEY, Role.FILL), rims), CLOSE);
    assertEquals(1, part(LikenessPart.LIGHTS, onlyLights(Role.KEY), onlyLights(Role.HAIR)), CLOSE);
  }

  /**
   * The spherical law of cosines: 60° aside and 45° up is 69.3° from straight before the nose,
   * since cos 69.3° is cos 60° times cos 45°.
   */
  @Test
  void theKeysDirectionIsAnAngleOnTheSphere() {
    Signature front = light(0, 0, 40, 1, 0, 400, List.of(Role.KEY));
    Signature aside = light(30, 0, 40, 1, 0, 400, List.of(Role.KEY));
    Signature high = light(60, 45, 40, 1, 0, 400, List.of(Role.KEY));
    assertEquals(0.5, part(LikenessPart.DIRECTION, front, aside), CLOSE);
    double angle = Math.toDegrees(Math.acos(0.5 * Math.sqrt(0.5)));
    assertEquals(angle / (angle + 30), part(LikenessPart.DIRECTION, front, high), CLOSE);
  }

  @Test
  void theDifferenceThatCountsHalfCountsHalf() {
    List<Role> roles = List.of(Role.KEY, Role.FILL);
    assertEquals(
        0.5, part(LikenessPart.HEIGHT, PORTRAIT, light(45, 50, 40, 1.5, -1, 400, roles)), CLOSE);
    assertEquals(
        0.5, part(LikenessPart.SOFTNESS, PORTRAIT, light(45, 30, 20, 1.5, -1, 400, roles)), CLOSE);
    assertEquals(
        0.5, part(LikenessPart.RATIO, PORTRAIT, light(45, 30, 40, 0.5, -1, 400, roles)), CLOSE);
    assertEquals(
        0.5, part(LikenessPart.AMBIENT, PORTRAIT, light(45, 30, 40, 1.5, -2, 400, roles)), CLOSE);
    assertEquals(
        0.5, part(LikenessPart.ENERGY, PORTRAIT, light(45, 30, 40, 1.5, -1, 100, roles)), CLOSE);
  }

  @Test
  void theDistanceGrowsWithTheDifferenceOfEachPartAlone() {
    List<Role> roles = List.of(Role.KEY, Role.FILL);
    grows(20, x -> light(45 + 6 * x, 30, 40, 1.5, -1, 400, roles));
    grows(9, x -> light(45, 30 + 6 * x, 40, 1.5, -1, 400, roles));
    grows(20, x -> light(45, 30, 40 + 6 * x, 1.5, -1, 400, roles));
    grows(20, x -> light(45, 30, 40, 1.5 + x / 4, -1, 400, roles));
    grows(20, x -> light(45, 30, 40, 1.5, -1 - x / 4, 400, roles));
    grows(20, x -> light(45, 30, 40, 1.5, -1, 400 + 100 * x, roles));
    grows(
        20,
        x -> {
          List<Role> more = new ArrayList<>(roles);
          for (int i = 0; i < x; i++) {
            more.add(Role.ACCENT);
          }
          return light(45, 30, 40, 1.5, -1, 400, more);
        });
  }

  private static void grows(int steps, DoubleFunction<Signature> changed) {
    double before = -1;
    for (int step = 0; step <= steps; step++) {
      double now = LightLikeness.of(PORTRAIT, changed.apply(step)).distance();
      assertTrue(now > before, "step " + step + ": " + now + " after " + before);
      before = now;
    }
  }

  @Test
  void theMirrorImageIsNearButNotTheSame() {
    List<Role> roles = List.of(Role.KEY, Role.FILL);
    Signature mirrored = light(-45, 30, 40, 1.5, -1, 400, roles);
    LightLikeness likeness = LightLikeness.of(PORTRAIT, mirrored);
    assertTrue(likeness.distance() > 0);
    // 15 of 45.
    assertEquals(1.0 / 3, part(LikenessPart.DIRECTION, PORTRAIT, mirrored), CLOSE);
    assertTrue(
        likeness.distance()
            < LightLikeness.of(PORTRAIT, light(90, 30, 40, 1.5, -1, 400, roles)).distance());
    assertTrue(
        english(likeness.sentences())
            .contains(
                "key from the other side: key here 45° left of the nose, not 45° right of the"
                    + " nose"),
        english(likeness.sentences()).toString());
  }

  @Test
  void whatOneOfThemDoesNotKnowCountsNeitherWay() {
    Signature bare = onlyLights(Role.KEY, Role.FILL);
    LightLikeness likeness = LightLikeness.of(PORTRAIT, bare);
    assertEquals(0, likeness.distance());
    assertEquals(LikenessPart.LIGHTS.weight(), likeness.sureness());
    assertEquals(
        List.of("lights: 1 key and 1 fill in both", "little is known of both"),
        english(likeness.sentences()));
  }

  /**
   * Of the same lights, who is known to be alike comes before who may be, and that before unlike.
   */
  @Test
  void inTheOrderLittleKnownIsNotFirst() {
    List<Role> roles = List.of(Role.KEY, Role.FILL);
    PackedLight asked = PackedLight.of(PORTRAIT);
    double same = LightLikeness.rank(asked, asked);
    double near = LightLikeness.rank(asked, PackedLight.of(light(60, 35, 30, 2, -1.5, 300, roles)));
    double unknown = LightLikeness.rank(asked, PackedLight.of(onlyLights(Role.KEY, Role.FILL)));
    double far = LightLikeness.rank(asked, PackedLight.of(light(-170, -40, 1, 8, 6, 9_000, roles)));
    assertEquals(1, same);
    assertTrue(same > near && near > unknown && unknown > far, near + " " + unknown + " " + far);
  }

  @Test
  void itSaysWhatIsAlikeAndWhatIsNot() {
    Signature other = light(45, 30, 40, 1.5, -2, 400, List.of(Role.KEY, Role.FILL));
    assertEquals(
        List.of(
            "lights: 1 key and 1 fill in both",
            "key 45° right of the nose in both",
            "key soft (40° wide) in both",
            "here 1.0 stop less ambient"),
        english(LightLikeness.of(PORTRAIT, other).sentences()));
    assertNotEquals(PackedLight.of(PORTRAIT), PackedLight.of(other));
  }

  @Test
  void weightsAddUpToOne() {
    double sum = 0;
    for (LikenessPart part : LikenessPart.values()) {
      sum += part.weight();
    }
    assertEquals(1, sum, 1e-12);
  }
}
