package lampwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import lampwright.picture.Drawn;
import lampwright.web.Documents;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** A server process with little memory, and several large pictures at once. */
@LongProgram
class SmallServerTest {

  private static final String HEAP = "-Xmx192m";

  @RegisterExtension final ReachableFolder folder = new ReachableFolder();

  /** A TIFF of 8 MiB, each of whose 200 tags spans nearly all of it. */
  private static byte[] manyTags() {
    int size = 8 << 20;
    ByteBuffer file = ByteBuffer.allocate(size);
    file.put((byte) 'M').put((byte) 'M').putShort((short) 42).putInt(8).putShort((short) 202);
    file.putShort((short) 0x100).putShort((short) 4).putInt(1).putInt(10);
    file.putShort((short) 0x101).putShort((short) 4).putInt(1).putInt(10);
    for (int tag = 0; tag < 200; tag++) {
      file.putShort((short) (0x9000 + tag)).putShort((short) 7);
      file.putInt(size - 100_000).putInt(50_000);
    }
    return file.array();
  }

  @Test
  void bombsAndLargeHonestPicturesAtOnceLeaveAServerOf192MegabytesAnswering() throws Exception {
    Path data = Files.createDirectories(folder.resolve("data"));
    byte[] bomb = Drawn.png(Drawn.scene(8, 8));
    ByteBuffer.wrap(bomb).putInt(16, 29_999).putInt(20, 29_999);
    byte[] hollow = Drawn.png(Drawn.scene(8, 8));
    ByteBuffer.wrap(hollow).putInt(16, 11_000).putInt(20, 10_900);
    byte[] large = Drawn.jpeg(Drawn.image(6_000, 4_000, (x, y) -> (x >> 4 << 8) ^ (y >> 3)), 0.8);
    byte[] tiff = Drawn.tiff(Drawn.image(4_000, 4_000, (x, y) -> (x >> 4 << 8) ^ (y >> 3)));
    try (ServerProcess server = ServerProcess.start(data, Map.of("JDK_JAVA_OPTIONS", HEAP))) {
      Visitor author = server.author();
      String setup =
          author
              .post("/api/studios/demo/setups", Documents.json(Documents.setup("Pictured")))
              .headers()
              .firstValue("Location")
              .orElseThrow();
      List<Callable<HttpResponse<String>>> senders =
          Stream.of(bomb, large, hollow, tiff, manyTags(), large, hollow)
              .map(
                  file ->
                      (Callable<HttpResponse<String>>)
                          () -> Upload.whole(author, setup + "/pictures", file))
              .toList();
      try (ExecutorService threads = Executors.newVirtualThreadPerTaskExecutor()) {
        for (Future<HttpResponse<String>> answer : threads.invokeAll(senders)) {
          int status = answer.get().statusCode();
          assertTrue(List.of(201, 422, 503).contains(status), answer.get().body());
        }
      }
      HttpResponse<String> after = Upload.whole(author, setup + "/pictures", large);
      assertEquals(201, after.statusCode(), after.body());
      assertEquals(200, author.get("/health/ready").statusCode());
      HttpResponse<String> hollowAlone = Upload.whole(author, setup + "/pictures", hollow);
      assertEquals(422, hollowAlone.statusCode(), hollowAlone.body());
    }
  }
}
