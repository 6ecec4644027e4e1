// Keeps what is ticked off a packing list in this browser, for as long as the day is asked for in the same
// address. Without it the boxes are ticked all the same, and forgotten with the page.

const list = document.querySelector("[data-ticks]");
const name = `pack ${location.pathname}${location.search}`;

function ticked() {
  try {
    return new Set(JSON.parse(localStorage.getItem(name) ?? "[]"));
  } catch {
    return new Set();
  }
}

function keep() {
  const keys = [...list.querySelectorAll("[data-tick]:checked")].map((box) => box.dataset.tick);
  try {
    localStorage.setItem(name, JSON.stringify(keys));
  } catch {
    // A browser that may keep nothing still shows what is ticked.
  }
}

const known = ticked();
list.querySelectorAll("[data-tick]").forEach((box) => {
  box.checked = known.has(box.dataset.tick);
});
list.addEventListener("change", (event) => {
  if (event.target.matches("[data-tick]")) {
    keep();
  }
});
