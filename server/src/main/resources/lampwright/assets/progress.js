// Shows how far long work is: the server's figures for an import, the browser's own for a file on
// its way. Without this a form sends its file plainly, and a page of an import is looked at again.
const PAUSE_MS = 700;
const AT_WORK = new Set(["checking", "running", "committing"]);

const inPlace = (pattern, first, second) => pattern.replace("{0}", first).replace("{1}", second);

async function follow(box) {
  const bar = box.querySelector("progress");
  const words = box.querySelector("[data-words]");
  const again = document.querySelector("[data-unscripted]");
  if (again) {
    again.hidden = true;
  }
  for (;;) {
    await new Promise((resolve) => setTimeout(resolve, PAUSE_MS));
    let told;
    try {
      const answer = await fetch(box.dataset.progress, { headers: { Accept: "application/json" } });
      if (!answer.ok) {
        break;
      }
      told = await answer.json();
    } catch {
      // Without a connection the last figures stand until there is one.
      continue;
    }
    if (!AT_WORK.has(told.state)) {
      break;
    }
    if (told.steps.total > 0) {
      bar.max = told.steps.total;
      bar.value = told.steps.done;
      words.textContent = inPlace(box.dataset.pattern, told.steps.done, told.steps.total);
    }
  }
  location.reload();
}

// The making of a new index: the same, with its pace.
async function followRebuild(box) {
  const bar = box.querySelector("progress");
  const words = box.querySelector("[data-words]");
  const pace = box.querySelector("[data-pace]");
  const again = document.querySelector("[data-unscripted]");
  again.hidden = true;
  const number = new Intl.NumberFormat(document.documentElement.lang, { maximumFractionDigits: 0 });
  for (;;) {
    await new Promise((resolve) => setTimeout(resolve, PAUSE_MS));
    try {
      const answer = await fetch(box.dataset.rebuild, { headers: { Accept: "application/json" } });
      const { rebuild } = answer.ok ? await answer.json() : {};
      if (!rebuild) {
        break;
      }
      if (rebuild.total > 0) {
        bar.max = rebuild.total;
        bar.value = rebuild.done;
        words.textContent = inPlace(box.dataset.pattern, rebuild.done, rebuild.total);
      }
      if (rebuild.left_s !== undefined) {
        pace.textContent = inPlace(box.dataset.pacePattern, number.format(rebuild.per_second), number.format(rebuild.left_s));
      }
    } catch {
      // Without a connection the last figures stand until there is one.
    }
  }
  location.reload();
}

const megabytes = (bytes) => (bytes / 1e6).toFixed(bytes < 1e7 ? 1 : 0);

function send(form) {
  const box = form.querySelector("[data-upload-progress]");
  const bar = box.querySelector("progress");
  const words = box.querySelector("[data-words]");
  const button = form.querySelector("button:not([type])");
  const request = new XMLHttpRequest();
  const done = () => {
    box.hidden = true;
    button.disabled = false;
  };
  request.upload.addEventListener("progress", (event) => {
    if (event.lengthComputable) {
      bar.value = event.loaded / event.total;
      words.textContent = inPlace(form.dataset.upload, megabytes(event.loaded), megabytes(event.total));
    }
  });
  request.addEventListener("load", () => {
    const page = new DOMParser().parseFromString(request.responseText, "text/html");
    const main = page.querySelector("main");
    if (request.status < 400 || !main) {
      location.assign(request.responseURL);
      return;
    }
    // What was wrong is told by the page that the form would have led to.
    document.querySelector("main").replaceWith(document.adoptNode(main));
    document.querySelector(".errors")?.focus();
    begin();
  });
  request.addEventListener("error", () => {
    done();
    HTMLFormElement.prototype.submit.call(form);
  });
  request.addEventListener("abort", done);
  box.querySelector("[data-stop]").onclick = () => request.abort();
  request.open("POST", form.action);
  request.send(new FormData(form));
  box.hidden = false;
  button.disabled = true;
}

function begin() {
  for (const form of document.querySelectorAll("form[data-upload]")) {
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      send(form);
    });
  }
}

begin();
document.querySelectorAll("[data-progress]").forEach(follow);
document.querySelectorAll("[data-rebuild]").forEach(followRebuild);
