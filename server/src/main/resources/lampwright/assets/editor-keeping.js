// Keeps what is not saved yet on this device, so that it outlives the tab and the connection. One
// record a person and setup. A device that keeps nothing (private windows, a full disk) says so.

const BEGINNING = "lampwright.editor.";

export class Keeping {
  constructor(storage, data) {
    this.storage = storage;
    this.name = `${BEGINNING}${data.person}.${data.studio}/${data.setup || `new${data.from}`}`;
  }

  /**
   * @param draft {at, revision, base, document, key}: when, made from which revision and document,
   *     and under which key a new one is sent
   * @returns whether it is kept
   */
  keep(draft) {
    try {
      this.storage.setItem(this.name, JSON.stringify(draft));
      return true;
    } catch {
      return false;
    }
  }

  // What is kept; null where nothing is, or nothing that can be read.
  find() {
    try {
      const draft = JSON.parse(this.storage.getItem(this.name) ?? "null");
      return draft && draft.document && draft.base ? draft : null;
    } catch {
      return null;
    }
  }

  forget() {
    try {
      this.storage.removeItem(this.name);
    } catch {
      // Then nothing was kept either.
    }
  }
}
