// A stand-in's walk: marks walked, focus checked, readings on the marks against what is expected there.

import { meterForm } from "./field-steps.js";

export class Walk {
  constructor(page, day, engine, words, wrong) {
    Object.assign(this, { page, day, engine, words, wrong });
    this.marks = [...page.querySelectorAll("[data-mark]")];
    this.forms = [];
  }

  start() {
    this.marks.forEach((mark, i) => this.listen(mark, i));
    const focus = this.page.querySelector("[data-focus]");
    if (focus) {
      focus.hidden = false;
      this.focus = focus.querySelector("input");
      this.focus.addEventListener("change", () => this.day.change({ focus: this.focus.checked }));
    }
    this.day.onChange(() => this.show());
    this.forms.forEach((form) => form.show());
  }

  listen(mark, i) {
    const form = mark.querySelector("[data-on-mark]");
    this.forms.push(meterForm(form, {
      words: this.words,
      wrong: this.wrong,
      kept: () => this.day.facts.onMarks[i],
      keep: (reading) => this.day.keepOnMark(i, reading ?? undefined),
      compare: (reading) => this.compare(i, reading),
    }));
    form.elements.walked.addEventListener("change", (event) => this.day.walk(i, event.target.checked));
  }

  async compare(mark, reading) {
    const told = await this.engine.ask("meter", { metered: { marks: [{ mark, reading }] } });
    return told.problems ? { sentence: told.problems[0].message } : told.marks[0];
  }

  show() {
    const { walked, focus, onMarks } = this.day.facts;
    this.marks.forEach((mark, i) => {
      mark.querySelector("[name=walked]").checked = walked.includes(i);
      if (!onMarks[i]) {
        this.forms[i].clear();
      }
    });
    if (this.focus) {
      this.focus.checked = focus;
    }
  }
}
