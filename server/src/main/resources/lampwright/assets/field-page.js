// A setup on location. The page reads well without this; with it the build goes step by step, readings are
// compared, takes are logged, and all of that also without signal.

import { leaveOnlyTo } from "./field-caches.js";
import { Copy } from "./field-copy.js";
import { Day } from "./field-day.js";
import { Engine } from "./field-engine.js";
import { dataOf } from "./field-keeping.js";
import { Now } from "./field-now.js";
import { session } from "./field-outbox.js";
import { Parts } from "./field-parts.js";
import { Steps } from "./field-steps.js";
import { Takes } from "./field-takes.js";
import { Waiting } from "./field-waiting.js";
import { Walk } from "./field-walk.js";
import { Words } from "./field-words.js";

const page = document.querySelector("[data-field]");
const data = dataOf(document);
const words = new Words(data);
const engine = new Engine(data);
const day = new Day(data);

function wrong(sentence) {
  const box = page.querySelector("[data-wrong]");
  box.hidden = false;
  box.textContent = sentence;
}

// A copy is of the person and has the token of the session that it was kept in.
async function renew() {
  const who = await session().catch(() => undefined);
  if (who && who.person !== data.person) {
    await leaveOnlyTo(who.person);
    location.reload();
  } else if (who) {
    document.querySelectorAll("input[name=csrf]").forEach((field) => {
      field.value = who.csrfToken;
    });
  }
}

await day.open().catch(() => undefined);
new Steps(page, day, engine, words, wrong).start();
if (page.querySelector("[data-mark]")) {
  new Walk(page, day, engine, words, wrong).start();
}
new Now(page, data, engine, words, wrong).start();
const waiting = new Waiting(page.querySelector("[data-waiting]"), data.person, words);
if (data.may_log) {
  await new Takes(page, data, day, words, waiting).start();
}
new Parts(page, day).start();
page.dataset.ready = "yes";
await waiting.start();
await new Copy(page.querySelector("[data-copy]"), data, words).start();
await renew();
