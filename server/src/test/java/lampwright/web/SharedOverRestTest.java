package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

/**
 * A link shows one setup to somebody outside, what it should of it, and only as long as it should.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SharedOverRestTest {

  private static final String STUDIO = "/api/studios/demo";
  private static final String SETUPS = STUDIO + "/setups";

  /** Every text that must stay inside has this in it, and a word for where it stood. */
  private static final String INSIDE = "zzinside";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor author;
  private String setup = "";

  @BeforeAll
  void aSetupWithSomethingInEveryText() {
    author = house.withToken("author@demo.example");
    String location = place(author.post(STUDIO + "/locations", Documents.json(location())));
    setup = place(author.post(SETUPS + "?message=" + INSIDE + "message", document(location)));
    picture("final", INSIDE + "caption");
    picture("untouched", INSIDE + "untouched");
    place(author.post(setup + "/notes", "{\"text\":\"" + INSIDE + "note\"}"));
    Map<String, Object> take = TakesOverRestTest.take("shared-take", 8);
    take.put("why", INSIDE + "why");
    take.put("changed", INSIDE + "changed");
    place(author.post(setup + "/takes", Documents.json(take)));
    place(author.post(SETUPS, Documents.json(Documents.setup(INSIDE + "othersetup"))));
  }

  private static Map<String, Object> location() {
    Map<String, Object> location = Documents.location(INSIDE + "location");
    location.put("access", INSIDE + "access");
    location.put("hazards", List.of(INSIDE + "hazard"));
    return location;
  }

  private static String place(HttpResponse<String> answer) {
    assertEquals(201, answer.statusCode(), answer.body());
    return answer.headers().firstValue("Location").orElseThrow();
  }

  private static String id(String place) {
    return place.substring(place.lastIndexOf('/') + 1);
  }

  private static Map<String, Object> point(double x, double y, double z) {
    return Map.of("x_m", x, "y_m", y, "z_m", z);
  }

  private static String document(String location) {
    Map<String, Object> light = Documents.light("key");
    light.put("reason", INSIDE + "reason");
    Map<String, Object> head = new LinkedHashMap<>();
    ((Map<?, ?>) Told.at(light, "head")).forEach((key, value) -> head.put(key.toString(), value));
    head.put("note", INSIDE + "headnote");
    light.put("head", head);
    Map<String, Object> document = Documents.setup("Seen outside");
    document.put("lights", List.of(light));
    document.put("intent", INSIDE + "intent");
    document.put("genre", INSIDE + "genre");
    document.put("moods", List.of("hushed"));
    document.put("cautions", List.of("The third plank is rotten."));
    document.put("ambient", Map.of("ev100", 11, "how", INSIDE + "how"));
    document.put(
        "occasion",
        Map.of(
            "place",
            Map.of(
                "name",
                "Plankholm",
                "kind",
                "jetty",
                "indoors",
                false,
                "latitude_deg",
                57.77,
                "longitude_deg",
                11.55,
                "location",
                id(location)),
            "date",
            "2031-05-04",
            "time",
            "19:10",
            "utc_offset",
            "+02:00",
            "weather",
            "drizzle over Plankholm"));
    document.put("camera", Map.of("bearing_deg", 217, "place", point(0, -4, 1.5)));
    document.put(
        "subjects",
        List.of(
            Map.of(
                "name",
                INSIDE + "subject",
                "place",
                point(0, 0, 0),
                "height_m",
                1.7,
                "speed_m_per_s",
                3,
                "path",
                List.of(
                    Map.of("name", INSIDE + "start", "at", point(-2, 0, 0)),
                    Map.of("name", INSIDE + "end", "at", point(0, 0, 0), "cue", INSIDE + "cue")))));
    document.put("build_order", List.of(Map.of("light", "key", "what", INSIDE + "step")));
    document.put("outcome", List.of(Map.of("judgement", "mistake", "text", INSIDE + "outcome")));
    document.put("retouch_notes", List.of(INSIDE + "retouch"));
    return Documents.json(document);
  }

  private void picture(String kind, String caption) {
    place(
        author
            .with("Content-Type", "image/jpeg")
            .send(
                "POST",
                setup + "/pictures?kind=" + kind + "&caption=" + caption,
                BodyPublishers.ofByteArray(EveryKindOfThing.photograph(kind.length()))));
  }

  /** Makes a link; gives the whole answer. */
  private Map<?, ?> link(String wish) {
    HttpResponse<String> made = author.post(setup + "/share-links", wish);
    place(made);
    return Visitor.object(made);
  }

  private static String address(Map<?, ?> link) {
    return String.valueOf(link.get("address"));
  }

  private static HttpResponse<String> look(String address) {
    return house.visitor().get(address);
  }

  @Test
  void thePageShowsWhatItTakesToBuildTheLightAndWhatCanHurt() {
    HttpResponse<String> answer = look(address(link("{}")));
    assertEquals(200, answer.statusCode());
    Document page = Jsoup.parse(answer.body());
    assertEquals("Seen outside", page.select("h1").text());
    String text = page.text();
    for (String shown :
        List.of("hushed", "400 W·s battery head", "1/8", "f/", "The third plank is rotten.")) {
      assertTrue(text.contains(shown), shown);
    }
    assertEquals(
        3,
        page.select("svg[role=img]:has(title)").stream()
            .filter(SharedOverRestTest::isDrawing)
            .count());
    // Rain outdoors calls for its caution although the weather is not shown.
    assertTrue(page.select(".cautions li").size() > 2, page.select(".cautions").text());
  }

  private static boolean isDrawing(Element svg) {
    return svg.closest(".plan-sheet") != null;
  }

  @Test
  void nothingOfTheStudioIsOnThePageNorInAnythingThatItLinks() throws Exception {
    String address = address(link("{}"));
    List<String> seen = new ArrayList<>();
    HttpResponse<String> answer = look(address);
    seen.add(answer.body() + answer.headers().map());
    Document page = Jsoup.parse(answer.body());
    for (Element link : page.select("[href], [src]")) {
      String to = link.hasAttr("href") ? link.attr("href") : link.attr("src");
      if (!to.startsWith("#")) {
        assertTrue(to.matches("/(assets/.*|manifest\\.webmanifest|shared/.*/pictures/.*)"), to);
        seen.add(new String(house.visitor().bytes(to).body(), StandardCharsets.ISO_8859_1));
      }
    }
    List<String> never = new ArrayList<>(List.of(INSIDE, "Plankholm", "57.77", "11.55", "217°"));
    never.addAll(house.database().sqlAsSuperuser("select name from lampwright.person"));
    never.add(
        String.valueOf(Told.at(Visitor.items(author.get("/api/studios")).getFirst(), "name")));
    never.add(id(setup));
    for (String word : never) {
      for (String one : seen) {
        assertFalse(one.contains(word), word);
      }
    }
    assertTrue(never.size() > 8, never.toString());
    assertTrue(page.select("nav, form").isEmpty());
    assertFalse(page.text().contains("2031"), "neither the day of the picture");
  }

  @Test
  void thePlaceIsShownWhereItWasChosenAndTheLocationNever() {
    String page = look(address(link("{\"shows_place\":true}"))).body();
    assertTrue(Jsoup.parse(page).select(".under-title").text().contains("Plankholm, jetty"));
    assertFalse(page.contains(INSIDE));
  }

  @Test
  void onlyFinishedPicturesThatWereThereAreShownAndAsDrawnAnew() throws Exception {
    String address = address(link("{\"shows_pictures\":true}"));
    picture("final", "later");
    List<String> sources =
        Jsoup.parse(look(address).body()).select("figure.finished img").eachAttr("src");
    assertEquals(1, sources.size());
    HttpResponse<byte[]> picture = house.visitor().bytes(sources.getFirst());
    assertEquals(200, picture.statusCode());
    assertEquals("image/jpeg", picture.headers().firstValue("Content-Type").orElseThrow());
    String bytes = new String(picture.body(), StandardCharsets.ISO_8859_1);
    assertFalse(bytes.contains("Exif") || bytes.contains("GPS"));
    for (Object other : Visitor.items(author.get(setup + "/pictures"))) {
      String at = address + "/pictures/" + Told.at(other, "id");
      assertEquals(at.equals(sources.getFirst()) ? 200 : 404, look(at).statusCode());
    }
    String without = address(link("{\"shows_pictures\":false}"));
    assertTrue(Jsoup.parse(look(without).body()).select("img").isEmpty());
    String sneaked = sources.getFirst().replace(address, without);
    assertEquals(404, look(sneaked).statusCode());
  }

  @Test
  void itStaysAsItWasWhenTheLinkWasMade() {
    String own = place(author.post(SETUPS, Documents.json(Documents.setup("Before"))));
    String address = address(Visitor.object(author.post(own + "/share-links", "{}")));
    assertEquals(
        200,
        author
            .with("If-Match", "\"1\"")
            .put(own, Documents.json(Documents.setup("After")))
            .statusCode());
    assertEquals("Before", Jsoup.parse(look(address).body()).select("h1").text());
    assertTrue(look(address).body().contains("revision 1"));
  }

  @Test
  void noOtherServerAndNoSearchEngineIsToldOfTheAddress() {
    HttpResponse<String> answer = look(address(link("{}")));
    assertEquals("no-referrer", answer.headers().firstValue("Referrer-Policy").orElseThrow());
    assertEquals("no-store", answer.headers().firstValue("Cache-Control").orElseThrow());
    assertTrue(answer.headers().firstValue("X-Robots-Tag").orElseThrow().contains("noindex"));
  }

  @Test
  void whateverTheReasonALinkThatShowsNothingAnswersAlike() throws Exception {
    String unknown = gone("/shared/" + "A".repeat(43));
    Map<?, ?> withdrawn = link("{}");
    assertEquals(204, author.delete(setup + "/share-links/" + withdrawn.get("id")).statusCode());
    assertEquals(unknown, gone(address(withdrawn)), "withdrawn");
    Map<?, ?> ended = link("{\"days\":1}");
    superuser(
        "update lampwright.share_link set created_at = now() - interval '2 days', expires_at ="
            + " now() - interval '1 second' where id = '"
            + ended.get("id")
            + "'");
    assertEquals(unknown, gone(address(ended)), "ended");
    String own = place(author.post(SETUPS, Documents.json(Documents.setup("Put by"))));
    String ofOwn = address(Visitor.object(author.post(own + "/share-links", "{}")));
    assertEquals(200, look(ofOwn).statusCode());
    Visitor now = author.with("If-Match", "*");
    now.put(own + "/state", "{\"state\":\"draft\",\"archived\":true}");
    assertEquals(unknown, gone(ofOwn), "put by");
    now.put(own + "/state", "{\"state\":\"draft\",\"archived\":false}");
    assertEquals(200, look(ofOwn).statusCode());
    now.delete(own);
    assertEquals(unknown, gone(ofOwn), "deleted");
  }

  @Test
  void aLinkGoesWithTheRoleAndTheMembershipOfWhoeverMadeIt() throws Exception {
    Visitor owner = house.withToken("owner@demo.example");
    String own = place(owner.post(SETUPS, Documents.json(Documents.setup("The owner's"))));
    String address = address(Visitor.object(owner.post(own + "/share-links", "{}")));
    String who = EveryKindOfThing.person(owner);
    String member = " where studio_id = 'demo' and person_id = '" + who + "'";
    superuser("update lampwright.member set role = 'crew'" + member);
    assertEquals(404, look(address).statusCode());
    superuser("update lampwright.member set role = 'owner'" + member);
    assertEquals(200, look(address).statusCode());
    superuser("delete from lampwright.member" + member);
    assertEquals(404, look(address).statusCode());
    superuser(
        "insert into lampwright.member (studio_id, person_id, role, created_at) values ('demo', '"
            + who
            + "', 'owner', now())");
    assertEquals(404, look(address).statusCode(), "a new membership brings no old link back");
  }

  private static void superuser(String sql) throws Exception {
    house.database().sqlAsSuperuser(sql + " returning 1");
  }

  /** The page that says that there is nothing, without its reference number. */
  private static String gone(String address) {
    HttpResponse<String> answer = look(address);
    assertEquals(404, answer.statusCode());
    Document page = Jsoup.parse(answer.body());
    page.select(".reference").remove();
    return page.text();
  }

  @Test
  void authorsMakeAndWithdrawLinksAndCrewAndReadersDoNot() {
    String links = setup + "/share-links";
    String id = String.valueOf(link("{\"days\":90}").get("id"));
    for (String email : List.of("crew@demo.example", "reader@demo.example")) {
      Visitor other = house.withToken(email);
      assertEquals(403, other.post(links, "{}").statusCode());
      assertTrue(List.of(403, 404).contains(other.get(links).statusCode()));
      assertEquals(403, other.delete(links + "/" + id).statusCode());
    }
    for (String wrong : List.of("{\"days\":0}", "{\"days\":91}", "{\"until\":1}")) {
      assertEquals(422, author.post(links, wrong).statusCode(), wrong);
    }
    assertFalse(author.get(links).body().contains("/shared/"), "its address is told once");
  }

  @Test
  void aSetupHasTwentyLinksAtMost() {
    String own = place(author.post(SETUPS, Documents.json(Documents.setup("Many"))));
    for (int i = 0; i < 20; i++) {
      assertEquals(201, author.post(own + "/share-links", "{}").statusCode());
    }
    assertEquals(409, author.post(own + "/share-links", "{}").statusCode());
    assertEquals(20, Visitor.items(author.get(own + "/share-links")).size());
  }

  @Test
  void noTwoAtOncePassTheMostThatASetupHas() throws Exception {
    String links =
        place(author.post(SETUPS, Documents.json(Documents.setup("At once")))) + "/share-links";
    for (int i = 0; i < 19; i++) {
      place(author.post(links, "{}"));
    }
    List<Callable<Integer>> eight =
        Collections.nCopies(8, () -> author.post(links, "{}").statusCode());
    try (ExecutorService threads = Executors.newVirtualThreadPerTaskExecutor()) {
      assertEquals(
          1, threads.invokeAll(eight).stream().filter(answer -> answer.resultNow() == 201).count());
    }
    assertEquals(20, Visitor.items(author.get(links)).size());
  }

  @Test
  void underAKeyALinkIsMadeOnceAndItsAddressToldOnce() {
    Visitor sender = author.with("Idempotency-Key", "\"a-link\"");
    HttpResponse<String> first = sender.post(setup + "/share-links", "{}");
    HttpResponse<String> again = sender.post(setup + "/share-links", "{}");
    assertEquals(place(first), place(again));
    assertEquals(200, look(address(Visitor.object(first))).statusCode());
    assertFalse(Visitor.object(again).containsKey("address"), again.body());
  }

  @Test
  void thatItWasOpenedIsToldOnceAnHour() {
    Map<?, ?> link = link("{}");
    look(address(link));
    look(address(link));
    String lines =
        house
            .withToken("owner@demo.example")
            .get(STUDIO + "/audit?subject=" + link.get("id"))
            .body();
    assertEquals(2, lines.split("\"opened\"", -1).length, lines);
    assertFalse(lines.contains(address(link).substring("/shared/".length())));
  }

  @Test
  void aMemberMakesALinkOnTheSetupsPageAndSeesItsAddressOnce() {
    Visitor signedIn = house.signedIn("author@demo.example");
    String path = setup.substring("/api".length());
    String form = "csrf=" + signedIn.header("X-CSRF-Token") + "&days=3&shows_place=true";
    HttpResponse<String> made = signedIn.postForm(path + "/share-links", form);
    assertEquals(201, made.statusCode(), made.body());
    String address = Jsoup.parse(made.body()).select("#address").text();
    assertTrue(address.startsWith("http://127.0.0.1:" + house.port() + "/shared/"), address);
    assertEquals(200, look(address.substring(address.indexOf("/shared/"))).statusCode());
    Document page = Jsoup.parse(signedIn.get(path).body());
    Element open = page.select(".share-links li").first();
    assertTrue(
        open != null && open.text().contains("with the place"), page.select(".share").text());
    HttpResponse<String> gone =
        signedIn.postForm(
            open.select("form").attr("action"), "csrf=" + signedIn.header("X-CSRF-Token"));
    assertEquals(303, gone.statusCode());
    assertEquals(404, look(address.substring(address.indexOf("/shared/"))).statusCode());
    assertTrue(
        Jsoup.parse(house.signedIn("crew@demo.example").get(path).body())
            .select(".share")
            .isEmpty());
  }
}
