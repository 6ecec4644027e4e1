// Shows the desk as it is: the answer of the engine in all its parts, the handles, the fields, the
// words. It changes nothing but the page.

import * as doc from "./editor-document.js";
import { LightsTable, showList, showStrip } from "./editor-figures.js";
import * as lights from "./editor-lights.js";
import { button, element, put } from "./elements.js";

const PAUSE_MS = 250;
const FIGURES = ["strip", "lights"];
const AFTER = [["cautions", "needs"], ["plan"], ["side", "front"]];
const REST_MS = 80;
const WARMING = 25;
const NARROW = "(max-width: 52rem)";

export class Shown {
  /**
   * @param desk whose document, chosen piece and guide it shows
   * @param answer the engine: JSON to JSON
   */
  constructor(desk, answer) {
    this.desk = desk;
    this.words = desk.words;
    this.answer = answer;
    this.phrases = JSON.stringify(Object.fromEntries(
      Object.entries(desk.data.phrases).filter(([key]) => !key.startsWith("editor."))));
    this.table = new LightsTable(this.find("lights"), this.words);
    this.narrow = globalThis.matchMedia(NARROW);
    this.narrow.addEventListener("change", () => this.lay());
  }

  get order() {
    return lights.inBuildOrder(this.now).map((light) => light.id);
  }

  find(name) {
    return this.desk.find(name);
  }

  get now() {
    return this.desk.now;
  }

  // At most one answer a frame.
  soon() {
    this.frame ??= requestAnimationFrame(() => this.render());
  }

  get isHeld() {
    return this.desk.drawings.some((drawing) => drawing.held);
  }

  // Under the hand a frame is short: only the figures are asked for, and what is pulled is carried
  // along on the drawing. As soon as the hand rests, what is drawn follows; the rest when it lets go.
  later() {
    clearTimeout(this.resting);
    this.resting = setTimeout(() => {
      const pulled = this.desk.drawings.find((drawing) => drawing.grip?.moved);
      if (pulled) {
        this.ask([pulled.view === "plan" ? "quick_plan" : pulled.view]);
        this.over();
      } else {
        this.goOn();
      }
    }, this.isHeld ? REST_MS : 0);
  }

  // What lies over the drawings: handles, and the line that something came to rest on.
  over() {
    this.lay();
    this.desk.drawings.forEach((drawing) => drawing.guide(this.desk.guide));
  }

  // Part by part, so that a hand that comes back is not kept waiting.
  goOn() {
    const next = this.due.shift();
    if (next) {
      this.ask(next);
      this.over();
      this.resting = setTimeout(() => this.goOn());
    }
  }

  ask(want) {
    const { language, lengths, stops } = this.desk.data;
    const head = JSON.stringify({ language, lengths, stops, want }).slice(1, -1);
    const { quick_plan: plan, ...answer } = JSON.parse(this.answer(
      `{${head},"phrases":${this.phrases},"document":${JSON.stringify(this.now)}}`));
    if (answer.problems.length === 0) {
      this.show(plan === undefined ? answer : { ...answer, plan });
    }
    this.problems(answer.problems);
    return answer.problems.length === 0;
  }

  render() {
    cancelAnimationFrame(this.frame);
    this.frame = null;
    const { isHeld } = this;
    if (this.drawn !== this.now || this.wasHeld && !isHeld) {
      const isFirst = this.drawn === undefined;
      this.drawn = this.now;
      this.wasHeld = isHeld;
      this.due = isFirst ? [] : [...AFTER];
      if (this.ask(isFirst ? [...FIGURES, ...AFTER.flat()] : FIGURES)) {
        this.later();
      }
    }
    this.over();
    this.panel();
    this.texts();
    this.desk.draft.show();
  }

  // The engine's first calls are slow, until the browser has compiled what they use: they are made
  // while nobody waits for them.
  warm(calls = WARMING) {
    const idle = globalThis.requestIdleCallback ?? ((act) => setTimeout(act, 50));
    if (calls > 0) {
      idle(() => {
        if (!this.isHeld) {
          this.ask(FIGURES);
        }
        this.warm(calls - 1);
      });
    }
  }

  show(answer) {
    this.told = { ...this.told, ...answer };
    this.desk.drawings
      .filter((drawing) => drawing.view in answer)
      .forEach((drawing) => drawing.show(answer[drawing.view], doc.everything(this.now), this.order));
    if ("strip" in answer) {
      showStrip(this.find("strip"), answer.strip);
      this.table.show(answer.lights);
    }
    if ("cautions" in answer) {
      showList(this.find("cautions"), answer.cautions);
      showList(this.find("needs"), answer.needs.map((need) => need.sentence));
    }
  }

  lay() {
    const all = [...doc.pieces(this.now), ...doc.ends(this.now, this.desk.chosen)]
      .map((piece) => ({ ...piece, words: `${this.words.piece(piece)}: ${this.words.place(piece.place)}` }));
    // On a phone the strip scrolls sideways, by keyboard too.
    const strip = this.find("figures");
    this.narrow.matches ? strip.setAttribute("tabindex", "0") : strip.removeAttribute("tabindex");
    const view = this.narrow.matches ? this.find("desk").dataset.shown : "plan";
    this.desk.drawings.forEach((drawing) => drawing.lay(all, this.desk.chosen, drawing.view === view));
    this.offerPieces();
  }

  offerPieces() {
    const select = this.find("pieces");
    const offered = [
      ...doc.pieces(this.now), ...doc.ends(this.now, this.desk.chosen), { key: "exposure", kind: "exposure" },
    ].map((piece) => [piece.key, this.words.piece(piece)]);
    const text = JSON.stringify(offered);
    if (select.dataset.offered !== text) {
      select.dataset.offered = text;
      select.replaceChildren(...offered.map(([value, words]) => element("option", { value }, words)));
    }
    select.value = this.desk.chosen;
  }

  panel() {
    this.desk.panel.show(this.desk.chosen, this.now, this.desk.buttons());
    this.desk.record.show(this.now);
    this.find("add-camera").hidden = Boolean(this.now.camera?.place);
    const { past, future } = this.desk.history;
    this.find("undo").setAttribute("aria-disabled", String(past.length === 0));
    this.find("redo").setAttribute("aria-disabled", String(future.length === 0));
    put(this.find("result"), this.result());
  }

  texts() {
    const { title, genre = "", intent = "", moods = [] } = this.now;
    const fields = this.find("words").elements;
    const typed = { title, genre, intent, moods: moods.join(", ") };
    for (const [name, text] of Object.entries(typed)) {
      if (document.activeElement !== fields[name]) {
        fields[name].value = text;
      }
    }
    put(this.find("heading"), title || this.words.say("new.title"));
  }

  // What is not right yet; each leads to its piece.
  problems(problems) {
    const box = this.find("problems");
    box.hidden = problems.length === 0;
    box.querySelector("ul").replaceChildren(...problems.map(({ pointer, message }) => {
      const [, list, index] = pointer.split("/");
      const light = list === "lights" ? this.now.lights[index] : undefined;
      const text = element("span", { lang: "en" }, message);
      return element("li", {}, light
        ? button(text, () => {
          this.desk.choose(`light/${light.id}`);
          this.find("panel").querySelector("input").focus();
        })
        : text);
    }));
  }

  // "2.4 m at 40° camera left, 1.9 m up: f/5.6, −0.3 stops"
  result() {
    const piece = doc.find(this.now, this.desk.chosen);
    if (!piece) {
      return "";
    }
    const place = this.words.place(piece.place);
    const number = ["light", "target", "aim"].includes(piece.kind)
      ? lights.inBuildOrder(this.now).findIndex((one) => one.id === piece.key.split("/")[1])
      : -1;
    const row = this.told?.lights[number];
    return row?.reading ? this.words.say("told.reading", place, row.reading, row.level) : place;
  }

  // In words, once somebody pauses.
  tellPiece() {
    clearTimeout(this.saying);
    this.saying = setTimeout(() => {
      const piece = doc.find(this.now, this.desk.chosen);
      if (piece) {
        this.announce(`${this.words.piece(piece)}: ${this.result()}`);
      }
    }, PAUSE_MS);
  }

  announce(text) {
    put(this.find("told"), text);
  }
}
