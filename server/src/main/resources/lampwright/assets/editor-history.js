// Undo and redo over documents that never change. Pure: each function gives a new history.

const LONGEST = 300;

export function begin(document) {
  return { past: [], now: document, future: [], gesture: "" };
}

// Puts a document in the place of the current one. All changes of one gesture, such as a drag, are
// undone at once; an empty gesture stands alone.
export function change(history, document, gesture = "") {
  if (document === history.now) {
    return history;
  }
  const goesOn = gesture !== "" && gesture === history.gesture;
  const past = goesOn ? history.past : [...history.past, history.now].slice(-LONGEST);
  return { past, now: document, future: [], gesture };
}

// What comes next is another gesture.
export function settle(history) {
  return history.gesture === "" ? history : { ...history, gesture: "" };
}

export function undo(history) {
  const { past, now, future } = history;
  return past.length === 0
    ? history
    : { past: past.slice(0, -1), now: past.at(-1), future: [now, ...future], gesture: "" };
}

export function redo(history) {
  const { past, now, future } = history;
  return future.length === 0
    ? history
    : { past: [...past, now], now: future[0], future: future.slice(1), gesture: "" };
}
