package lampwright.setup.notes;

import lampwright.people.Ids;

/** Names one note: 4 to 32 small letters and digits. */
public record NoteId(String text) {

  public NoteId {
    Ids.check("note", text);
  }

  @Override
  public String toString() {
    return text;
  }
}
