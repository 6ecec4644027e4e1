// The build, one step at a time, and what the meter gave for each light against what is expected.

import { readMeter } from "./editor-units.js";
import { element } from "./elements.js";

// What stands in a meter's two fields; undefined where that is no reading, null where nothing stands there.
export function typedReading(form) {
  const [mark, tenths] = form.querySelectorAll("input.fig");
  if (!mark.value.trim() && !tenths.value.trim()) {
    return null;
  }
  const whole = tenths.value.trim() ? `${mark.value.trim()} ${tenths.value.trim()}` : mark.value;
  return readMeter(whole) ?? undefined;
}

export function fillReading(form, reading, units) {
  const [mark, tenths] = form.querySelectorAll("input.fig");
  mark.value = reading ? String(reading.f_number).replace(".", units.language === "de" ? "," : ".") : "";
  tenths.value = reading?.tenths ? String(reading.tenths) : "";
}

// What a comparison says, beside the field.
export function showMet(form, met) {
  const box = form.querySelector("[data-met]");
  if (!met) {
    box.replaceChildren();
    return;
  }
  const off = met.stops
    ? element("p", { class: met.notable ? "met-off off-notable" : "met-off" },
      element("span", { class: "fig" }, met.stops), " ", met.word)
    : "";
  const ruler = met.ruler ? element("div", { class: "met-ruler" }) : "";
  if (ruler) {
    ruler.innerHTML = met.ruler;
  }
  const says = met.sentence ? element("p", { class: "met-says" }, met.sentence) : "";
  box.replaceChildren(...[off, ruler, says].filter((part) => part !== ""));
}

export function showWrong(form, sentence) {
  form.querySelector("[data-met]").replaceChildren(element("p", { class: "field-error" }, sentence));
}

/** Listens to one meter's form, keeps what was typed, and shows the comparison. */
export function meterForm(form, { words, kept, keep, compare, wrong }) {
  form.hidden = false;
  fillReading(form, kept(), words.units);
  const show = async () => {
    const reading = kept();
    try {
      showMet(form, reading ? await compare(reading) : undefined);
    } catch {
      wrong(words.say("noEngine"));
    }
  };
  form.addEventListener("submit", async (event) => {
    event.preventDefault();
    const reading = typedReading(form);
    if (reading === undefined) {
      showWrong(form, words.say("reading.wrong"));
      return;
    }
    await keep(reading);
    await show();
  });
  return { show, clear: () => { fillReading(form, kept(), words.units); showMet(form, undefined); } };
}

export class Steps {
  constructor(page, day, engine, words, wrong) {
    this.page = page;
    this.day = day;
    this.engine = engine;
    this.words = words;
    this.wrong = wrong;
    this.steps = [...page.querySelectorAll("[data-step]")];
    this.forms = new Map();
  }

  start() {
    this.steps.forEach((step) => this.listen(step));
    const turning = this.page.querySelector("[data-turning]");
    turning.hidden = this.steps.length < 2;
    turning.querySelector("[data-back]").addEventListener("click", () => this.go(-1));
    turning.querySelector("[data-next]").addEventListener("click", () => this.go(1));
    this.page.querySelector("[data-steps]").classList.add("one-at-a-time");
    this.show();
    this.day.onChange(() => this.cleared());
    this.forms.forEach((form) => form.show());
  }

  listen(step) {
    const light = step.dataset.step;
    const form = step.querySelector("[data-meter]");
    if (form) {
      this.forms.set(light, meterForm(form, {
        words: this.words,
        wrong: this.wrong,
        kept: () => this.day.facts.readings[light],
        keep: (reading) => this.day.keepReading(light, reading ?? undefined),
        compare: (reading) => this.compare(light, reading),
      }));
    }
  }

  async compare(light, reading) {
    const told = await this.engine.ask("meter", { metered: { lights: [{ light, ...reading }] } });
    return told.problems ? { sentence: told.problems[0].message } : told.lights[0];
  }

  // A run-through that was logged leaves empty fields.
  cleared() {
    this.forms.forEach((form, light) => {
      if (!this.day.facts.readings[light]) {
        form.clear();
      }
    });
  }

  get at() {
    return Math.min(this.day.facts.step, this.steps.length - 1);
  }

  async go(by) {
    const next = Math.min(this.steps.length - 1, Math.max(0, this.at + by));
    await this.day.change({ step: next });
    this.show();
    this.steps[next].focus({ preventScroll: true });
    this.steps[next].scrollIntoView({ block: "nearest" });
  }

  show() {
    this.steps.forEach((step, i) => {
      step.hidden = i !== this.at;
    });
    const turning = this.page.querySelector("[data-turning]");
    turning.querySelector("[data-at]").textContent = this.words.say("place", this.at + 1, this.steps.length);
    turning.querySelector("[data-back]").disabled = this.at === 0;
    turning.querySelector("[data-next]").disabled = this.at === this.steps.length - 1;
  }
}
