package lampwright.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampwright.engine.unit.Stops;
import lampwright.gear.Head;
import lampwright.gear.Kit;
import lampwright.gear.Several;
import lampwright.gear.stock.GearItem;
import lampwright.gear.stock.GearKind;
import lampwright.gear.stock.WrittenKit;
import lampwright.learning.trail.Trail;
import lampwright.picture.ExifFacts;
import lampwright.picture.Picture;
import lampwright.picture.PictureReader;
import lampwright.place.Location;
import org.junit.jupiter.api.Test;

/** Holds the demo's other files to what its README promises. */
class DemoFilesTest {

  private static final int MOST_BYTES_OF_ALL_PICTURES = 12_000_000;

  private final DemoSeeds seeds = new DemoSeeds();

  private static Set<String> files(String folder) throws IOException {
    try (Stream<Path> files = Files.list(DemoSeeds.STUDIO.resolve(folder))) {
      return new TreeSet<>(
          files.map(file -> file.getFileName().toString().replaceAll("\\.[a-z]+$", "")).toList());
    }
  }

  @Test
  void theStudioNamesEveryFileOnce() throws Exception {
    for (String folder : List.of("setups", "kits", "gear", "locations")) {
      List<String> named = seeds.named(folder);
      assertEquals(new TreeSet<>(named).size(), named.size(), folder);
      assertEquals(files(folder), new TreeSet<>(named), folder);
    }
    assertEquals(files("setups"), files("histories"));
    assertEquals(
        new TreeSet<>(seeds.named("setups").stream().filter(seeds::isProven).toList()),
        files("pictures"));
  }

  @Test
  void everyPlaceOfASetupIsALocationThatSaysHowItIsThere() {
    Map<String, Location> locations = seeds.locations();
    seeds
        .setups()
        .forEach(
            (name, setup) ->
                assertTrue(
                    locations.containsKey(
                        setup
                            .occasion()
                            .flatMap(Occasion::place)
                            .flatMap(Occasion.Place::location)
                            .orElseThrow()
                            .text()),
                    name));
    locations.forEach(
        (name, location) -> {
          assertTrue(location.access().isPresent() && location.power().isPresent(), name);
          assertTrue(location.hazards().size() >= 2, name);
          assertTrue(location.ambientReadings().size() >= 3, name);
        });
    assertTrue(
        locations.values().stream().map(Location::indoors).distinct().count() == 2, "in and out");
  }

  @Test
  void theFiveKitsReallyDiffer() {
    assertEquals(5, seeds.named("kits").size());
    Kit van = seeds.kit("van-kit");
    Kit satchel = seeds.kit("satchel-kit");
    Kit house = seeds.kit("house-kit");
    Kit borrowed = seeds.kit("borrowed-kit");
    Kit one = seeds.kit("one-head-kit");
    assertTrue(heads(van) <= 4 && strongest(van) >= 600);
    assertTrue(heads(satchel) >= 8 && strongest(satchel) <= 200);
    assertTrue(
        house.heads().stream().map(Several::item).allMatch(head -> head.feed() == Head.Feed.MAINS));
    assertTrue(!borrowed.packs().isEmpty() && borrowed.heads().size() >= 4);
    assertTrue(
        borrowed.heads().stream().map(Several::item).anyMatch(head -> head.mount().isPresent()));
    assertEquals(1, heads(one));
  }

  private static int heads(Kit kit) {
    return kit.heads().stream().mapToInt(Several::count).sum();
  }

  private static double strongest(Kit kit) {
    return kit.heads().stream().mapToDouble(head -> head.item().energy().value()).max().orElse(0);
  }

  @Test
  void everyHeadOfAKitWasMetered() {
    for (String kit : seeds.named("kits")) {
      WrittenKit written = seeds.writtenKit(kit);
      Set<String> heads = new HashSet<>();
      written
          .gear()
          .forEach(
              use -> {
                GearItem item = seeds.gear().get(use.id().text());
                if (item != null && item.kind() == GearKind.HEAD) {
                  heads.add(item.name());
                  assertTrue(item.readings().size() >= 5, kit + " " + item.name());
                }
              });
      assertTrue(!heads.isEmpty(), kit);
    }
  }

  @Test
  void everyPictureIsMarkedAsAnIllustrationAndItsCameraSaysWhatTheSetupSays() throws Exception {
    long bytes = 0;
    for (String name : files("pictures")) {
      byte[] file = Files.readAllBytes(DemoSeeds.STUDIO.resolve("pictures/" + name + ".jpg"));
      bytes += file.length;
      Picture picture =
          assertInstanceOf(Picture.class, PictureReader.read(ByteBuffer.wrap(file)), name);
      assertTrue(Math.max(picture.width(), picture.height()) >= 1000, name);
      assertTrue(file.length > 15_000 && file.length < 260_000, name + " " + file.length);
      mustFit(name, picture.exif(), seeds.setup(name));
      assertTrue(caption(name).startsWith("Illustration. ") && caption(name).length() > 40, name);
    }
    assertTrue(bytes <= MOST_BYTES_OF_ALL_PICTURES, bytes + " bytes");
  }

  private String caption(String name) {
    return seeds.history(name).get("picture") instanceof Map<?, ?> picture
        ? String.valueOf(picture.get("caption"))
        : "";
  }

  private static void mustFit(String name, ExifFacts exif, SetupDocument setup) {
    assertEquals(
        0,
        Stops.ofRatio(exif.time().orElseThrow().seconds() / setup.exposure().time().seconds())
            .value(),
        0.05,
        name);
    assertEquals(
        setup.exposure().fNumber().value(), exif.fNumber().orElseThrow().value(), 0.05, name);
    assertEquals(setup.exposure().iso(), exif.iso().orElseThrow(), name);
    Occasion occasion = setup.occasion().orElseThrow();
    LocalDateTime then = occasion.date().orElseThrow().atTime(occasion.time().orElseThrow());
    Duration apart = Duration.between(then, exif.takenAt().orElseThrow()).abs();
    assertTrue(apart.toMinutes() <= 30, name + " " + apart);
    assertTrue(exif.place().isEmpty(), name + " tells where it was taken");
  }

  @Test
  void theTrailsLeadToProvenSetupsAndClearForSomething() {
    assertEquals(3, seeds.named("trails").size());
    for (String name : seeds.named("trails")) {
      Trail trail = seeds.trail(name);
      assertTrue(trail.clearsFor().isPresent(), name);
      Set<String> proven =
          seeds.setups().keySet().stream()
              .filter(seeds::isProven)
              .map(setup -> setup.replace("-", ""))
              .collect(Collectors.toSet());
      trail.setups().forEach(setup -> assertTrue(proven.contains(setup.text()), name + setup));
    }
  }
}
