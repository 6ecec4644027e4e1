// How far this phone is with one setup: the step, what was metered, which marks were walked. It is on the
// disk as soon as it is entered, so that a browser that dies loses nothing.

import { DAYS, find, put } from "./field-store.js";

const fresh = (data) => ({
  path: data.path, person: data.person, step: 0, readings: {}, walked: [], onMarks: {}, focus: false,
});

export class Day {
  constructor(data) {
    this.data = data;
    this.facts = fresh(data);
    this.listeners = [];
  }

  async open() {
    const known = await find(DAYS, this.data.path);
    if (known?.person === this.data.person) {
      this.facts = known;
    }
  }

  onChange(act) {
    this.listeners.push(act);
    act();
  }

  // The words on the page follow only when it is kept.
  async change(part) {
    this.facts = { ...this.facts, ...part };
    await put(DAYS, this.facts);
    this.listeners.forEach((act) => act());
  }

  keepReading(light, reading) {
    return this.change({ readings: { ...this.facts.readings, [light]: reading } });
  }

  keepOnMark(mark, reading) {
    return this.change({ onMarks: { ...this.facts.onMarks, [mark]: reading } });
  }

  walk(mark, isWalked) {
    const others = this.facts.walked.filter((one) => one !== mark);
    return this.change({ walked: isWalked ? [...others, mark].sort((one, other) => one - other) : others });
  }

  // After it was logged the next run-through begins; where one stands on the page stays.
  begin() {
    return this.change({ ...fresh(this.data), step: this.facts.step, part: this.facts.part });
  }
}
