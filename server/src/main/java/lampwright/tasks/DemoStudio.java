package lampwright.tasks;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import lampwright.people.Ids;
import lampwright.people.Person;
import lampwright.people.PersonId;
import lampwright.people.Role;
import lampwright.people.StudioId;
import lampwright.store.AnonymousTransaction;
import lampwright.store.Database;
import lampwright.store.Members;
import lampwright.store.People;
import lampwright.store.StudioTransaction;

/** The invented studio that one can try everything in, with a member of each role. */
public final class DemoStudio {

  /** Its id. */
  public static final StudioId ID = new StudioId("demo");

  /** A member of it as everybody may know them. */
  public record DemoMember(String email, String name, Role role) {}

  /** Its members, the one who may most first. */
  public static final List<DemoMember> MEMBERS =
      List.of(
          new DemoMember("owner@demo.example", "Maren Tolliver", Role.OWNER),
          new DemoMember("author@demo.example", "Ivo Castellane", Role.AUTHOR),
          new DemoMember("crew@demo.example", "Sunniva Barrow", Role.CREW),
          new DemoMember("reader@demo.example", "Teodor Wray", Role.READER));

  static final Set<String> EMAILS =
      MEMBERS.stream().map(DemoMember::email).collect(Collectors.toUnmodifiableSet());

  private final Database database;
  private final Ids ids;
  private final Passwords passwords;

  public DemoStudio(Database database, Ids ids, Passwords passwords) {
    this.database = database;
    this.ids = ids;
    this.passwords = passwords;
  }

  /** Who cannot come in, since their password is public. */
  public static Closed closed(boolean demo) {
    return new Closed(demo ? Set.of() : EMAILS);
  }

  /**
   * Sees to it that the studio and its members are there and have this password.
   *
   * @param studioName what it is called where it is founded now
   * @return its owner, as who asks
   */
  public Caller ensure(String studioName, String password) {
    Optional<String> fresh =
        isPassword(password) ? Optional.empty() : Optional.of(passwords.hash(password));
    return database.anonymous(
        in -> {
          Map<Role, Person> people = people(in, fresh);
          Person owner = Objects.requireNonNull(people.get(Role.OWNER));
          join(in.enter(ID, owner.id()), studioName, people);
          return new Caller(owner, Caller.Way.SESSION);
        });
  }

  /** All four have one hash, so that one comparison at each start will do. */
  private boolean isPassword(String password) {
    Map<String, Optional<People.WithPassword>> found = new HashMap<>();
    database.anonymous(
        in -> {
          EMAILS.forEach(email -> found.put(email, new People(in).findByEmail(email)));
          return found;
        });
    Set<String> hashes =
        found.values().stream()
            .map(person -> person.map(People.WithPassword::passwordHash).orElse(""))
            .collect(Collectors.toSet());
    String hash = hashes.iterator().next();
    if (hashes.size() > 1 || hash.isEmpty()) {
      return false;
    }
    Passwords.Checked checked = passwords.check(password, hash);
    return checked.right() && !checked.outdated();
  }

  private Map<Role, Person> people(AnonymousTransaction in, Optional<String> fresh) {
    People people = new People(in);
    Map<Role, Person> found = new TreeMap<>();
    for (DemoMember member : MEMBERS) {
      Optional<Person> known = people.findByEmail(member.email()).map(People.WithPassword::person);
      if (known.isPresent() && fresh.isPresent()) {
        people.changePassword(known.get().id(), fresh.get());
      }
      found.put(
          member.role(), known.or(() -> create(people, member, fresh.orElseThrow())).orElseThrow());
    }
    return found;
  }

  private Optional<Person> create(People people, DemoMember member, String hash) {
    return people.create(new PersonId(ids.next()), member.email(), member.name(), hash);
  }

  private static void join(StudioTransaction in, String studioName, Map<Role, Person> people) {
    Members members = new Members(in);
    if (!members.isFounded()) {
      members.found(studioName);
    }
    // Whoever was let go or given another role while trying things out is back at the next start.
    people.forEach(
        (role, person) -> {
          if (!members.add(person.id(), role)) {
            members.changeRole(person.id(), role);
          }
        });
  }
}
