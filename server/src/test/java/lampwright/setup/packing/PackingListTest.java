package lampwright.setup.packing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.setup.DemoSeeds;
import lampwright.setup.SetupDocument;
import lampwright.setup.packing.PackedKind.Need;
import lampwright.setup.packing.PackedKind.Section;
import org.junit.jupiter.api.Test;

/** What is carried; counts were made by hand from the demo's files. */
class PackingListTest {

  private static final DemoSeeds DEMO = new DemoSeeds();

  @Test
  void setupsShotOneAfterTheOtherShareTheirHeads() {
    PackingList list = list("coat-thrown", "over-the-cut");
    PackedKind strong = kind(list, Section.HEADS, "600 W·s battery head");
    PackedKind middle = kind(list, Section.HEADS, "400 W·s battery head");
    assertEquals(2, strong.count());
    assertEquals(3, middle.count());
    assertEquals(List.of(new Need(0, 1), new Need(1, 3)), middle.needs());
  }

  @Test
  void twoHeadsOnOnePackWantOnePackAndItsWeightComesFromTheKit() {
    PackingList alone = list("coat-thrown");
    PackingList withKit =
        PackingList.of(
            List.of(DEMO.setup("coat-thrown")), List.of(DEMO.kit("borrowed-kit")), Map.of());
    assertEquals(1, kind(alone, Section.PACKS, "1200 W·s mains pack").count());
    assertEquals(Optional.empty(), kind(alone, Section.PACKS, "1200 W·s mains pack").eachKg());
    assertEquals(Optional.of(7.4), kind(withKit, Section.PACKS, "1200 W·s mains pack").eachKg());
  }

  @Test
  void aKitThatHasFewerHeadsIsShortOfTheRest() {
    PackingList list =
        PackingList.of(List.of(DEMO.setup("over-the-cut")), List.of(DEMO.kit("van-kit")), Map.of());
    PackedKind middle = kind(list, Section.HEADS, "400 W·s battery head");
    assertEquals(Optional.of(2), middle.inKits());
    assertEquals(1, middle.lacking());
    assertTrue(list.lacking().contains(middle));
  }

  @Test
  void weightIsTheSumOfWhatIsKnownAndCountsTheRest() {
    Weight alone = list("coat-thrown").weight();
    Weight withKit =
        PackingList.of(
                List.of(DEMO.setup("coat-thrown")), List.of(DEMO.kit("borrowed-kit")), Map.of())
            .weight();
    assertEquals(1, alone.withoutWeight() - withKit.withoutWeight());
    assertEquals(7.4, withKit.kg() - alone.kg(), 1e-9);
  }

  @Test
  void nothingIsCarriedThatNoSetupNeedsAndEverySetupFindsItsHeads() {
    List<SetupDocument> all = List.copyOf(DEMO.setups().values());
    PackingList list = PackingList.of(all);
    for (PackedKind kind : list.kinds()) {
      int most = kind.needs().stream().mapToInt(Need::count).max().orElse(0);
      assertEquals(most, kind.count(), kind.name());
    }
    for (int i = 0; i < all.size(); i++) {
      int setup = i;
      int carried =
          list.in(Section.HEADS).stream()
              .flatMap(kind -> kind.needs().stream())
              .filter(need -> need.setup() == setup)
              .mapToInt(Need::count)
              .sum();
      int heads = all.get(i).lights().stream().mapToInt(light -> light.heads()).sum();
      assertEquals(heads, carried, all.get(i).title());
    }
  }

  @Test
  void ballastIsNothingIndoorsAndSomeInTheWind() {
    assertEquals(0, Ballast.of(DEMO.setup("two-at-a-time")).kg());
    assertTrue(
        DEMO.setups().values().stream().anyMatch(setup -> Ballast.of(setup).kg() > 0),
        "some setup of the demo stands in wind that wants ballast");
  }

  private static PackingList list(String... setups) {
    return PackingList.of(List.of(setups).stream().map(DEMO::setup).toList());
  }

  private static PackedKind kind(PackingList list, Section section, String name) {
    return list.in(section).stream()
        .filter(kind -> kind.name().equals(name))
        .findFirst()
        .orElseThrow();
  }
}
