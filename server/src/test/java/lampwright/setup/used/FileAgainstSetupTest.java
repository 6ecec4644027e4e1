package lampwright.setup.used;

import static lampwright.wording.WordsForTests.english;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.ShutterTime;
import lampwright.setup.Documents;
import org.junit.jupiter.api.Test;

/**
 * Common practice, no source: a doubled time is one stop, f/5.6 to f/8 one, ISO 100 to 160 two
 * thirds.
 */
class FileAgainstSetupTest {

  private static final Object PLAN =
      Documents.with(
          Documents.resource("one-light.json"),
          "/exposure",
          Map.of("f_number", 5.6, "time", "1/125", "iso", 100.0));

  private static FileSettings file(String aperture, String time, String iso) {
    return new FileSettings(
        Optional.of(FNumber.parse(aperture)),
        Optional.of(ShutterTime.parse(time)),
        Optional.of(Iso.parse(iso)),
        Optional.empty(),
        Optional.empty());
  }

  private static List<String> sentences(FileSettings file) {
    return FileAgainstSetup.of(Documents.setup(PLAN), file).differs().stream()
        .map(of -> english(of.sentence()))
        .toList();
  }

  @Test
  void theSameSettingsDifferInNothing() {
    assertEquals(List.of(), sentences(file("f/5.6", "1/125", "100")));
  }

  @Test
  void eachSettingThatDiffersSaysByHowManyThirdsAndOfWhichLight() {
    assertEquals(
        List.of(
            "The file says f/8, the setup f/5.6: one stop less light of every kind.",
            "The file says 1/60 s, the setup 1/125 s: one stop more ambient.",
            "The file says ISO 160, the setup ISO 100: two thirds of a stop more sensitive."),
        sentences(file("f/8", "1/60", "160")));
    assertEquals(
        List.of("The file says 1/50 s, the setup 1/125 s: one and a third stops more ambient."),
        sentences(file("f/5.6", "1/50", "100")));
  }

  @Test
  void whatTheSetupLacksIsOffered() {
    FileSettings file =
        new FileSettings(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.of(LocalDateTime.of(2026, 10, 3, 17, 45, 10)),
            Optional.of(ZoneOffset.ofHours(1)));
    Object undated = Documents.with(PLAN, "/occasion", Map.of("weather", "Fog"));
    assertEquals(
        List.of(
            new FileAgainstSetup.Offer("/occasion/date", "2026-10-03"),
            new FileAgainstSetup.Offer("/occasion/time", "17:45"),
            new FileAgainstSetup.Offer("/occasion/utc_offset", "+01:00")),
        FileAgainstSetup.of(Documents.setup(undated), file).offers());
    Object dated = Documents.with(PLAN, "/occasion", Map.of("date", "2026-10-04"));
    assertEquals(
        List.of("The file says 2026-10-03, the setup 2026-10-04."),
        FileAgainstSetup.of(Documents.setup(dated), file).differs().stream()
            .map(of -> english(of.sentence()))
            .toList());
  }
}
