package lampwright.browser;

import lampwright.TestHouse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class PhoneStoryTest {

  @RegisterExtension static final Browser browser = Browser.phone();

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  @Test
  void anAssistantWalksTheSameStoryOnAPhone() {
    new Story(house, browser).walk();
  }
}
