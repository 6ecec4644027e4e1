// Logs takes without losing one: a form goes out while the page stays, what was typed is kept in this
// tab until the server has it, and a lost connection is said beside the buttons. Without this the
// form is sent plainly.
const PATIENCE_MS = 20_000;
const NOT_KEPT = new Set(["csrf", "setup-revision", "offset"]);

const form = () => document.querySelector("form[data-take]");
const name = () => `take ${location.pathname}`;

function tell(words) {
  const state = document.querySelector("[data-state]");
  if (state) {
    state.textContent = words;
  }
}

function keep(isSent) {
  const fields = [...new FormData(form())].filter(([field, value]) => !NOT_KEPT.has(field) && value !== "");
  try {
    sessionStorage.setItem(name(), JSON.stringify({ fields, isSent }));
  } catch {
    // A tab that may keep nothing still has its form.
  }
}

function forget() {
  try {
    sessionStorage.removeItem(name());
  } catch {
    // Nothing was kept.
  }
}

function kept() {
  try {
    return JSON.parse(sessionStorage.getItem(name()) ?? "null");
  } catch {
    return null;
  }
}

function fill(field, value) {
  for (const control of form().elements) {
    if (control.name !== field) {
      continue;
    }
    if (control.type === "radio" || control.type === "checkbox") {
      control.checked = control.checked || control.value === value;
    } else if (control.type !== "submit") {
      control.value = value;
    }
  }
}

// What a tab had typed when it was closed or loaded again.
function restore() {
  const draft = form() && kept();
  if (!draft || document.querySelector(".errors")) {
    return;
  }
  for (const [field, value] of draft.fields) {
    // A key that may have reached the server makes the same take again, not a second one.
    if (field !== "client-key" || draft.isSent) {
      fill(field, value);
    }
  }
  form().querySelector("details").open = form().elements.at.value !== "";
  if (draft.isSent) {
    tell(form().dataset.restored);
  }
}

// By the clocks of the place, as the field says a time.
function nowThere() {
  const [, sign, hours, minutes] = /^([+-])(\d\d):(\d\d)/.exec(form().elements.offset.value) ?? [];
  const ahead = sign ? (sign === "-" ? -1 : 1) * (Number(hours) * 60 + Number(minutes)) : 0;
  return new Date(Date.now() + ahead * 60_000).toISOString().slice(0, 16);
}

function fail(words, at) {
  // Sent again later, it is still of the time of the first tap.
  if (form().elements.at.value === "") {
    form().elements.at.value = at;
  }
  keep(true);
  tell(words);
}

function show(page) {
  document.querySelector("main").replaceWith(document.adoptNode(page.querySelector("main")));
  const errors = document.querySelector(".errors");
  if (errors) {
    errors.focus();
    return;
  }
  forget();
  scrollTo({ top: 0, behavior: "instant" });
  document.querySelector("[data-last=true]")?.focus({ preventScroll: true });
}

let isBusy = false;

async function send(sent, button) {
  const { away, refused, sending } = sent.dataset;
  const at = nowThere();
  isBusy = true;
  keep(true);
  tell(sending);
  try {
    const answer = await fetch(sent.action, {
      method: "POST",
      body: new URLSearchParams(new FormData(sent, button)),
      signal: AbortSignal.timeout(PATIENCE_MS),
    });
    const page = new DOMParser().parseFromString(await answer.text(), "text/html");
    if (page.querySelector("form[data-take]")) {
      show(page);
    } else {
      fail(refused, at);
    }
  } catch {
    fail(away, at);
  } finally {
    isBusy = false;
  }
}

document.addEventListener("submit", (event) => {
  if (event.target.matches("form[data-take]")) {
    event.preventDefault();
    if (!isBusy) {
      send(event.target, event.submitter);
    }
  }
});

document.addEventListener("input", (event) => {
  if (event.target.form?.matches("form[data-take]")) {
    keep(kept()?.isSent ?? false);
  }
});

restore();
