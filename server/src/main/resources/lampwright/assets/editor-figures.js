// Shows what the engine answers: the strip of figures, the lights' table, cautions, what is missing.
// The words are the engine's own, as the setup's page prints them.

import { element, put } from "./elements.js";

export function showStrip(box, strip) {
  if (box.children.length !== strip.length) {
    box.replaceChildren(...strip.map(() => element("div", {}, element("dt"),
      element("dd", {}, element("span"), element("span", { class: "unit" }), element("span", { class: "give" })))));
  }
  strip.forEach((figure, i) => {
    const [name, value] = box.children[i].children;
    put(name, figure.name);
    put(value.children[0], figure.value);
    put(value.children[1], figure.unit ? ` ${figure.unit}` : "");
    put(value.children[2], figure.uncertainty ? ` ${figure.uncertainty}` : "");
  });
}

const CELLS = ["gear", "power", "reading", "level"];

export class LightsTable {
  constructor(body, words) {
    this.body = body;
    this.words = words;
  }

  show(lights) {
    if (this.body.children.length !== lights.length) {
      this.body.replaceChildren(...lights.map(() => this.row()));
    }
    lights.forEach((light, i) => this.fill(this.body.children[i], light));
  }

  row() {
    const cell = (name, cssClass, label) => element("td", {
      role: "cell", class: cssClass, "data-cell": name, "data-label": label && this.words.say(label),
    });
    return element("tr", { role: "row" },
      element("th", { scope: "row", role: "rowheader" }, element("span", { class: "disc" }), element("span")),
      cell("gear", "cell-gear"),
      cell("power", "fig cell-power", "table.power"),
      element("td", { role: "cell", class: "fig", "data-label": this.words.say("table.reading") },
        element("span", { "data-cell": "reading" }), " ", element("span", { class: "known" })),
      cell("ruler", "cell-ruler"),
      element("td", { role: "cell", class: "fig num", "data-label": this.words.say("table.stops") },
        element("span", { "data-cell": "level" }), element("span", { class: "give" })));
  }

  fill(row, light) {
    const [number, role] = row.querySelector("th").children;
    put(number, String(light.number));
    put(role, light.role);
    CELLS.forEach((name) => put(row.querySelector(`[data-cell=${name}]`), light[name] ?? ""));
    put(row.querySelector(".known"), light.known ?? "");
    put(row.querySelector(".give"), light.uncertainty ? ` ${light.uncertainty}` : "");
    const ruler = row.querySelector("[data-cell=ruler]");
    if (ruler.dataset.markup !== light.ruler) {
      ruler.dataset.markup = light.ruler;
      ruler.innerHTML = light.ruler;
    }
  }
}

// A list of sentences; its section is hidden while there are none. A caution may name its danger.
export function showList(section, sentences) {
  section.hidden = sentences.length === 0;
  const list = section.querySelector("ul");
  const text = JSON.stringify(sentences);
  if (list.dataset.text !== text) {
    list.dataset.text = text;
    list.replaceChildren(...sentences.map((sentence) => typeof sentence === "string"
      ? element("li", {}, sentence)
      : element("li", {}, sentence.danger ? element("b", {}, `${sentence.danger}. `) : null, sentence.act)));
  }
}
