// What is pulled goes along under the hand at once: its group on the drawing is moved as it is, and
// the line to its target follows. What would no longer be true, its distance and the lines of level,
// is hidden. The engine draws it anew as soon as the hand rests.

// A distance is written beside the middle of its line, in the drawing's units.
const BESIDE = 30;

const LINE = /^M(-?[\d.]+) (-?[\d.]+)L(-?[\d.]+) (-?[\d.]+)$/;

function groupOf(svg, key) {
  return svg.querySelector(`[data-piece="${CSS.escape(key)}"]`);
}

function moved(element, by) {
  if (element && (by.x !== 0 || by.y !== 0)) {
    element.setAttribute("transform", `translate(${by.x} ${by.y})`);
  } else {
    element?.removeAttribute("transform");
  }
}

/**
 * One end of a straight line, moved.
 *
 * @param path "M1 2L3 4"; what is no such line is given back as it is
 * @param end 0 for where it begins, 1 for where it ends
 */
export function withEndMoved(path, end, by) {
  const parts = LINE.exec(path);
  if (!parts) {
    return path;
  }
  const at = parts.slice(1).map(Number);
  at[2 * end] += by.x;
  at[2 * end + 1] += by.y;
  return `M${at[0]} ${at[1]}L${at[2]} ${at[3]}`;
}

function hideDistance(svg, path) {
  const parts = LINE.exec(path)?.slice(1).map(Number);
  if (!parts) {
    return;
  }
  const far = (label) => Math.hypot(
    label.getAttribute("x") - (parts[0] + parts[2]) / 2, label.getAttribute("y") - (parts[1] + parts[3]) / 2);
  const [nearest] = [...svg.querySelectorAll(".plan-label.plan-figure")].sort((one, other) => far(one) - far(other));
  if (nearest && far(nearest) < BESIDE) {
    nearest.setAttribute("visibility", "hidden");
  }
}

function line(svg, id, end, by) {
  const path = groupOf(svg, `target/${id}`)?.querySelector(".plan-aim");
  if (path) {
    if (!path.dataset.drawn) {
      path.dataset.drawn = path.getAttribute("d");
      hideDistance(svg, path.dataset.drawn);
    }
    path.setAttribute("d", withEndMoved(path.dataset.drawn, end, by));
  }
}

// The wedges of light lie below everything, one a light in the order in which they are built.
function wedge(svg, number, count, by) {
  for (const name of [".plan-spread", ".plan-hatch"]) {
    const all = svg.querySelectorAll(name);
    if (all.length === count) {
      moved(all[number], by);
    }
  }
}

/**
 * @param svg the drawing
 * @param from where the piece was drawn, in the drawing's units; undefined where it was not
 * @param to where it is now
 * @param order the lights' ids as they are built
 */
export function carry(svg, key, from, to, order) {
  if (!from) {
    return;
  }
  const by = { x: to.x - from.x, y: to.y - from.y };
  const isStill = Math.abs(by.x) < 0.01 && Math.abs(by.y) < 0.01;
  const carried = new Set((svg.dataset.carried ?? "").split(" "));
  if (isStill && !carried.has(key)) {
    return;
  }
  svg.dataset.carried = [...carried.add(key)].join(" ");
  svg.classList.add("is-carried");
  const [kind, id] = key.split("/");
  if (kind === "target") {
    line(svg, id, 1, by);
  } else {
    moved(groupOf(svg, key), by);
  }
  if (kind === "light") {
    line(svg, id, 0, by);
    wedge(svg, order.indexOf(id), order.length, by);
  }
}
