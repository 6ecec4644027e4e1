package lampwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import lampwright.web.Documents;
import lampwright.web.ManyPictures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Kills the server while it brings an archive in, and starts it again. */
@LongProgram
class KilledImportTest {

  private static final String SETUPS = "/api/studios/demo/setups";
  private static final int PICTURES = 10;

  @RegisterExtension final ReachableFolder folder = new ReachableFolder();

  private List<Path> files(String of) throws IOException {
    try (Stream<Path> tree = Files.walk(folder.resolve("data").resolve(of))) {
      return tree.filter(Files::isRegularFile)
          .filter(file -> !file.toString().endsWith(".lock"))
          .toList();
    }
  }

  private static HttpResponse<String> send(Visitor author, byte[] archive) {
    return author
        .with("Content-Type", "application/zip")
        .send(
            "POST", "/api/studios/demo/imports?clashes=copy", BodyPublishers.ofByteArray(archive));
  }

  private static String started(Visitor author, byte[] archive) {
    HttpResponse<String> planned = send(author, archive);
    assertEquals(201, planned.statusCode(), planned.body());
    String place = planned.headers().firstValue("Location").orElseThrow();
    assertEquals(
        202, author.send("POST", place + "/execution", BodyPublishers.noBody()).statusCode());
    return place;
  }

  private static List<?> found(Visitor author) {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
    while (author.get("/health/ready").statusCode() != 200) {
      assertTrue(System.nanoTime() < end, author.get("/health/ready").body());
    }
    return Visitor.items(author.get(SETUPS + "?q=killedhalfway"));
  }

  @Test
  void aServerThatIsKilledInTheMiddleHasBroughtInNothingAndSweepsWhatIsLeft() throws Exception {
    Path data = folder.resolve("data");
    byte[] archive;
    try (ServerProcess first = ServerProcess.startAgain(data)) {
      Visitor author = first.author();
      HttpResponse<String> made =
          author.post(SETUPS, Documents.json(Documents.setup("Killedhalfway")));
      String setup = made.headers().firstValue("Location").orElseThrow();
      List<String> pictures = ManyPictures.add(author, setup, PICTURES);
      archive = author.bytes(setup + "/archive").body();
      for (String picture : pictures) {
        assertEquals(204, author.with("If-Match", "\"1\"").delete(picture).statusCode());
      }
      assertEquals(List.of(), files("pictures"));
      ManyPictures.untilDone(author, started(author, archive), 3);
      first.kill();
      assertTrue(!files("pictures").isEmpty(), "it was in the middle");
    }
    try (ServerProcess second = ServerProcess.start(data)) {
      assertEquals(List.of(), files("pictures"));
      assertEquals(List.of(), files("imports"));
      Visitor author = second.author();
      assertEquals(1, found(author).size());
      String place = started(author, archive);
      long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
      while (!"imported".equals(Visitor.object(author.get(place)).get("state"))) {
        assertTrue(System.nanoTime() < end, author.get(place).body());
      }
      while (found(author).size() < 2) {
        assertTrue(System.nanoTime() < end, "The index does not follow.");
      }
      assertEquals(4 * PICTURES, files("pictures").size());
      ProcessHandle postgres = second.postgres().orElseThrow();
      assertEquals(0, second.stop());
      postgres.onExit().get(60, TimeUnit.SECONDS);
    }
  }
}
