package lampwright.tasks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.sql.SQLException;
import java.util.List;
import lampwright.document.Json;
import lampwright.people.Asker;
import lampwright.people.PersonId;
import lampwright.people.StudioId;
import lampwright.setup.Documents;
import lampwright.setup.SetupId;
import lampwright.setup.signature.Signature;
import lampwright.store.Setups;
import lampwright.store.TestDatabase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** A database of an older version is signed in the background, whatever else stands in it. */
class SignatureUpkeepTest {

  @RegisterExtension static final TestDatabase database = new TestDatabase();

  private static String stored(String column, SetupId setup) throws SQLException {
    List<String> found =
        database.sqlAsSuperuser(
            "select %s from lampwright.setup_signature where setup_id = '%s'"
                .formatted(column, setup.text()));
    return String.join(", ", found);
  }

  private static SetupId create(StudioId studio, PersonId person, String document) {
    SetupId id = new SetupId(database.ids().next());
    database
        .open()
        .inStudio(studio, Asker.whole(person), in -> new Setups(in).create(id, "T", document, ""));
    return id;
  }

  @Test
  void whatIsNotSignedIsSignedAndWhatCannotBeReadIsPassedOver() throws Exception {
    PersonId person = database.newPerson();
    StudioId studio = database.newStudio(person);
    StudioId other = database.newStudio(person);
    Object document = Documents.resource("one-light.json");
    SetupId unsigned = create(studio, person, Json.print(document));
    SetupId old = create(other, person, Json.print(document));
    SetupId unreadable = create(studio, person, "{\"title\": \"no setup\"}");
    Object signature =
        Json.parse(Json.print(Signature.FORM.write(Signature.of(Documents.setup(document)))));
    assertEquals(signature, Json.parse(stored("signature", unsigned)));
    database.sqlAsSuperuser(
        "delete from lampwright.setup_signature where setup_id = '%s'".formatted(unsigned),
        "update lampwright.setup_signature set version = 999 where setup_id = '%s'".formatted(old));

    try (SignatureUpkeep upkeep = SignatureUpkeep.start(database.open())) {
      assertTrue(upkeep.await(30), "not done in time");
    }

    assertEquals(signature, Json.parse(stored("signature", unsigned)));
    assertEquals(String.valueOf(Signature.VERSION), stored("version", old));
    assertEquals("", stored("version", unreadable));
  }
}
