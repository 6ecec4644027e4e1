package lampwright;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A server that is told so takes the demo studio away, and a later one may bring it again. */
@LongProgram
class DemoRemovedAtStartTest {

  private static final String SETUPS = "/api/studios/demo/setups";

  @Test
  void theDemoGoesAtAStartThatIsToldSoAndComesBackAtAnother(@TempDir Path folder) throws Exception {
    Path data = folder.resolve("data");
    try (ServerProcess first = ServerProcess.start(data)) {
      assertEquals(10.0, total(first));
    }
    try (ServerProcess second = ServerProcess.start(data, Map.of("LAMPWRIGHT_DEMO", "removed"))) {
      Visitor visitor = new Visitor(second.address());
      String session = "{\"email\":\"author@demo.example\",\"password\":\"four-heads-at-dusk\"}";
      assertEquals(401, visitor.post("/api/session", session).statusCode());
    }
    try (ServerProcess third = ServerProcess.start(data)) {
      assertEquals(10.0, total(third));
    }
  }

  private static double total(ServerProcess server) {
    return Told.number(Visitor.object(server.author().get(SETUPS)), "total");
  }
}
