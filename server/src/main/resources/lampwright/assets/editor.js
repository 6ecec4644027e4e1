// The editor of a setup: the plan is where one works, and the figures follow each move. This module
// builds the desk out of its parts; each part is a module of its own.

import { Desk } from "./editor-desk.js";
import { Words } from "./editor-words.js";

const page = document.querySelector("[data-editor]");

// Without the engine nothing could follow: then the plain form stays as it is.
async function open() {
  const data = JSON.parse(page.dataset.editor);
  const engine = await import("./engine.js");
  const desk = new Desk(page, data, new Words(data), engine.answer);
  desk.open();
}

open().catch((error) => {
  page.querySelector("[data-no-engine]").hidden = false;
  throw error;
});
