// The desk on which a setup is changed: holds the history of the document and the chosen piece, and
// turns what hand and keyboard do into changes.

import { Differences } from "./editor-differences.js";
import * as doc from "./editor-document.js";
import { Drawing } from "./editor-drawings.js";
import { Fields } from "./editor-fields.js";
import { Draft } from "./editor-draft.js";
import { headingDeg, point } from "./editor-geometry.js";
import * as history from "./editor-history.js";
import { act, pageAct } from "./editor-keys.js";
import * as lights from "./editor-lights.js";
import { Panel } from "./editor-panel.js";
import { Record } from "./editor-record-shown.js";
import { Shown } from "./editor-shown.js";
import { onTurn, snapped } from "./editor-snapping.js";

const VIEWS = ["plan", "side", "front"];

export class Desk {
  constructor(page, data, words, answer) {
    this.page = page;
    this.data = data;
    this.words = words;
    this.answer = answer;
    this.guide = null;
    this.history = history.begin(data.document);
    this.chosen = doc.pieces(data.document)[0].key;
  }

  find(name) {
    return this.page.querySelector(`[data-${name}]`);
  }

  get now() {
    return this.history.now;
  }

  open() {
    this.desk = this.find("desk");
    this.desk.hidden = false;
    this.page.classList.add("is-live");
    this.find("plain").hidden = true;
    const acts = {
      choose: (key) => this.choose(key),
      placeOf: (key) => doc.find(this.now, key).place,
      place: (key, at, how) => this.place(key, at, how),
      turn: (key, to, how) => this.turnTo(key, to, how),
      key: (event, key, view) => this.press(event, key, view),
      end: () => this.end(),
    };
    this.drawings = VIEWS.map((view) => new Drawing(this.find(`view-${view}`), view, acts));
    const fields = new Fields(this.words, this.data.gear, this.data.locations);
    const takes = {
      take: (document) => this.change(document),
      does: (name, key) => this.does(name, key),
      document: () => this.now,
    };
    this.panel = new Panel(this.find("panel"), fields, this.words, takes);
    this.record = new Record(this.find("record"), fields, this.words, takes);
    this.shown = new Shown(this, this.answer);
    this.differences = new Differences(this.find("differences"), this.words, {
      save: (document) => {
        this.change(document);
        this.draft.saveOver();
      },
      back: () => this.differences.hide(),
    });
    this.draft = new Draft(this);
    this.listen();
    this.shown.render();
    this.draft.open();
    this.shown.warm();
  }

  listen() {
    this.find("pieces").addEventListener("change", (event) => this.choose(event.target.value));
    this.find("undo").addEventListener("click", () => this.step(history.undo));
    this.find("redo").addEventListener("click", () => this.step(history.redo));
    this.find("save").addEventListener("click", () => this.draft.save());
    this.find("add-light").addEventListener("click", () => this.does("addLight"));
    this.find("add-subject").addEventListener("click", () => this.does("addSubject"));
    this.find("add-surface").addEventListener("click", () => this.does("addSurface"));
    this.find("add-camera").addEventListener("click", () => this.does("addCamera"));
    this.find("views").addEventListener("change", (event) => {
      this.desk.dataset.shown = event.target.value;
      this.shown.lay();
    });
    document.addEventListener("keydown", (event) => {
      const wanted = pageAct(event);
      if (wanted && !this.desk.inert) {
        event.preventDefault();
        wanted === "save" ? this.draft.save() : this.step(history[wanted]);
      }
    });
    this.listenToWords();
  }

  // The plain form's words are live here too.
  listenToWords() {
    const form = this.find("words");
    const take = (name, make) => {
      const input = form.elements[name];
      input.addEventListener("input", () => this.change(
        lights.withField(this.now, name, make(input.value)), `words ${name}`));
      input.addEventListener("change", () => this.settle());
    };
    take("title", (text) => text.trim());
    take("genre", (text) => text.trim() || undefined);
    take("intent", (text) => text.trim() || undefined);
    take("moods", (text) => text.split(",").map((mood) => mood.trim()).filter(Boolean));
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      this.draft.save();
    });
  }

  choose(key) {
    if (this.chosen !== key && doc.find(this.now, key) || key === "exposure") {
      this.chosen = key;
      this.shown.lay();
      this.shown.panel();
    }
  }

  // Every change goes through here: it can be undone, is kept on the device, and is drawn.
  change(document, gesture = "") {
    this.history = history.change(this.history, document, gesture);
    this.changed();
  }

  changed() {
    if (this.chosen !== "exposure" && !doc.find(this.now, this.chosen)) {
      this.chosen = doc.pieces(this.now)[0].key;
    }
    this.draft.keep();
    this.shown.soon();
  }

  settle() {
    this.history = history.settle(this.history);
  }

  step(way) {
    this.history = way(this.history);
    this.changed();
    this.shown.tellPiece();
  }

  place(key, at, how) {
    const whole = point(at.x_m, at.y_m, at.z_m);
    const rests = how.free || !this.find("snapping").checked
      ? { at: whole }
      : snapped(whole, doc.neighbours(this.now, key), how.reachM);
    this.change(doc.move(this.now, key, rests.at), how.gesture);
    this.guide = how.view !== "plan" ? null : this.lineOf(key) ?? (rests.by && rests.by !== "step" ? rests : null);
    this.shown.tellPiece();
  }

  // A surface is drawn anew when the hand rests; until then a line says where it comes to stand.
  lineOf(key) {
    const [kind, id] = key.split("/");
    return ["surface", "from", "to"].includes(kind) ? this.now.surfaces[id] : null;
  }

  turnTo(key, to, how) {
    const looks = doc.looksAt(this.now, key);
    if (looks) {
      const wanted = headingDeg(looks.from, to);
      const heading = how.free || !this.find("snapping").checked ? wanted : onTurn(wanted);
      this.change(doc.turn(this.now, key, heading - headingDeg(looks.from, looks.to)), how.gesture);
      this.shown.tellPiece();
    }
  }

  press(event, key, view) {
    const wanted = act(event, view);
    if (!wanted) {
      return;
    }
    event.preventDefault();
    if (wanted.remove) {
      this.does("remove", key);
      return;
    }
    if (wanted.by) {
      this.drawings.forEach((drawing) => drawing.hold());
      const at = { ...doc.find(this.now, key).place };
      for (const [axis, by] of Object.entries(wanted.by)) {
        at[axis] += by;
      }
      this.change(doc.move(this.now, key, point(at.x_m, at.y_m, at.z_m)), `keys ${key}`);
    } else {
      this.change(doc.turn(this.now, key, wanted.turn), `turn ${key}`);
    }
    this.shown.tellPiece();
  }

  // A drag or a walk by the keyboard is over: the sheet may choose its frame again.
  end() {
    this.settle();
    this.guide = null;
    this.drawings.forEach((drawing) => drawing.letGo());
    this.shown.soon();
  }

  does(name, key) {
    const [, id, index] = key?.split("/") ?? [];
    const made = {
      addLight: () => lights.add(this.now, this.data.gear.head[0] ?? this.now.lights[0].head),
      addSurface: () => doc.addSurface(this.now, this.words.say("new.surface")),
      addCamera: () => doc.addCamera(this.now),
      markEarlier: () => doc.moveMark(this.now, id, index, -1),
      markLater: () => doc.moveMark(this.now, id, index, 1),
      addSubject: () => doc.addSubject(this.now, this.words.say("new.subject")),
      duplicate: () => lights.duplicate(this.now, id),
      addMark: () => doc.addMark(this.now, id, this.words.say("new.mark")),
    }[name]?.();
    if (made) {
      this.change(made.document);
      this.choose(made.key ?? `light/${made.id}`);
      this.shown.render();
      this.drawings[0].focus(this.chosen);
      this.shown.tellPiece();
      return;
    }
    const changed = {
      remove: () => doc.remove(this.now, key),
      earlier: () => lights.moveInBuild(this.now, id, -1),
      later: () => lights.moveInBuild(this.now, id, 1),
      aimAtTarget: () => lights.aimAtTarget(this.now, id),
      left: () => doc.turn(this.now, key, -15),
      right: () => doc.turn(this.now, key, 15),
    }[name]();
    if (name === "remove" && changed !== this.now) {
      this.shown.announce(this.words.say("told.removed", this.words.piece(doc.find(this.now, key))));
      this.change(changed);
      this.shown.render();
      this.drawings[0].focus(this.chosen);
      return;
    }
    this.change(changed);
    this.shown.tellPiece();
  }

  buttons() {
    const [kind, id, index] = this.chosen.split("/");
    const one = (does, off = false) => ({ words: this.words.say(`act.${does}`), does, off });
    const turns = [one("left"), one("right")];
    switch (kind) {
      case "light": {
        const order = lights.inBuildOrder(this.now).map((light) => light.id);
        return [...turns, one("earlier", order[0] === id), one("later", order.at(-1) === id),
          one("duplicate"), one("remove", order.length === 1)];
      }
      case "camera": return [...(this.now.camera.aim ? turns : []), one("remove")];
      case "subject": return [...turns, one("addMark"), one("remove")];
      case "mark": {
        const last = this.now.subjects[id].path.length - 1;
        return [one("markEarlier", index === "0"), one("markLater", Number(index) === last), one("remove")];
      }
      case "surface": return [...turns, one("remove")];
      default: return [];
    }
  }
}
