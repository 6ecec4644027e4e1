package lampwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.people.PersonId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** An owner brings an archive in, with the page telling how far it is. */
class ArchiveStoryTest {

  private static final String STATE = "#state";

  @RegisterExtension static final Browser browser = Browser.desktop();

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  @Test
  void anArchiveIsSentCheckedAndCarriedOutWhileThePageTellsHowFarItIs(@TempDir Path folder)
      throws IOException {
    Visitor owner = house.signedIn("owner@demo.example");
    byte[] archive = owner.bytes("/api/studios/demo/archive").body();
    Path whole = Files.write(folder.resolve("whole.zip"), archive);
    Path cut = Files.write(folder.resolve("cut.zip"), Arrays.copyOf(archive, 1_000));
    PersonId id =
        new PersonId(Told.at(Visitor.object(owner.get("/api/session")), "person", "id").toString());
    String studio = "/studios/" + house.database().newStudio(id).text();
    String[] cookie = owner.header("Cookie").split("=", 2);
    browser.open(house.visitor().address("/sign-in").toString());
    browser.takeCookie(cookie[0], cookie[1]);

    browser.open(house.visitor().address(studio + "/archive").toString());
    browser.see("input[type=file]").sendKeys(cut.toString());
    browser.follow(browser.see("form.form button:not([type])"));
    browser.see(".problems li");
    assertEquals("Not sound", browser.see(STATE).getText());
    browser.follow(browser.see("form[action$=removal] button"));

    browser.see("input[type=file]").sendKeys(whole.toString());
    browser.follow(browser.see("form.form button:not([type])"));
    browser.see("form[action$=execution]");
    assertEquals("Planned", browser.see(STATE).getText());
    browser.follow(browser.see("form[action$=execution] button"));
    browser.see(".import-state:not(:has(.progress))");
    assertEquals("Brought in", browser.see(STATE).getText());
    int setups = Visitor.items(owner.get("/api/studios/demo/setups")).size();
    assertTrue(setups > 0);
    assertEquals(setups, Visitor.items(owner.get("/api" + studio + "/setups?limit=100")).size());
    assertEquals(List.of(), browser.complaints());
  }
}
