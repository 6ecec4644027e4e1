// What is kept on this phone, for whoever is signed in.

import { button, element } from "./elements.js";
import { forget, room } from "./field-caches.js";
import { canKeep, dataOf } from "./field-keeping.js";
import { all, KEPT, onNews } from "./field-store.js";
import { Waiting } from "./field-waiting.js";
import { Words } from "./field-words.js";

const page = document.querySelector("[data-field]");
const data = dataOf(document);
const words = new Words(data);
const find = (name) => page.querySelector(`[data-${name}]`);

function away() {
  const reason = new URLSearchParams(location.search).get("away");
  if (["page", "sign-in", "sign-out"].includes(reason)) {
    find("away").hidden = false;
    find("away").textContent = words.say(`away.${reason}`);
  }
}

const line = (kept) => element("li", { class: "kept-setup" },
  element("a", { href: `${kept.path}/field` }, kept.title),
  element("p", { class: "known" }, words.say("copy.of", words.time(kept.at), kept.revision)),
  button(words.say("copy.forget"), () => forget(kept.path)));

let shown;

// Only what has changed is put anew: a line that a thumb is on stays where it is.
async function show() {
  const kept = (await all(KEPT)).filter((one) => one.person === data.person && one.list === data.list);
  kept.sort((one, other) => one.title.localeCompare(other.title, data.language));
  const now = JSON.stringify(kept);
  if (now !== shown) {
    shown = now;
    find("kept-list").hidden = kept.length === 0;
    find("kept-list").replaceChildren(...kept.map(line));
  }
  find("nothing").hidden = kept.length > 0;
  find("room").textContent = kept.length > 0 ? words.say("copy.bytes", words.megabytes(await room())) : "";
}

find("plainly").hidden = true;
away();
// It stands above the list, so it comes first.
await new Waiting(find("waiting"), data.person, words).start();
if (canKeep()) {
  onNews(show);
  await show();
} else {
  find("nothing").hidden = false;
  find("nothing").textContent = words.say(isSecureContext ? "copy.cannot" : "copy.insecure");
}
page.dataset.ready = "yes";
