package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.Map;
import lampwright.TestHouse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class OwnerBySettingsTest {

  @RegisterExtension
  static final TestHouse house =
      TestHouse.with(
          Map.of(
              "LAMPWRIGHT_OWNER_EMAIL", "Edda@Light.example",
              "LAMPWRIGHT_OWNER_PASSWORD", "a lamp on every sill",
              "LAMPWRIGHT_PUBLIC_URL", "https://light.example"));

  @Test
  void theSettingsNameTheFirstOwner() {
    assertFalse(house.console().contains("/first-owner/"), house.console());
    assertTrue(house.console().contains("https://light.example/"), house.console());
    HttpResponse<String> answer = house.signIn("edda@light.example", "a lamp on every sill");
    assertEquals(201, answer.statusCode());
    String cookie = answer.headers().firstValue("Set-Cookie").orElseThrow();
    assertTrue(cookie.startsWith("__Host-lampwright_session="), cookie);
    assertTrue(cookie.contains("Secure"), cookie);
  }

  @Test
  void theyAreThereStillAfterAnotherStart() {
    house.reopen();
    assertEquals(201, house.signIn("edda@light.example", "a lamp on every sill").statusCode());
    assertEquals(1, house.console().split("first-owner", -1).length);
  }
}
