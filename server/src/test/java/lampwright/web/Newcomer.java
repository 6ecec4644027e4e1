package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.people.Asker;
import lampwright.people.PersonId;
import lampwright.people.Role;
import lampwright.people.StudioId;
import lampwright.store.Members;
import lampwright.store.People;
import lampwright.tasks.DemoStudio;
import lampwright.tasks.Passwords;

/** Somebody who works with the demo studio and is none of its invented members. */
record Newcomer(TestHouse house, PersonId id, String email, String name) {

  static final String PASSWORD = "seven sandbags at low tide";

  private static final String HASH = new Passwords(64, 1).hash(PASSWORD);

  /** Takes somebody in. */
  static Newcomer to(TestHouse house, String name, Role role) {
    Newcomer newcomer = alone(house, name);
    newcomer.join(DemoStudio.ID, ownerOfTheDemo(house), role);
    return newcomer;
  }

  /** Somebody who belongs to no studio. */
  static Newcomer alone(TestHouse house, String name) {
    PersonId id = new PersonId(house.database().ids().next());
    return withAddress(house, name, id + "@studio.example", id);
  }

  /** Somebody at an address that is free. */
  static Newcomer withAddress(TestHouse house, String name, String email, PersonId id) {
    assertTrue(
        house
            .database()
            .open()
            .anonymous(in -> new People(in).create(id, email, name, HASH))
            .isPresent(),
        email);
    return new Newcomer(house, id, email, name);
  }

  static PersonId ownerOfTheDemo(TestHouse house) {
    Visitor owner = house.withToken("owner@demo.example");
    return new PersonId(
        String.valueOf(Told.at(Visitor.object(owner.get("/api/session")), "person", "id")));
  }

  /** Makes them a member. */
  void join(StudioId studio, PersonId owner, Role role) {
    house
        .database()
        .open()
        .inStudio(studio, Asker.whole(owner), in -> new Members(in).add(id, role));
  }

  /** With a session. */
  Visitor signedIn() {
    HttpResponse<String> answer = house.signIn(email, PASSWORD);
    String cookie = answer.headers().firstValue("Set-Cookie").orElseThrow();
    return house
        .visitor()
        .with("Cookie", cookie.substring(0, cookie.indexOf(';')))
        .with("X-CSRF-Token", String.valueOf(Visitor.object(answer).get("csrf_token")));
  }
}
