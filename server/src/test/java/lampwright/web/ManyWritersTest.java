package lampwright.web;

import java.util.List;
import lampwright.TestHouse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Twenty people write one setup at once. */
class ManyWritersTest {

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  @Test
  void noUpdateIsLostAndEveryAcknowledgedRevisionIsThere() throws Exception {
    TwentyWriters.mustLoseNothing(List.of(house.withToken("author@demo.example")));
  }
}
