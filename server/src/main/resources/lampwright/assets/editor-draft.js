// What is not saved yet: kept on this device with each change, offered again, saved, and put together
// with what somebody else saved first.

import { same } from "./editor-document.js";
import * as history from "./editor-history.js";
import { Keeping } from "./editor-keeping.js";
import { button, element, put } from "./editor-panel.js";
import { Saving } from "./editor-saving.js";

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
    this.saved = desk.data.document;
    this.saving = new Saving(desk.data, (told) => this.hear(told));
    this.state = desk.data.setup ? "saved" : "new";
    this.isKept = true;
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

  // Each change comes through here.
  keep() {
    if (this.isUnsaved) {
      this.isKept = this.keeping.keep({
        at: Date.now(), revision: this.base.revision, base: this.base.document,
        document: this.desk.now, name: this.name,
      });
      if (!["saving", "away", "stale"].includes(this.state)) {
        this.state = "unsaved";
      }
    } else {
      this.keeping.forget();
      this.state = this.desk.data.setup ? "saved" : "new";
    }
  }

  // What was kept here before and is not saved.
  offer() {
    const kept = this.keeping.find();
    if (!kept || same(kept.document, this.desk.now)) {
      return;
    }
    const box = this.desk.find("kept");
    const open = (act) => {
      act();
      box.hidden = true;
      this.desk.desk.inert = false;
      this.desk.find("pieces").focus();
    };
    const head = element("h2", { tabindex: "-1" },
      this.words.say("kept.heading", this.words.since(kept.at, Date.now())));
    box.replaceChildren(head,
      element("p", {}, this.words.say(kept.revision === this.base.revision ? "kept.same" : "kept.since")),
      element("div", { class: "desk-acts" },
        button(this.words.say("kept.go_on"), () => open(() => this.goOn(kept)), ""),
        button(this.words.say("kept.discard"), () => open(() => this.keeping.forget()))));
    box.hidden = false;
    // Until it is decided, a change would take the place of what is kept.
    this.desk.desk.inert = true;
    head.focus();
  }

  goOn(kept) {
    this.base = { revision: kept.revision, document: kept.base };
    this.name = kept.name ?? this.name;
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
      this.keeping.forget();
      this.saved = this.desk.now;
      location.replace(`${location.pathname.replace(/new$/, encodeURIComponent(told.setup))}/edit`);
      return;
    }
    // Written as the server writes it, unless somebody went on meanwhile.
    if (this.desk.now === told.asked.document) {
      this.keeping.forget();
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
