// What a key does to the piece that has the focus. Pure.

const STEP_M = 0.1;
const LARGE_M = 0.5;
const FINE_M = 0.01;
const TURN_DEG = 15;
const FINE_DEG = 1;

const ARROWS = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };
const AXES = { plan: ["x_m", "y_m"], side: ["y_m", "z_m"], front: ["x_m", "z_m"] };

/**
 * @param view that the piece is seen in: "plan", "side" or "front"
 * @returns {by: {x_m?, y_m?, z_m?}} metres to move by, {turn: degrees} clockwise from above,
 *     {remove: true}, or null where the key is none of the editor's
 */
export function act(event, view) {
  if (event.ctrlKey || event.metaKey) {
    return null;
  }
  const step = event.shiftKey ? LARGE_M : event.altKey ? FINE_M : STEP_M;
  if (event.key in ARROWS) {
    const [across, up] = ARROWS[event.key];
    const [first, second] = AXES[view];
    return { by: across !== 0 ? { [first]: across * step } : { [second]: up * step } };
  }
  switch (event.key) {
    case "PageUp": return { by: { z_m: step } };
    case "PageDown": return { by: { z_m: -step } };
    case "r": case "R": case "®": {
      const turn = event.altKey ? FINE_DEG : TURN_DEG;
      return { turn: event.shiftKey ? -turn : turn };
    }
    case "Delete": return { remove: true };
    default: return null;
  }
}

// What holds on the whole page: "undo", "redo", "save", or null.
export function pageAct(event) {
  if (!event.ctrlKey && !event.metaKey) {
    return null;
  }
  const key = event.key.toLowerCase();
  if (key === "s") {
    return "save";
  }
  // A field has an undo of its own for what is typed into it.
  if (event.target.closest?.("textarea, input[type=text], input:not([type])")) {
    return null;
  }
  if (key === "z") {
    return event.shiftKey ? "redo" : "undo";
  }
  return key === "y" ? "redo" : null;
}
