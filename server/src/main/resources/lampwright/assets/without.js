// Turns lights without leaving the page: asks for the address that the form or link would have led
// to and puts in place what differs there. Without this the form and the links lead there.
const PATIENCE_MS = 20_000;

const root = document.querySelector("[data-turning]");
const form = root.querySelector("form");
const switches = () => [...root.querySelectorAll("[data-switch]")];

let asked = new AbortController();

// The same address as the server gives: what is off, never what is on.
function address() {
  const query = new URLSearchParams();
  for (const one of switches().filter((of) => !of.checked)) {
    query.append(one.name === "ambient" ? "ambient" : "off", one.name === "ambient" ? "off" : one.value);
  }
  const text = query.toString();
  return root.dataset.turning + (text ? `?${text}` : "");
}

// What had the focus keeps it by its id; what is gone hands it to what tells the new state.
function keepFocus(change) {
  const held = document.activeElement?.id;
  change();
  if (held && document.activeElement?.id !== held) {
    (document.getElementById(held) ?? document.getElementById("without-state")).focus({ preventScroll: true });
  }
}

function put(page) {
  keepFocus(() => {
    for (const part of root.querySelectorAll("[data-part]")) {
      const fresh = page.getElementById(part.id);
      if (fresh && !fresh.isEqualNode(part)) {
        part.className = fresh.className;
        part.replaceChildren(...document.adoptNode(fresh).childNodes);
      }
    }
    for (const one of switches()) {
      one.checked = page.getElementById(one.id).checked;
    }
  });
  const told = [...root.querySelectorAll("#without-state, .without-sides dl > div")];
  document.querySelector("[data-status]").textContent = told.map((of) => of.innerText.replace(/\s+/g, " ")).join(". ");
}

// Whoever turns something where the map is not in sight is brought to what it did.
function bringToMap(isFromRow) {
  const map = document.getElementById("without-map");
  const { top, bottom } = map.getBoundingClientRect();
  if (Math.min(bottom, innerHeight) - Math.max(top, 0) < (bottom - top) / 2) {
    map.scrollIntoView({ block: "start", behavior: "instant" });
    if (isFromRow) {
      document.getElementById("without-state").focus({ preventScroll: true });
    }
  }
}

async function go(where, isFromHistory) {
  asked.abort();
  asked = new AbortController();
  const { signal } = asked;
  root.setAttribute("aria-busy", "true");
  try {
    const answer = await fetch(where, { signal: AbortSignal.any([signal, AbortSignal.timeout(PATIENCE_MS)]) });
    const page = new DOMParser().parseFromString(await answer.text(), "text/html");
    if (!answer.ok || !page.querySelector("[data-turning]")) {
      throw new Error(answer.statusText);
    }
    if (!isFromHistory) {
      history.pushState(null, "", where);
    }
    put(page);
    root.removeAttribute("aria-busy");
    return true;
  } catch {
    // A later turn is on its way already, or the browser says itself what is wrong.
    if (!signal.aborted) {
      location.assign(where);
    }
    return false;
  }
}

for (const one of root.querySelectorAll("[data-unscripted]")) {
  one.hidden = true;
}

form.addEventListener("change", () => go(address()));

form.addEventListener("submit", (event) => {
  event.preventDefault();
  go(address());
});

root.addEventListener("click", async (event) => {
  const link = event.target.closest("a[data-turn]");
  if (!link || event.button !== 0 || event.ctrlKey || event.metaKey || event.shiftKey || event.altKey) {
    return;
  }
  event.preventDefault();
  const isFromRow = link.closest(".without-row") !== null;
  if (await go(link.href)) {
    bringToMap(isFromRow);
  }
});

addEventListener("popstate", () => go(location.href, true));
