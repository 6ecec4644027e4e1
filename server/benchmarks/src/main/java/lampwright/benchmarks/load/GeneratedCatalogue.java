package lampwright.benchmarks.load;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import lampwright.document.Json;
import lampwright.meaning.Meaning;
import lampwright.meaning.SentenceModel;
import lampwright.people.Asker;
import lampwright.people.Ids;
import lampwright.people.PersonId;
import lampwright.people.Reach;
import lampwright.people.SecretHash;
import lampwright.people.StudioId;
import lampwright.schema.WorkingDatabase;
import lampwright.setup.SetupId;
import lampwright.setup.Standing;
import lampwright.setup.takes.Take;
import lampwright.setup.takes.TakeId;
import lampwright.store.Database;
import lampwright.store.Members;
import lampwright.store.People;
import lampwright.store.Sessions;
import lampwright.store.SetupMeanings;
import lampwright.store.Setups;
import lampwright.store.StoredSetup;
import lampwright.store.StudioTransaction;
import lampwright.store.Takes;
import lampwright.store.Tokens;

/**
 * A studio with very many setups, all of it written by the server's own classes, so that each setup
 * has what the server keeps of one: the row, a revision or two, the lines in the change log and in
 * the audit trail, signatures, takes, its meaning. There are no pictures: they are files, which
 * cost what they weigh.
 *
 * <p>All are in one studio, which is the hardest case: nothing but the index and the keys narrows a
 * read. Every third setup has a second revision, every fourth two takes, three of four are proven.
 * Meanings are those of the setups that they are like, each turned a little: to work a hundred
 * thousand out takes a quarter of an hour, and a search costs the same whatever they are.
 */
final class GeneratedCatalogue {

  private static final int AT_A_TIME = 100;
  private static final int ADDRESSES_KEPT = 20_000;
  private static final int QUESTIONS = 4_000;
  private static final Instant BEGUN = Instant.parse("2018-03-01T08:00:00Z");
  private static final String FACTS = "generated.json";

  private GeneratedCatalogue() {}

  /**
   * How to come in, and what to ask for.
   *
   * @param addresses of setups below the studio, with the ETag of each behind a tab
   */
  record Facts(
      int setups,
      String studio,
      String session,
      String token,
      List<String> addresses,
      List<String> questions) {}

  /** What was generated in a folder before; empty where nothing was. */
  static Optional<Facts> find(Path folder) throws IOException {
    Path file = folder.resolve(FACTS);
    if (!Files.exists(file)) {
      return Optional.empty();
    }
    List<String> lines = Files.readAllLines(file);
    int addresses = Integer.parseInt(lines.get(4));
    return Optional.of(
        new Facts(
            Integer.parseInt(lines.get(0)),
            lines.get(1),
            lines.get(2),
            lines.get(3),
            lines.subList(5, 5 + addresses),
            lines.subList(5 + addresses, lines.size())));
  }

  private static void keep(Path folder, Facts facts) throws IOException {
    List<String> lines = new ArrayList<>();
    lines.add(Integer.toString(facts.setups()));
    lines.add(facts.studio());
    lines.add(facts.session());
    lines.add(facts.token());
    lines.add(Integer.toString(facts.addresses().size()));
    lines.addAll(facts.addresses());
    lines.addAll(facts.questions());
    Files.write(folder.resolve(FACTS), lines);
  }

  /** Writes it into an empty database. */
  static Facts generate(
      Path folder, WorkingDatabase where, int setups, boolean byMeaning, PrintStream log)
      throws Exception {
    Ticking clock = new Ticking(BEGUN);
    Ids ids = new Ids(new SecureRandom());
    SetupDocuments documents = new SetupDocuments(20261128);
    try (Database database = new Database(where, 4, clock)) {
      StudioId studio = new StudioId(ids.next());
      PersonId owner = new PersonId(ids.next());
      Facts in = begin(where, ids, studio, owner, setups);
      List<Meaning> meanings = byMeaning ? meanings() : List.of();
      Asker asker = Asker.whole(owner);
      List<String> addresses = new ArrayList<>();
      Random random = new Random(7);
      long began = System.nanoTime();
      for (int done = 0; done < setups; done += AT_A_TIME) {
        clock.go(Duration.ofMinutes(7));
        int many = Math.min(AT_A_TIME, setups - done);
        List<Written> written = new ArrayList<>();
        database.inStudio(
            studio,
            asker,
            transaction -> {
              for (int i = 0; i < many; i++) {
                written.add(write(transaction, documents, ids, random));
              }
              return many;
            });
        if (byMeaning) {
          database.inStudioForUpkeep(
              studio,
              transaction -> {
                written.forEach(
                    one ->
                        SetupMeanings.keep(
                            transaction, one.setup(), turned(meanings.get(one.like()), random)));
                return many;
              });
        }
        for (Written one : written) {
          String address = one.setup().id().text() + "\t\"" + one.setup().revision() + "\"";
          if (addresses.size() < ADDRESSES_KEPT) {
            addresses.add(address);
          } else if (random.nextInt(done + many) < ADDRESSES_KEPT) {
            addresses.set(random.nextInt(ADDRESSES_KEPT), address);
          }
        }
        if (done % 10_000 == 0 && done > 0) {
          log.printf("  %,d setups after %.0f s%n", done, (System.nanoTime() - began) / 1e9);
        }
      }
      List<String> questions = new ArrayList<>();
      for (int i = 0; i < QUESTIONS; i++) {
        questions.add(documents.question());
      }
      Facts facts = new Facts(setups, in.studio(), in.session(), in.token(), addresses, questions);
      keep(folder, facts);
      return facts;
    }
  }

  /** Sessions of years ago have ended, so who asks comes in by the clock of today. */
  private static Facts begin(
      WorkingDatabase where, Ids ids, StudioId studio, PersonId owner, int setups) {
    try (Database database = new Database(where, 1, Clock.systemUTC())) {
      return begin(database, ids, studio, owner, setups);
    }
  }

  private static Facts begin(
      Database database, Ids ids, StudioId studio, PersonId owner, int setups) {
    String session = ids.nextSecret();
    String token = ids.nextSecret();
    Instant end = Instant.now().plus(Duration.ofDays(14));
    database.anonymous(
        in -> {
          // Nobody signs in by a password here, so there is none.
          new People(in).create(owner, "owner@load.example", "Owner", "none").orElseThrow();
          new Members(in.enter(studio, owner)).found("A studio with much to find");
          new Sessions(in).begin(ids.next(), owner, SecretHash.of(session), "", end);
          return new Tokens(in)
              .create(
                  owner, ids.next(), SecretHash.of(token), "load", Reach.WHOLE, Optional.of(end));
        });
    return new Facts(setups, studio.text(), session, token, List.of(), List.of());
  }

  private record Written(StoredSetup setup, int like) {}

  private static Written write(
      StudioTransaction in, SetupDocuments documents, Ids ids, Random random) {
    SetupDocuments.Drawn drawn = documents.next();
    Setups setups = new Setups(in);
    SetupId id = new SetupId(ids.next());
    Standing standing = random.nextInt(4) == 0 ? Standing.DRAFT : Standing.PROVEN;
    setups.create(id, drawn.title(), drawn.json(), "", standing);
    if (random.nextInt(3) == 0) {
      var _ = setups.replace(id, 1, drawn.title(), drawn.json(), "Looked through");
    }
    if (random.nextInt(4) == 0) {
      take(in, ids, id, 1);
      take(in, ids, id, 2);
    }
    return new Written(setups.find(id).orElseThrow(), drawn.like());
  }

  private static void take(StudioTransaction in, Ids ids, SetupId setup, int number) {
    OffsetDateTime at = in.now().atOffset(ZoneOffset.UTC);
    LocalDate day = at.toLocalDate();
    Take take =
        new Take(
            Take.Kind.TAKE,
            at,
            1,
            number == 1 ? Take.Kept.NO : Take.Kept.YES,
            Optional.of("The second was the one."),
            Optional.empty(),
            List.of(),
            ids.next());
    new Takes(in, setup)
        .create(
            new Takes.NewTake(
                new TakeId(ids.next()),
                1,
                in.now(),
                day,
                number,
                take.clientKey(),
                take.label(number),
                Json.print(Take.FORM.write(take))));
  }

  private static List<Meaning> meanings() throws SentenceModel.Unavailable {
    SetupDocuments originals = new SetupDocuments(1);
    Meaning[] found = new Meaning[originals.originals()];
    try (SentenceModel model = SentenceModel.load()) {
      for (int missing = found.length; missing > 0; ) {
        SetupDocuments.Drawn drawn = originals.next();
        if (found[drawn.like()] == null) {
          found[drawn.like()] = model.of(drawn.title() + ". " + drawn.intent());
          missing--;
        }
      }
    }
    return List.of(found);
  }

  private static Meaning turned(Meaning meaning, Random random) {
    float[] numbers = meaning.direction();
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] += (float) (0.03 * random.nextGaussian());
    }
    return Meaning.of(numbers);
  }

  /**
   * A clock that goes on when it is told to, so that a catalogue of years is written in minutes.
   */
  private static final class Ticking extends Clock {

    private volatile Instant now;

    Ticking(Instant now) {
      this.now = now;
    }

    void go(Duration on) {
      now = now.plus(on);
    }

    @Override
    public Instant instant() {
      return now;
    }

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return this;
    }
  }
}
