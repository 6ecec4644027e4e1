// Somebody saved first: shows theirs, mine and what the two make together, place by place, and lets
// one choose where both changed the same.

import { merge } from "./editor-merge.js";
import { button, element } from "./elements.js";

export class Differences {
  /**
   * @param acts what is done: save(document) with the two put together, back()
   */
  constructor(box, words, acts) {
    this.box = box;
    this.words = words;
    this.acts = acts;
  }

  /**
   * @param sides {base, mine, theirs}: three documents
   * @param by who saved first, and which revision
   */
  show(sides, by, revision) {
    this.sides = sides;
    this.choices = {};
    this.head = element("h2", { tabindex: "-1" }, this.words.say("stale.heading", by, revision));
    this.body = element("div");
    this.box.replaceChildren(this.head, this.body);
    this.box.hidden = false;
    this.draw();
    this.head.focus();
  }

  hide() {
    this.box.hidden = true;
    this.box.replaceChildren();
  }

  draw() {
    const { base, mine, theirs } = this.sides;
    const merged = merge(base, mine, theirs, this.choices);
    const open = merged.changes.filter((change) => change.isOpen).length;
    const both = merged.changes.filter((change) => change.by === "conflict").length;
    this.body.replaceChildren(
      element("p", {}, both === 0 ? this.words.say("stale.apart") : this.words.count("stale.both", both)),
      this.table(merged.changes),
      element("div", { class: "desk-acts" },
        this.save(merged.document, open),
        button(this.words.say("stale.back"), () => this.acts.back())));
  }

  save(document, open) {
    const words = open > 0 ? this.words.count("stale.choose", open) : this.words.say("stale.save");
    const made = button(words, () => {
      if (open === 0) {
        this.acts.save(document);
      } else {
        this.box.querySelector("tr.is-open input").focus();
      }
    }, "");
    made.dataset.does = "save-merged";
    return made;
  }

  table(changes) {
    const heads = ["what", "theirs", "mine", "merged"].map((name) =>
      element("th", { scope: "col", role: "columnheader" }, this.words.say(`stale.${name}`)));
    return element("table", { class: "differences", role: "table" },
      element("thead", { role: "rowgroup" }, element("tr", { role: "row" }, ...heads)),
      element("tbody", { role: "rowgroup" }, ...changes.map((change) => this.row(change))));
  }

  row(change) {
    const what = this.words.path(change.path, this.sides.mine);
    const field = change.path.at(-1) ?? "";
    const say = (value) => this.words.value(field, value);
    const cell = (side, ...content) => element("td", {
      role: "cell", "data-label": this.words.say(`stale.${side}`), class: `side-${side}`,
    }, ...content);
    const isChoice = change.by === "conflict";
    const side = (name) => cell(name, isChoice ? this.choice(change, name, say(change[name])) : say(change[name]));
    const merged = change.isOpen ? this.words.say("stale.open") : say(change.merged);
    return element("tr", { role: "row", class: change.isOpen ? "is-open" : change.by === "conflict" ? "is-chosen" : undefined },
      element("th", { scope: "row", role: "rowheader" }, what),
      side("theirs"), side("mine"), cell("merged", merged));
  }

  choice(change, side, words) {
    const input = element("input", { type: "radio", name: `choice ${change.name}`, checked: this.choices[change.name] === side });
    input.addEventListener("change", () => {
      this.choices[change.name] = side;
      this.draw();
      this.box.querySelector(`input[name="${CSS.escape(`choice ${change.name}`)}"]:checked`)?.focus();
    });
    return element("label", {}, input, ` ${words}`);
  }
}
