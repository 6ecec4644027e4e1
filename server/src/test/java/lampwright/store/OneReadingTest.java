package lampwright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import lampwright.people.Asker;
import lampwright.people.PersonId;
import lampwright.people.StudioId;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Several readings in one transaction: who may see what stays as it is in one each. */
class OneReadingTest {

  private static final String BEGUN = "select now()";

  @RegisterExtension static final TestDatabase database = new TestDatabase();

  private static Asker nora = Asker.whole(new PersonId("nobodyyet"));
  private static Asker omar = nora;
  private static StudioId noras = new StudioId("noneyet00");
  private static StudioId omars = noras;

  @BeforeAll
  static void twoPeopleWithAStudioEach() {
    nora = Asker.whole(database.newPerson());
    omar = Asker.whole(database.newPerson());
    noras = database.newStudio(nora.person());
    omars = database.newStudio(omar.person());
  }

  /** When the transaction began in which a studio is read. */
  private static Object begun(StudioId studio, Asker asker) {
    return database
        .open()
        .inStudio(studio, asker, in -> String.valueOf(in.sql().fetchSingle(BEGUN).get(0)));
  }

  private static List<Object> begunTwice(StudioId studio, Asker asker) {
    return List.of(begun(studio, asker), begun(studio, asker));
  }

  @Test
  void whatIsReadInOneReadingIsReadInOneTransaction() {
    List<Object> together = database.open().reading(noras, nora, () -> begunTwice(noras, nora));
    assertEquals(together.getFirst(), together.getLast());
    List<Object> apart = begunTwice(noras, nora);
    assertNotEquals(apart.getFirst(), apart.getLast());
  }

  @Test
  void anotherStudioOrAnotherPersonHasATransactionOfItsOwn() {
    assertThrows(
        NotEntered.class, () -> database.open().reading(omars, nora, () -> begun(omars, nora)));
    assertThrows(
        NotEntered.class, () -> database.open().reading(noras, nora, () -> begun(omars, nora)));
    List<Object> both =
        database.open().reading(noras, nora, () -> List.of(begun(noras, nora), begun(omars, omar)));
    assertNotEquals(both.getFirst(), both.getLast());
  }

  @Test
  void nothingIsWrittenInAReadingAndEverythingAfterIt() {
    String write = "update lampwright.kit set document = document";
    assertThrows(
        RuntimeException.class,
        () ->
            database
                .open()
                .reading(
                    noras,
                    nora,
                    () -> database.open().inStudio(noras, nora, in -> in.sql().execute(write))));
    for (int connection = 0; connection < 8; connection++) {
      int rows = database.open().inStudio(noras, nora, in -> in.sql().execute(write));
      assertEquals(0, rows);
    }
  }
}
