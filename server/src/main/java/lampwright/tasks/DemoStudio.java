package lampwright.tasks;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampwright.people.Ids;
import lampwright.people.Member;
import lampwright.people.Person;
import lampwright.people.PersonId;
import lampwright.people.Reach;
import lampwright.people.Role;
import lampwright.people.StudioId;
import lampwright.store.AnonymousTransaction;
import lampwright.store.Database;
import lampwright.store.Members;
import lampwright.store.People.WithPassword;
import lampwright.store.SecondFactors;
import lampwright.store.StudioTransaction;

/** The invented studio that one can try everything in, with members of each role. */
public final class DemoStudio {

  /** Its id. */
  public static final StudioId ID = new StudioId("demo");

  /** How much of it there is. */
  public enum Part {
    /** Ten setups and three kits, without a history: a first look, at once. */
    FEW,
    /** All of it. */
    WHOLE
  }

  /**
   * A member of it as everybody may know them.
   *
   * @param key what its files call them
   */
  public record DemoMember(String key, String email, String name, Role role) {}

  /** A member of each role, as whom one comes in; the one who may most first. */
  public static final List<DemoMember> MEMBERS =
      List.of(
          new DemoMember("maren", "owner@demo.example", "Maren Tolliver", Role.OWNER),
          new DemoMember("ivo", "author@demo.example", "Ivo Castellane", Role.AUTHOR),
          new DemoMember("sunniva", "crew@demo.example", "Sunniva Barrow", Role.CREW),
          new DemoMember("teodor", "reader@demo.example", "Teodor Wray", Role.READER));

  /** Those who wrote and carried with them over the years. */
  private static final List<DemoMember> COLLEAGUES =
      List.of(
          new DemoMember("haldis", "haldis@demo.example", "Haldis Quennell", Role.AUTHOR),
          new DemoMember("bartel", "bartel@demo.example", "Bartel Osei-Lund", Role.AUTHOR),
          new DemoMember("perrin", "perrin@demo.example", "Perrin Aske", Role.CREW),
          new DemoMember("lio", "lio@demo.example", "Lio Maddern", Role.CREW));

  private static final List<DemoMember> ALL =
      Stream.concat(MEMBERS.stream(), COLLEAGUES.stream()).toList();

  static final Set<String> EMAILS =
      ALL.stream().map(DemoMember::email).collect(Collectors.toUnmodifiableSet());

  /**
   * Who its members are here.
   *
   * @param owner as who asks
   * @param byKey as its files call them
   */
  public record People(Caller owner, Map<String, Person> byKey) {

    public People {
      byKey = Map.copyOf(byKey);
    }

    /** The key of one in an archive of this server. */
    String key(String inFiles) {
      return Optional.ofNullable(byKey.get(inFiles))
          .orElseThrow(() -> new IllegalStateException("Nobody of the demo is called " + inFiles))
          .id()
          .text();
    }
  }

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
   * @return who they are
   */
  public People ensure(String studioName, String password) {
    Optional<String> fresh =
        isPassword(password) ? Optional.empty() : Optional.of(passwords.hash(password));
    return database.anonymous(
        in -> {
          Map<DemoMember, Person> people = people(in, fresh);
          Person owner = Objects.requireNonNull(people.get(MEMBERS.getFirst()));
          join(in.enter(ID, owner.id()), studioName, people);
          Map<String, Person> byKey = new HashMap<>();
          people.forEach((member, person) -> byKey.put(member.key(), person));
          return new People(new Caller(owner, Caller.Way.SESSION, Reach.WHOLE), byKey);
        });
  }

  /** All of them have one hash, so that one comparison at each start will do. */
  private boolean isPassword(String password) {
    Map<String, Optional<WithPassword>> found = new HashMap<>();
    database.anonymous(
        in -> {
          EMAILS.forEach(email -> found.put(email, stored(in).findByEmail(email)));
          return found;
        });
    Set<String> hashes =
        found.values().stream()
            .map(person -> person.map(WithPassword::passwordHash).orElse(""))
            .collect(Collectors.toSet());
    String hash = hashes.iterator().next();
    if (hashes.size() > 1 || hash.isEmpty()) {
      return false;
    }
    Passwords.Checked checked = passwords.check(password, hash);
    return checked.right() && !checked.outdated();
  }

  private static lampwright.store.People stored(AnonymousTransaction in) {
    return new lampwright.store.People(in);
  }

  private Map<DemoMember, Person> people(AnonymousTransaction in, Optional<String> fresh) {
    Map<DemoMember, Person> found = new LinkedHashMap<>();
    for (DemoMember member : ALL) {
      Optional<Person> known = stored(in).findByEmail(member.email()).map(WithPassword::person);
      if (known.isPresent() && fresh.isPresent()) {
        stored(in).changePassword(known.get().id(), fresh.get());
      }
      // Everybody knows the password: whoever switches a second factor on locks out all others.
      known.ifPresent(person -> new SecondFactors(in).end(person.id()));
      found.put(member, known.or(() -> create(in, member, fresh.orElseThrow())).orElseThrow());
    }
    return found;
  }

  private Optional<Person> create(AnonymousTransaction in, DemoMember member, String hash) {
    return stored(in).create(new PersonId(ids.next()), member.email(), member.name(), hash);
  }

  private static void join(
      StudioTransaction in, String studioName, Map<DemoMember, Person> people) {
    Members members = new Members(in);
    if (!members.isFounded()) {
      members.found(studioName);
    }
    // Whoever was let go or given another role while trying things out is back at the next start.
    Map<PersonId, Role> roles =
        members.list().stream().collect(Collectors.toMap(one -> one.person().id(), Member::role));
    people.forEach(
        (member, person) -> {
          // Nothing is changed for nothing: the audit trail would tell of it.
          boolean hasIt = member.role().equals(roles.get(person.id()));
          if (!hasIt && !members.add(person.id(), member.role())) {
            members.changeRole(person.id(), member.role());
          }
        });
  }
}
