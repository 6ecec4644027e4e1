// Shows the parts of a setup that stand on no drawing, each closed until it is wanted.

import { Panel } from "./editor-panel.js";
import { element, put } from "./elements.js";
import { noteOf, PARTS } from "./editor-record.js";

export class Record {
  /**
   * @param box the element that it fills
   * @param fields, words, acts as a Panel has them
   */
  constructor(box, fields, words, acts) {
    this.parts = PARTS.map((part) => {
      const note = element("span", { class: "desk-note" });
      const body = element("div", { class: "desk-part" });
      const details = element("details", { class: "desk-quiet", "data-part": part },
        element("summary", {}, words.say(`part.${part}`), " ", note), body);
      details.addEventListener("toggle", () => this.open(part));
      box.append(details);
      return { part, note, details, panel: new Panel(body, fields, words, acts, "record") };
    });
    this.acts = acts;
  }

  open(part) {
    const one = this.parts.find((shown) => shown.part === part);
    if (one.details.open) {
      one.panel.show(`record/${part}`, this.acts.document());
    }
  }

  // Only what is open costs anything.
  show(now) {
    for (const { part, note, details, panel } of this.parts) {
      put(note, noteOf(part, now));
      if (details.open) {
        panel.show(`record/${part}`, now);
      }
    }
  }
}
