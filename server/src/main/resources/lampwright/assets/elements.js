// Makes and changes elements of a page; the editor and the pages on location share it.

export function element(name, attributes = {}, ...children) {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) {
    if (value !== undefined && value !== false) {
      made.setAttribute(key, value === true ? "" : value);
    }
  }
  made.append(...children.filter((child) => child !== null && child !== undefined && child !== ""));
  return made;
}

export function button(words, act, cssClass = "quiet") {
  const made = element("button", { type: "button", class: cssClass }, words);
  made.addEventListener("click", act);
  return made;
}

// Only what differs is touched, so that nothing flickers and no selection is lost.
export function put(target, text) {
  if (target.textContent !== text) {
    target.textContent = text;
  }
}
