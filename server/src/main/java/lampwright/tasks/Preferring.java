package lampwright.tasks;

import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.language.Language;
import lampwright.language.LengthUnit;
import lampwright.language.StopFraction;
import lampwright.people.Preferred;
import lampwright.store.Database;
import lampwright.store.People;

/** Keeps how each person has chosen to read: their language, their tape, their meter. */
public final class Preferring {

  private static final Form<Language> SPOKEN =
      Forms.text(8)
          .like("^(de|en)$", written -> Language.find(written).isPresent(), "one of de, en")
          .as(written -> Language.find(written).orElseThrow(), Language::tag);

  private static final Field<Preferred, Optional<Language>> LANGUAGE =
      Field.optional(
          "language",
          SPOKEN,
          Preferred::language,
          "The language of pages, as a tag of BCP 47; absent: as the browser asks.");
  private static final Field<Preferred, LengthUnit> LENGTHS =
      Field.required(
          "lengths",
          Forms.choice(LengthUnit.values()),
          Preferred::lengths,
          "The unit in which pages write lengths; documents keep metres.");
  private static final Field<Preferred, StopFraction> STOPS =
      Field.required(
          "stops",
          Forms.choice(StopFraction.values()),
          Preferred::stops,
          "The fraction in which pages write stops; documents keep decimals.");

  /** The choice as a document. */
  public static final ObjectForm<Preferred> FORM =
      ObjectForm.of(
          "preferences",
          "How a person has chosen to read pages.",
          values -> new Preferred(values.get(LANGUAGE), values.get(LENGTHS), values.get(STOPS)),
          List.of(LANGUAGE, LENGTHS, STOPS));

  private final Database database;

  public Preferring(Database database) {
    this.database = database;
  }

  /**
   * What somebody has chosen.
   *
   * @param revision counts the changes, from 1
   */
  public record Chosen(Preferred preferred, int revision) {}

  /** The caller's own. */
  public Chosen get(Caller caller) {
    return database.anonymous(
        in ->
            new People(in)
                .findPreferred(caller.person().id())
                .map(chosen -> new Chosen(chosen.preferred(), chosen.revision()))
                .orElseThrow(Refused::notFound));
  }

  /**
   * Puts another choice in the place of the caller's.
   *
   * @param basedOn the revision that was looked at
   * @return as it is now
   * @throws Refused Stale where it was changed since
   */
  public Chosen replace(Caller caller, int basedOn, Preferred preferred) {
    int revision =
        database.anonymous(
            in ->
                Cataloguing.mustBeSaved(
                    new People(in).prefer(caller.person().id(), basedOn, preferred)));
    return new Chosen(preferred, revision);
  }
}
