package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.people.Permission;
import lampwright.people.PersonId;
import lampwright.people.Role;
import lampwright.web.http.Access;
import lampwright.web.http.ServedRoute;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

/**
 * Every route that is served, tried by every role, by somebody of another studio and by nobody, on
 * things that are there. A route of which the table of roles does not tell who may come in keeps
 * the server from starting; one that names something that is not made here fails this test.
 *
 * <p>Who may come in sends nothing sound, so that it is only seen that they are let in; that the
 * tasks behind agree is seen in {@link EveryChangeForEveryRoleTest}.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class EveryRouteForEveryRoleTest {

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  /** What somebody who may come in is told that there is none of, and why that is right. */
  private static final Map<String, String> NOT_THEIRS =
      Map.of(
          "READER /api/studios/{studio}/builds/{build}", "another's way",
          "READER /studios/{studio}/builds/{build}", "another's way");

  /** Where things stand, what an address must be asked with. */
  private static final Map<String, String> ASKED_WITH =
      Map.of(
          "/api/studios/{studio}/packing", "?setup={setup}",
          "/api/studios/{studio}/locations/{location}/ambient", "?at=2026-01-01T12:00:00Z",
          "/api/studios/{studio}/setups/{setup}/comparison", "?from=1",
          "/studios/{studio}/setups/{setup}/changes", "?from=1",
          "/studios/{studio}/setups/{setup}/beside", "?with={setup}");

  /** Leads everybody back to another page, whatever it names: it reads nothing. */
  private static final Set<String> LEADS_BACK =
      Set.of(
          "/studios/{studio}/setups/{setup}/proposals/{proposal}",
          "/studios/{studio}/setups/{setup}/takes/{take}",
          "/studios/{studio}/setups/{setup}/notes",
          "/studios/{studio}/setups/{setup}/used",
          "/studios/{studio}/setups/{setup}/share-links",
          "/studios/{studio}/setups/{setup}/pictures/{picture}/removal");

  /** Takes away what others still try. */
  private static final Set<String> LAST = Set.of("/removal", "/withdrawal", "/stop");

  private final Map<Role, Visitor> members = new LinkedHashMap<>();
  private final List<String> wrong = new ArrayList<>();
  private int tried;

  @BeforeEach
  void nothingIsWrongYet() {
    wrong.clear();
    tried = 0;
  }

  @BeforeAll
  void oneOfEachRole() {
    for (Role role : Role.values()) {
      members.put(role, house.signedIn(role.word() + "@demo.example"));
    }
  }

  private Visitor member(Role role) {
    return Optional.ofNullable(members.get(role)).orElseThrow();
  }

  private RoleThings things(String name) {
    return RoleThings.made(member(Role.OWNER), member(Role.CREW), name);
  }

  /** Reading first, taking away last. */
  private static List<ServedRoute> routes() {
    return house.routes().stream()
        .sorted(
            Comparator.comparing((ServedRoute route) -> !reads(route))
                .thenComparing(route -> route.verb().equals("DELETE"))
                .thenComparing(route -> LAST.stream().anyMatch(end -> route.path().endsWith(end))))
        .toList();
  }

  private static boolean reads(ServedRoute route) {
    return Set.of("GET", "HEAD").contains(route.verb());
  }

  private HttpResponse<String> send(Visitor visitor, ServedRoute route, RoleThings things) {
    tried++;
    return visitor.send(
        route.verb(),
        things.path(route.path() + ASKED_WITH.getOrDefault(route.path(), "")),
        BodyPublishers.noBody());
  }

  private void expect(String who, ServedRoute route, HttpResponse<String> answer, int... statuses) {
    boolean leadsBack =
        reads(route) && LEADS_BACK.contains(route.path()) && answer.statusCode() == 303;
    if (!leadsBack && IntStream.of(statuses).noneMatch(status -> answer.statusCode() == status)) {
      note(who, route, answer);
    }
  }

  private void note(String who, ServedRoute route, HttpResponse<String> answer) {
    String body = answer.body();
    wrong.add(
        who
            + ": "
            + route.verb()
            + " "
            + route.path()
            + " -> "
            + answer.statusCode()
            + " "
            + body.substring(0, Math.min(200, body.length())));
  }

  private void expectLetIn(String who, ServedRoute route, HttpResponse<String> answer) {
    boolean isHidden = NOT_THEIRS.containsKey(who + " " + route.path());
    boolean isKeptOut =
        answer.statusCode() == 401
            || answer.statusCode() == 403
            || answer.statusCode() >= 500
            || (answer.statusCode() == 404) != isHidden;
    if (isKeptOut) {
      note(who, route, answer);
    }
  }

  private static boolean isForOneself(ServedRoute route) {
    return route.access().equals(Access.Outside.SIGNED_IN)
        || route.access().equals(Access.Outside.IN_PERSON);
  }

  @Test
  void eachRoleIsLetInWhereTheTableSaysSoAndNowhereElse() {
    for (Role role : Role.values()) {
      RoleThings things = things("For " + role.word());
      Visitor visitor = member(role);
      ownThings(role, visitor, things);
      for (ServedRoute route : routes()) {
        if (route.access() instanceof Access.Member(var permission, var _)) {
          if (!reads(route) && route.path().matches(".*\\{(link|invitation)}.*")) {
            things.links("Once more");
          }
          HttpResponse<String> answer = send(visitor, route, things);
          if (role.may(permission)) {
            expectLetIn(role.name(), route, answer);
          } else if (reads(route)) {
            expect(role.name(), route, answer, 403, 404);
          } else {
            expect(role.name(), route, answer, 403);
          }
        }
      }
    }
    assertEquals(List.of(), wrong);
    assertFalse(tried < 4 * 150, "only " + tried + " tries");
  }

  /** What is everybody's own. */
  private void ownThings(Role role, Visitor visitor, RoleThings things) {
    HttpResponse<String> search =
        visitor.post(
            "/api/studios/demo/saved-searches",
            "{\"name\":\"Of %s\",\"question\":\"q=fog\"}".formatted(role.word()));
    assertEquals(201, search.statusCode(), search.body());
    things.ids().put("search", Told.at(Visitor.object(search), "id").toString());
    things.ids().put("person", EveryKindOfThing.person(visitor));
    things
        .ids()
        .put("import", role.may(Permission.WRITE_SETUPS) ? importOf(visitor, things) : "zzzz");
  }

  private static String importOf(Visitor visitor, RoleThings things) {
    byte[] archive = visitor.bytes(things.path("/api/studios/demo/setups/{setup}/archive")).body();
    HttpResponse<String> received =
        visitor
            .with("Content-Type", "application/zip")
            .send("POST", "/api/studios/demo/imports", BodyPublishers.ofByteArray(archive));
    assertEquals(201, received.statusCode(), received.body());
    String place = received.headers().firstValue("Location").orElseThrow();
    return place.substring(place.lastIndexOf('/') + 1);
  }

  @Test
  void nobodyIsLetInButWhereEverybodyIs() {
    RoleThings things = things("For nobody");
    things
        .ids()
        .putAll(
            Map.of(
                "search", "zzzz", "import", "zzzz", "token", "zzzz", "person", "zzzz", "session",
                "zzzz"));
    long before = changes();
    for (ServedRoute route : routes()) {
      if (!route.access().isOpen()) {
        expect("nobody", route, send(house.visitor(), route, things), 401);
      }
    }
    assertEquals(List.of(), wrong);
    assertEquals(before, changes());
  }

  @Test
  void whoBelongsToAnotherStudioDoesNotEvenLearnThatThereIsThisOne() throws SQLException {
    RoleThings things = things("For others");
    things.ids().putAll(Map.of("search", "zzzz", "import", "zzzz", "person", "zzzz"));
    PersonId other = house.database().newPerson();
    house.database().newStudio(other);
    house
        .database()
        .sqlAsSuperuser(
            "update lampwright.person set password_hash = (select password_hash from"
                + " lampwright.person where email = 'owner@demo.example') where id = '"
                + other
                + "'",
            "select 1");
    Visitor outsider = house.signedIn(other + "@demo.example");
    assertEquals(1, Visitor.items(outsider.get("/api/studios")).size());
    long before = changes();
    for (ServedRoute route : routes()) {
      if (route.access() instanceof Access.Member) {
        expect("outsider", route, send(outsider, route, things), 404);
      }
    }
    assertEquals(List.of(), wrong);
    assertEquals(before, changes());
  }

  @Test
  void aProgramIsNotLetInWhereAPersonMustCome() {
    RoleThings things = things("For programs");
    things.ids().putAll(Map.of("token", "zzzz", "session", "zzzz"));
    Visitor program = house.withToken("owner@demo.example");
    for (ServedRoute route : routes()) {
      if (route.access().equals(Access.Outside.IN_PERSON)) {
        expect("a program", route, send(program, route, things), 403);
      } else if (isForOneself(route) && reads(route)) {
        expectLetIn("a program", route, send(program, route, things));
      }
    }
    assertEquals(List.of(), wrong);
  }

  /** How often anything was written, by anybody. */
  private static long changes() {
    try {
      return Long.parseLong(
          house
              .database()
              .sqlAsSuperuser("select coalesce(max(seq), 0) from lampwright.change_log")
              .getLast());
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }
}
