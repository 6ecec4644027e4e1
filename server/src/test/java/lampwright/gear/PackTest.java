package lampwright.gear;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lampwright.document.Problem;
import lampwright.document.Reading;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.WattSeconds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class PackTest {

  private static String pack(String name) {
    return "{'name':'" + name + "','energy_ws':1200,'outlets':2}";
  }

  private static String kit(String heads, String packs) {
    return "{'name':'tonight','heads':[" + heads + "],'packs':[" + packs + "]}";
  }

  private static String headOn(String pack) {
    return "{'count':1,'head':" + GearDocuments.headJson("'pack':'" + pack + "'") + "}";
  }

  @Test
  void everyFieldIsWrittenAsItWasRead() {
    String json =
        "{'name':'floor pack','energy_ws':2400,'outlets':3,'recycle_s':1.8,"
            + "'flashes_per_charge':210,'batteries':2,'feed':'mains','weight_kg':8.5,"
            + "'note':'the second outlet is stiff'}";
    Pack pack = GearDocuments.sound(Pack.FORM, json);
    assertEquals(
        new Pack(
            "floor pack",
            new WattSeconds(2400),
            3,
            Optional.of(new Seconds(1.8)),
            Optional.of(210),
            2,
            Head.Feed.MAINS,
            Optional.of(8.5),
            Optional.of("the second outlet is stiff")),
        pack);
    assertEquals(GearDocuments.parsed(json), GearDocuments.written(Pack.FORM, pack));
  }

  @Test
  void aPlainPackHasABatteryAndIsWrittenAsShort() {
    Pack pack = GearDocuments.sound(Pack.FORM, pack("shoulder pack"));
    assertEquals(Head.Feed.BATTERY, pack.feed());
    assertEquals(1, pack.batteries());
    assertEquals(
        GearDocuments.parsed(pack("shoulder pack")), GearDocuments.written(Pack.FORM, pack));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "'energy_ws':1200 | /outlets",
        "'outlets':2 | /energy_ws",
        "'energy_ws':0,'outlets':2 | /energy_ws",
        "'energy_ws':1200,'outlets':0 | /outlets",
        "'energy_ws':1200,'outlets':9 | /outlets",
        "'energy_ws':1200,'outlets':2,'recycle_s':0 | /recycle_s",
        "'energy_ws':1200,'outlets':2,'flashes_per_charge':0 | /flashes_per_charge",
        "'energy_ws':1200,'outlets':2,'batteries':21 | /batteries",
        "'energy_ws':1200,'outlets':2,'feed':'sun' | /feed",
        "'energy_ws':1200,'outlets':2,'weight_kg':0 | /weight_kg",
        "'energy_ws':1200,'outlets':2,'mount':'ring' | /mount"
      })
  void whatDoesNotFitIsPointedAt(String fields, String pointer) {
    String json = "{'name':'one'," + fields + "}";
    assertEquals(pointer, GearDocuments.problems(Pack.FORM, json).getFirst().pointer());
  }

  @Test
  void aKitHoldsSeveralPacksOfAKindAndTheHeadsThatHangOnThem() {
    String json =
        kit(
            headOn("floor pack"),
            "{'count':2,'pack':" + pack("floor pack") + "},{'pack':" + pack("other") + "}");
    Kit kit = GearDocuments.sound(Kit.FORM, json);
    assertEquals(List.of(2, 1), kit.packs().stream().map(Several::count).toList());
    assertEquals(new Reading.Sound<>(kit), Kit.FORM.read(Kit.FORM.write(kit)));
  }

  @Test
  void aKitWithoutPacksIsWrittenWithoutThem() {
    Kit kit = GearDocuments.sound(Kit.FORM, "{'name':'tonight'}");
    assertEquals(List.of(), kit.packs());
    assertEquals(GearDocuments.parsed("{'name':'tonight'}"), GearDocuments.written(Kit.FORM, kit));
  }

  @Test
  void aHeadOnAPackThatTheKitLacksIsPointedAtWithThePacksThatItHas() {
    String json =
        kit(
            headOn("floor pack") + "," + headOn("Floor pack"),
            "{'pack':" + pack("floor pack") + "},{'pack':" + pack("shoulder pack") + "}");
    assertEquals(
        List.of(
            new Problem(
                "/heads/1/head/pack",
                "Pack (\"Floor pack\") must be the name of one of this kit's packs:"
                    + " \"floor pack\", \"shoulder pack\".")),
        GearDocuments.problems(Kit.FORM, json));
  }

  @Test
  void aHeadOnAPackInAKitWithoutPacksIsPointedAt() {
    assertEquals(
        List.of(
            new Problem(
                "/heads/0/head/pack",
                "Pack (\"floor pack\") must be the name of one of this kit's packs, and it has"
                    + " none. Maybe add the pack?")),
        GearDocuments.problems(Kit.FORM, kit(headOn("floor pack"), "")));
  }

  @Test
  void theMessageNamesEightPacksAtMost() {
    String packs =
        IntStream.range(0, 60)
            .mapToObj(i -> "{'pack':" + pack("pack " + i) + "}")
            .collect(Collectors.joining(","));
    String message =
        GearDocuments.problems(Kit.FORM, kit(headOn("other"), packs)).getFirst().message();
    assertEquals("\"pack 7\" and 52 more.", message.substring(message.indexOf("\"pack 7")));
  }

  @Test
  void twoPacksOfOneNameArePointedAt() {
    String json = kit("", "{'pack':" + pack("one") + "},{'pack':" + pack("one") + "}");
    assertEquals(
        List.of(
            new Problem(
                "/packs/1/pack/name",
                "Name (\"one\") is another pack's already. Maybe raise that one's count?")),
        GearDocuments.problems(Kit.FORM, json));
  }
}
