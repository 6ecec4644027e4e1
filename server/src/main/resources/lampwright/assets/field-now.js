// What to change now, answered by the engine in this browser: the same question and the same words as the
// page that the server answers.

import { readLength, readNumber } from "./editor-units.js";
import { element } from "./elements.js";

const RADIANS = Math.PI / 180;

export class Now {
  constructor(page, data, engine, words, wrong) {
    Object.assign(this, { page, data, engine, words, wrong });
    this.box = page.querySelector("[data-now]");
    this.answer = page.querySelector("[data-now-answer]");
  }

  start() {
    const form = this.box.querySelector(".now-form:not(.now-moved)");
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      this.ask(happening(form, event.submitter?.value), form);
    });
    const moved = this.box.querySelector("[data-moved]");
    moved.hidden = false;
    moved.elements.moved.addEventListener("change", () => fill(moved));
    fill(moved);
    moved.addEventListener("submit", (event) => {
      event.preventDefault();
      const place = this.place(moved);
      if (place) {
        this.ask({ moved: { light: moved.elements.moved.value, place } }, form);
      } else {
        this.show(element("p", { class: "field-error" }, this.words.say("moved.wrong")));
      }
    });
  }

  // From where one reads it off, back to the document's axes.
  place(form) {
    const direction = form.elements.direction.value.trim() === "" ? 0 : readNumber(form.elements.direction.value);
    const [distance, height] = ["distance", "height"].map((name) => readLength(form.elements[name].value, this.words.units));
    const clockwise = (direction - this.data.turned_deg) * RADIANS;
    const place = [distance * Math.sin(clockwise), distance * Math.cos(clockwise), height];
    return place.every(Number.isFinite) ? place : undefined;
  }

  async ask(happened, form) {
    const kit = this.data.kits.find((one) => one.id === form.elements.kit?.value);
    const request = {
      happening: happened, keep: form.elements.keep.checked ? ["time"] : [], ...(kit && { kit: kit.document }),
    };
    try {
      const told = await this.engine.ask("now", request);
      this.show(...(told.problems
        ? told.problems.map((problem) => element("p", { class: "field-error" }, problem.message))
        : parts(told, this.data.phrases["reacting.page.leaves"])));
    } catch {
      this.wrong(this.words.say("noEngine"));
    }
  }

  show(...content) {
    this.answer.hidden = false;
    this.answer.replaceChildren(...content);
    this.answer.focus({ preventScroll: true });
    this.answer.scrollIntoView({ block: "nearest" });
  }
}

function fill(form) {
  const { direction, distance, height } = form.elements.moved.selectedOptions[0].dataset;
  form.elements.direction.value = direction;
  form.elements.distance.value = distance;
  form.elements.height.value = height;
}

// In the fields that programs send; what is no number is told as it was typed.
function happening(form, asked) {
  switch (asked) {
    case "falls-1": return { ambient_falls_stops: 1 };
    case "falls-2": return { ambient_falls_stops: 2 };
    case "dead": return { dead: form.elements.light.value };
    default: {
      const typed = form.elements.ambient.value;
      const number = readNumber(typed);
      return { ambient_ev100: Number.isNaN(number) ? typed : number };
    }
  }
}

const list = (cssClass, sentences) => sentences.length === 0 ? ""
  : element("ul", { class: cssClass }, ...sentences.map((sentence) => element("li", {}, sentence)));

const paragraph = (cssClass, sentence) => sentence ? element("p", { class: cssClass }, sentence) : "";

function parts(told, leaves) {
  const ways = told.ways.map((way) => element("li", { class: way.holds_all ? "now-way" : "now-way now-leaves" },
    element("p", { class: "now-dials" }, way.dials_said, way.holds_all ? "" : " ",
      way.holds_all ? "" : element("span", {}, leaves)), list("now-turns", way.turns),
    paragraph("now-then", way.then), list("now-costs", way.costs)));
  return [
    element("h3", {}, told.happened),
    paragraph("now-untouched", told.untouched),
    paragraph("now-instead", told.instead),
    ways.length > 0 ? element("ol", { class: "now-ways" }, ...ways) : "",
    told.cautions.length > 0 ? element("div", { class: "cautions now-cautions" }, list("", told.cautions)) : "",
  ].filter((part) => part !== "");
}
