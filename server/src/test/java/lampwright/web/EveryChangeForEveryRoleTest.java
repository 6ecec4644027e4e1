package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.net.http.HttpRequest.BodyPublisher;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampwright.TestHouse;
import lampwright.Visitor;
import lampwright.people.Permission;
import lampwright.people.PersonId;
import lampwright.people.Role;
import lampwright.people.StudioId;
import lampwright.web.http.Access;
import lampwright.web.http.ServedRoute;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;

/**
 * Every change over REST in a studio, sent whole and sound: the highest role that may not is
 * refused it, and the lowest role that may has it done. So the rule at the door and the tasks
 * behind it say the same. A new change has no sound request here, and fails this test until it has.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class EveryChangeForEveryRoleTest {

  /** Everybody may leave; who takes somebody else out needs more. */
  private static final Map<String, Permission> OF_ANOTHER =
      Map.of("DELETE /api/studios/{studio}/members/{person}", Permission.MANAGE_MEMBERS);

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private final Map<Role, Visitor> members = new LinkedHashMap<>();
  private final Map<String, SoundRequests.Sound> sound =
      new SoundRequests(role -> member(role)).all();
  private final Map<Role, RoleThings> shared = new EnumMap<>(Role.class);
  private int made;

  @BeforeAll
  void oneOfEachRole() {
    for (Role role : Role.values()) {
      members.put(role, house.signedIn(role.word() + "@demo.example"));
    }
  }

  private Visitor member(Role role) {
    return Optional.ofNullable(members.get(role)).orElseThrow();
  }

  private static String operation(ServedRoute route) {
    return route.verb() + " " + route.path();
  }

  private static List<ServedRoute> changes() {
    return house.routes().stream()
        .filter(route -> route.access() instanceof Access.Member)
        .filter(route -> route.path().startsWith("/api/"))
        .filter(route -> !Set.of("GET", "HEAD").contains(route.verb()))
        .toList();
  }

  private HttpResponse<String> send(
      Visitor visitor, ServedRoute route, SoundRequests.Sound request, RoleThings things) {
    byte[] content = request.content().of(things);
    String filled = new String(content, StandardCharsets.ISO_8859_1);
    BodyPublisher body =
        Set.of("image/png", "image/jpeg", "application/zip").contains(request.type())
            ? BodyPublishers.ofByteArray(content)
            : BodyPublishers.ofString(things.filled(filled), StandardCharsets.ISO_8859_1);
    Visitor sender =
        request.basedOn().isEmpty()
            ? visitor
            : visitor.with("If-Match", "\"" + request.basedOn() + "\"");
    return sender
        .with("Content-Type", content.length == 0 ? "" : request.type())
        .send(route.verb(), things.path(route.path()) + request.query(), body);
  }

  @Test
  void everyChangeHasASoundRequestHere() {
    assertEquals(
        changes().stream()
            .map(EveryChangeForEveryRoleTest::operation)
            .collect(Collectors.toCollection(TreeSet::new)),
        new TreeSet<>(sound.keySet()));
  }

  @Test
  void theLowestRoleThatMayHasItDoneAndTheNextOneBelowDoesNot() {
    List<String> wrong = new ArrayList<>();
    for (ServedRoute route : changes()) {
      SoundRequests.Sound request = sound.get(operation(route));
      if (request == null || !(route.access() instanceof Access.Member(var permission, var _))) {
        continue;
      }
      Permission needed = OF_ANOTHER.getOrDefault(operation(route), permission);
      Role lowest = Stream.of(Role.values()).filter(role -> role.may(needed)).toList().getLast();
      RoleThings things = things(route, request, lowest);
      prepare(route, member(lowest), things);
      Stream.of(Role.values())
          .filter(role -> !role.may(needed))
          .findFirst()
          .ifPresent(
              role -> {
                HttpResponse<String> refused = send(member(role), route, request, things);
                if (refused.statusCode() != 403) {
                  wrong.add(said(role, route, refused));
                }
              });
      HttpResponse<String> done = send(member(lowest), route, request, things);
      if (done.statusCode() / 100 != 2) {
        wrong.add(said(lowest, route, done));
      }
    }
    assertEquals(List.of(), wrong);
  }

  /** New ones, but where nothing that is there is changed. */
  private RoleThings things(ServedRoute route, SoundRequests.Sound request, Role lowest) {
    boolean isOfOthers = route.path().endsWith("/builds");
    boolean changesNone = request.basedOn().isEmpty() && !route.path().contains("{build}");
    if (changesNone && !isOfOthers) {
      return shared.computeIfAbsent(lowest, role -> newThings(role, member(Role.CREW)));
    }
    return newThings(
        lowest, isOfOthers ? house.signedIn("perrin@demo.example") : member(Role.CREW));
  }

  private RoleThings newThings(Role lowest, Visitor crew) {
    made++;
    RoleThings things = RoleThings.made(member(Role.OWNER), crew, "Number " + made);
    own(member(lowest), things);
    return things;
  }

  /** What is so for one route only. */
  private void prepare(ServedRoute route, Visitor lowest, RoleThings things) {
    String setup = things.path("/api/studios/demo/setups/{setup}");
    if (route.path().endsWith("/done")) {
      things.ids().put("stage", "read");
    } else if (route.path().endsWith("/builds")) {
      String trail = things.path("/api/studios/demo/trails/{trail}");
      assertEquals(200, lowest.post(trail + "/stages/read/done", "").statusCode());
      things.ids().put("take", TrailsOverRestTest.runThrough(lowest, setup, "run-of-lowest", 8));
    } else if (route.path().endsWith("/takes/{take}/calibration")) {
      Map<String, Object> take = TakesOverRestTest.take("of-the-used", 8);
      take.put("setup_revision", 3);
      keep("take", lowest.post(setup + "/takes", Documents.json(take)), things);
    } else if (route.path().endsWith("/gear/{gear}/calibration")) {
      String kept = setup + things.path("/takes/{take}/gear-readings");
      assertEquals(200, member(Role.OWNER).post(kept, SoundRequests.KEY).statusCode());
    } else if (route.path().contains("{person}")) {
      PersonId guest = house.database().newPerson();
      PersonId owner = new PersonId(EveryKindOfThing.person(member(Role.OWNER)));
      house.database().join(new StudioId("demo"), owner, guest, Role.CREW);
      things.ids().put("person", guest.text());
    } else if (route.path().contains("{import}")) {
      HttpResponse<String> received =
          lowest
              .with("Content-Type", "application/zip")
              .send(
                  "POST",
                  "/api/studios/demo/imports",
                  BodyPublishers.ofByteArray(SoundRequests.archive(member(Role.AUTHOR), things)));
      assertEquals(201, received.statusCode(), received.body());
      keep("import", received, things);
    }
  }

  private static void keep(String what, HttpResponse<String> made, RoleThings things) {
    String place = made.headers().firstValue("Location").orElseThrow();
    things.ids().put(what, place.substring(place.lastIndexOf('/') + 1));
  }

  private static void own(Visitor visitor, RoleThings things) {
    HttpResponse<String> search =
        visitor.post(
            things.path("/api/studios/{studio}") + "/saved-searches",
            "{\"name\":\"%s\",\"question\":\"q=fog\"}".formatted(things.path("{setup}")));
    assertEquals(201, search.statusCode(), search.body());
    keep("search", search, things);
  }

  private static String said(Role role, ServedRoute route, HttpResponse<String> answer) {
    return role + ": " + operation(route) + " -> " + answer.statusCode() + " " + answer.body();
  }
}
