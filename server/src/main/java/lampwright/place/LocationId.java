package lampwright.place;

import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.people.Ids;

/** Names one location: 4 to 32 small letters and digits. */
public record LocationId(String text) {

  /** The id as a document names it. */
  public static final Form<LocationId> FORM =
      Forms.text(32)
          .like("^[0-9a-z]{4,32}$", Ids::isId, "a location's id, 4 to 32 small letters and digits")
          .as(LocationId::new, LocationId::text);

  public LocationId {
    Ids.check("location", text);
  }

  @Override
  public String toString() {
    return text;
  }
}
