package lampwright.benchmarks.crash;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ConcurrentMap;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.random.RandomGenerator;
import javax.imageio.ImageIO;
import lampwright.document.Json;

/**
 * One client that writes by a seed until it is told to stop or the server is gone. It changes what
 * it made itself, so it knows what must be there; and one setup that all clients change, where one
 * of them wins each revision.
 */
final class Writer implements AutoCloseable {

  private static final String MERGE_PATCH = "application/merge-patch+json";

  private final String name;
  private final Random random;
  private final String setups;
  private final String shared;
  private final ConcurrentMap<Integer, String> winners;
  private final Journal journal;
  private final List<Thing> things = new ArrayList<>();
  private final Set<String> loose = new HashSet<>();
  private long answered;
  private long refused;

  /**
   * Begins.
   *
   * @param setups the address of the studio's setups
   * @param shared that of the setup that everybody changes
   * @param winners whose title each revision of that got, as far as it was acknowledged
   */
  Writer(
      String name,
      long seed,
      String setups,
      String shared,
      ConcurrentMap<Integer, String> winners,
      Path folder)
      throws IOException {
    this.name = name;
    this.random = new Random(seed);
    this.setups = setups;
    this.shared = shared;
    this.winners = winners;
    this.journal = new Journal(folder.resolve("journal-" + name + ".txt"));
  }

  List<Thing> things() {
    return things;
  }

  /**
   * The hashes of the files that it sent and that were not acknowledged: these, and no others, may
   * lie in the folder without a row until the next start takes them away.
   */
  Set<String> loose() {
    return Set.copyOf(loose);
  }

  /** The server was started, and has taken away what had no row. */
  void forgetLoose() {
    loose.clear();
  }

  /** How many of its changes were acknowledged. */
  long answered() {
    return answered;
  }

  /** How many were refused for want of the database or the like. */
  long refused() {
    return refused;
  }

  /** Writes until told to stop; an answer that does not come puts its thing in doubt. */
  void write(Api api, AtomicBoolean stop) {
    while (!stop.get()) {
      try {
        step(api);
      } catch (IOException gone) {
        journal.write("gone " + gone.getMessage());
        if (!stop.get()) {
          pause();
        }
      }
    }
  }

  private static void pause() {
    try {
      Thread.sleep(20);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private void step(Api api) throws IOException {
    List<Thing> sure =
        things.stream()
            .filter(thing -> thing.isMade() && !thing.isDeleted && thing.doubt.isEmpty())
            .toList();
    int what = random.nextInt(100);
    if (sure.isEmpty() || what < 22) {
      create(api, Optional.empty());
    } else if (what < 34) {
      create(api, Optional.of(name + "-" + things.size() + "-" + random.nextInt(1_000_000)));
    } else {
      Thing thing = sure.get(random.nextInt(sure.size()));
      if (what < 52) {
        change(api, thing, "PATCH");
      } else if (what < 62) {
        change(api, thing, "PUT");
      } else if (what < 70) {
        delete(api, thing);
      } else if (what < 78) {
        take(api, thing);
      } else if (what < 84) {
        note(api, thing);
      } else if (what < 90) {
        picture(api, thing);
      } else {
        contend(api);
      }
    }
  }

  private void create(Api api, Optional<String> key) throws IOException {
    Thing thing = new Thing("mark" + name + "x" + things.size(), key);
    String title = "Written " + thing.word;
    thing.doubt = Optional.of(new Thing.Doubt(title));
    things.add(thing);
    Api.Answer answer = create(api, thing, title);
    if (answer.status() == 201) {
      made(thing, answer, title);
    }
  }

  /** Sends what makes a thing, with its key if it has one. */
  Api.Answer create(Api api, Thing thing, String title) throws IOException {
    Map<String, String> headers =
        thing.key.map(key -> Map.of("Idempotency-Key", "\"" + key + "\"")).orElse(Map.of());
    return sent("create " + thing.word, () -> api.post(setups, document(title), headers));
  }

  static void made(Thing thing, Api.Answer answer, String title) {
    thing.address = answer.location().orElseThrow();
    thing.acknowledged.put(answer.number("revision"), title);
    thing.doubt = Optional.empty();
  }

  private void change(Api api, Thing thing, String verb) throws IOException {
    String title = "Changed " + thing.word + " to " + random.nextInt(1_000_000);
    thing.doubt = Optional.of(new Thing.Doubt(title));
    boolean whole = verb.equals("PUT");
    byte[] body =
        Json.print(whole ? document(title) : Map.of("title", title))
            .getBytes(StandardCharsets.UTF_8);
    Api.Answer answer =
        sent(
            verb + " " + thing.word,
            () ->
                api.send(
                    verb,
                    thing.address,
                    body,
                    Map.of(
                        "If-Match",
                        "\"" + thing.revision() + "\"",
                        "Content-Type",
                        whole ? "application/json" : MERGE_PATCH)));
    if (answer.status() == 200) {
      thing.acknowledged.put(answer.number("revision"), title);
      thing.doubt = Optional.empty();
    }
  }

  private void delete(Api api, Thing thing) throws IOException {
    thing.doubt = Optional.of(new Thing.Doubt(""));
    Api.Answer answer =
        sent(
            "DELETE " + thing.word,
            () ->
                api.send(
                    "DELETE",
                    thing.address,
                    new byte[0],
                    Map.of("If-Match", "\"" + thing.revision() + "\"")));
    if (answer.status() == 204) {
      thing.isDeleted = true;
      thing.doubt = Optional.empty();
    }
  }

  private void take(Api api, Thing thing) throws IOException {
    Map<String, Object> take = new LinkedHashMap<>();
    take.put("at", Instant.now().toString());
    take.put("setup_revision", thing.revision());
    take.put("client_key", name + "-take-" + random.nextInt(1_000_000_000));
    beside(thing, sent("take", () -> api.post(thing.address + "/takes", take, Map.of())));
  }

  private void note(Api api, Thing thing) throws IOException {
    Map<String, Object> note = Map.of("text", "Noted of " + thing.word);
    beside(thing, sent("note", () -> api.post(thing.address + "/notes", note, Map.of())));
  }

  private static void beside(Thing thing, Api.Answer answer) {
    if (answer.status() == 201) {
      thing.beside.add(answer.location().orElseThrow());
    }
  }

  private void picture(Api api, Thing thing) throws IOException {
    byte[] file = photograph(random);
    String hash = Proof.sha256(file);
    loose.add(hash);
    Api.Answer answer =
        sent(
            "picture",
            () ->
                api.send(
                    "POST",
                    thing.address + "/pictures?kind=final",
                    file,
                    Map.of("Content-Type", "image/jpeg")));
    if (answer.status() == 201) {
      thing.pictures.put(answer.at("id").toString(), answer.at("sha256").toString());
      loose.remove(hash);
    }
  }

  /** A small picture that is like no other. */
  static byte[] photograph(RandomGenerator random) throws IOException {
    BufferedImage image = new BufferedImage(96, 64, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        image.setRGB(x, y, random.nextInt(1 << 24));
      }
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image, "jpeg", out);
    return out.toByteArray();
  }

  /** Changes what all change, from the revision that it sees; one of them wins. */
  private void contend(Api api) throws IOException {
    Api.Answer now = api.get(shared);
    if (now.status() != 200) {
      refused++;
      return;
    }
    String title = "Everybody's, by " + name + " " + random.nextInt(1_000_000);
    Api.Answer answer =
        sent(
            "contend " + now.number("revision"),
            () ->
                api.send(
                    "PATCH",
                    shared,
                    Json.print(Map.of("title", title)).getBytes(StandardCharsets.UTF_8),
                    Map.of(
                        "If-Match",
                        "\"" + now.number("revision") + "\"",
                        "Content-Type",
                        MERGE_PATCH)));
    if (answer.status() == 200) {
      String before = winners.putIfAbsent(answer.number("revision"), title);
      if (before != null) {
        throw new Lost(
            "I5",
            "Revision %d was given to %s and to %s"
                .formatted(answer.number("revision"), before, title));
      }
    }
  }

  private interface Sending {
    Api.Answer send() throws IOException;
  }

  private Api.Answer sent(String what, Sending sending) throws IOException {
    journal.write("sent " + what);
    Api.Answer answer = sending.send();
    journal.write("answered " + answer.status() + " " + what);
    if (answer.status() < 300) {
      answered++;
    } else if (answer.status() >= 500) {
      refused++;
      pause();
    } else if (answer.status() != 412) {
      throw new Lost("I1", what + " was answered by " + answer.status() + ": " + answer.text());
    }
    return answer;
  }

  /** A small sound setup. */
  static Map<String, Object> document(String title) {
    Map<String, Object> light = new LinkedHashMap<>();
    light.put("id", "key");
    light.put("role", "key");
    light.put(
        "head",
        Map.of(
            "name",
            "400 W·s battery head",
            "energy_ws",
            400,
            "output",
            Map.of("kind", "guide_number", "guide_number_m", 64)));
    light.put("place", Map.of("x_m", -1.2, "y_m", -1.6, "z_m", 1.6));
    light.put("target", Map.of("name", "face", "at", Map.of("x_m", 0, "y_m", 0, "z_m", 1.6)));
    light.put("stops_down", 3);
    Map<String, Object> setup = new LinkedHashMap<>();
    setup.put("title", title);
    setup.put("moods", List.of("quiet"));
    setup.put("exposure", Map.of("f_number", 5.6, "time", "1/125", "iso", 100));
    setup.put("lights", List.of(light));
    setup.put("ambient", Map.of("ev100", 11));
    return setup;
  }

  @Override
  public void close() throws IOException {
    journal.close();
  }
}
