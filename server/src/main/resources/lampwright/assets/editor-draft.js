// What is not saved yet: kept on this device with each change, offered again, saved, and put together
// with what somebody else saved first.

import { same } from "./editor-document.js";
import * as history from "./editor-history.js";
import { Keeping } from "./editor-keeping.js";
import { button, element, put } from "./elements.js";
import { Saving } from "./editor-saving.js";
import { Windows } from "./editor-windows.js";

// Not for secrets: tells one new setup from another when a request is sent again.
function fingerprint(text) {
  let sum = 0x811c9dc5;
  for (let i = 0; i < text.length; i += 1) {
    sum = Math.imul(sum ^ text.charCodeAt(i), 0x01000193);
  }
  return (sum >>> 0).toString(36);
}

function randomName() {
  return [...crypto.getRandomValues(new Uint32Array(3))].map((part) => part.toString(36)).join("");
}

export class Draft {
  constructor(desk) {
    this.desk = desk;
    this.words = desk.words;
    this.keeping = new Keeping(globalThis.localStorage, desk.data);
    this.base = { revision: desk.data.revision, document: desk.data.document };
    this.name = randomName();
    this.tab = randomName();
    this.windows = new Windows(this.keeping.name, this.tab, () => this.isUnsaved);
    this.saved = desk.data.document;
    this.saving = new Saving(desk.data, (told) => this.hear(told));
    this.state = desk.data.setup ? "saved" : "new";
    this.isKept = true;
    globalThis.addEventListener("storage", (event) => {
      if (event.key === this.keeping.name) {
        this.hearWindow();
      }
    });
    globalThis.addEventListener("beforeunload", (event) => {
      if (this.isUnsaved) {
        event.preventDefault();
      }
    });
  }

  get isUnsaved() {
    const { now } = this.desk;
    return now !== this.saved && !same(now, this.base.document);
  }

  // Each change comes through here. What another window keeps is never overwritten unasked.
  keep() {
    if (!this.isUnsaved) {
      this.forget();
      this.state = this.desk.data.setup ? "saved" : "new";
      return;
    }
    const kept = this.keeping.find();
    if (this.isOfAnother(kept)) {
      this.offer(kept, "taken");
      return;
    }
    this.keepMine();
  }

  keepMine() {
    this.passed = undefined;
    this.isKept = this.keeping.keep({
      at: Date.now(), revision: this.base.revision, base: this.base.document,
      document: this.desk.now, name: this.name, tab: this.tab,
    });
    if (!["saving", "away", "stale"].includes(this.state)) {
      this.state = "unsaved";
    }
  }

  // Only what this window kept.
  forget() {
    if (!this.isOfAnother(this.keeping.find())) {
      this.keeping.forget();
    }
  }

  isOfAnother(kept) {
    return kept !== null && kept.tab !== this.tab && kept.tab !== this.passed && !same(kept.document, this.desk.now);
  }

  // What was kept here before and is not saved.
  open() {
    const kept = this.keeping.find();
    if (this.isOfAnother(kept)) {
      this.offer(kept, "heading");
      this.windows.ask(() => {
        const note = this.desk.find("kept").querySelector("[data-open]");
        if (note) {
          put(note, this.words.say("kept.open"));
        }
      });
    }
  }

  // Another window keeps something, or no longer does.
  hearWindow() {
    const kept = this.keeping.find();
    if (this.isOfAnother(kept)) {
      this.offer(kept, this.isUnsaved ? "taken" : "elsewhere");
    } else if (kept === null) {
      this.close();
    }
  }

  /**
   * Until it is decided, nothing can be changed here.
   *
   * @param how "heading" for what is from before, "elsewhere" for what another window changes now,
   *     "taken" for where both windows have changes
   */
  offer(kept, how) {
    const box = this.desk.find("kept");
    const since = this.words.since(kept.at, Date.now());
    const sentence = how === "taken" ? "kept.both"
      : kept.revision === this.base.revision ? "kept.same" : "kept.since";
    const here = {
      heading: () => this.keeping.forget(),
      elsewhere: () => {
        this.passed = kept.tab;
      },
      taken: () => this.keepMine(),
    }[how];
    const decide = (act) => {
      this.close();
      act();
      this.desk.find("pieces").focus();
      this.desk.shown.soon();
    };
    const isOpen = !box.hidden;
    const head = element("h2", { tabindex: "-1" }, this.words.say(`kept.${how}`, since));
    box.replaceChildren(head,
      element("p", {}, this.words.say(sentence)),
      element("p", { "data-open": true }),
      element("div", { class: "desk-acts" },
        button(this.words.say(how === "heading" ? "kept.go_on" : "kept.take"), () => decide(() => this.goOn(this.keeping.find() ?? kept)), ""),
        button(this.words.say(how === "heading" ? "kept.discard" : "kept.stay"), () => decide(here))));
    box.hidden = false;
    this.hold(true);
    if (!isOpen) {
      head.focus();
    }
  }

  hold(isHeld) {
    this.desk.desk.inert = isHeld;
    this.desk.find("words").inert = isHeld;
  }

  close() {
    this.desk.find("kept").hidden = true;
    this.hold(false);
  }

  goOn(kept) {
    this.base = { revision: kept.revision, document: kept.base };
    this.name = kept.name ?? this.name;
    this.passed = kept.tab;
    this.desk.change(kept.document);
  }

  save() {
    this.desk.settle();
    if (!this.isUnsaved && this.desk.data.setup) {
      this.desk.shown.announce(this.words.say("state.nothing"));
      return;
    }
    this.send();
  }

  send() {
    const { now } = this.desk;
    this.saving.save({
      document: now, revision: this.base.revision, key: `${this.name}-${fingerprint(JSON.stringify(now))}`,
    });
  }

  // Both put together, on top of theirs.
  saveOver() {
    this.base = this.theirs;
    this.desk.differences.hide();
    this.desk.find("save").focus();
    this.keep();
    this.send();
  }

  hear(told) {
    this.state = told.state;
    this.told = told;
    if (told.state === "saved") {
      this.hearSaved(told);
    } else if (told.state === "stale") {
      this.theirs = { revision: told.revision, document: told.document };
      this.desk.differences.show(
        { base: this.base.document, mine: this.desk.now, theirs: told.document }, told.by, told.revision);
    } else if (told.state === "wrong") {
      this.desk.shown.problems(told.problems.length > 0 ? told.problems : [{ pointer: "", message: told.detail }]);
    }
    this.show();
  }

  hearSaved(told) {
    this.base = { revision: told.revision, document: told.document };
    this.saved = told.asked.document;
    if (!this.desk.data.setup) {
      this.forget();
      this.saved = this.desk.now;
      location.replace(`${location.pathname.replace(/new$/, encodeURIComponent(told.setup))}/edit`);
      return;
    }
    // Written as the server writes it, unless somebody went on meanwhile.
    if (this.desk.now === told.asked.document) {
      this.forget();
    } else {
      this.keep();
    }
  }

  show() {
    const { say } = { say: (key, ...parts) => this.words.say(`state.${key}`, ...parts) };
    const sentence = {
      new: () => say("new"),
      saved: () => say("saved", this.base.revision),
      unsaved: () => say(this.isKept ? "unsaved" : "not_kept"),
      saving: () => say("saving"),
      away: () => say("away", this.told.seconds),
      stale: () => say("stale", this.theirs.revision),
      wrong: () => say("wrong"),
      out: () => say("out"),
      refused: () => this.told.detail ?? say("wrong"),
    }[this.state]();
    put(this.desk.find("state"), sentence);
    this.desk.find("state").dataset.state = this.state;
  }
}
