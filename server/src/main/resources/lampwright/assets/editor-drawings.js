// One drawing of the setup under the hand: shows what the engine drew, lays handles over its pieces,
// and turns what a mouse, finger or keyboard does to them into places in metres.

import { carry } from "./editor-carrying.js";

const VIEWS = {
  plan: { across: "x_m", up: "y_m" },
  side: { across: "y_m", up: "z_m" },
  front: { across: "x_m", up: "z_m" },
};

// A finger that shakes has not dragged yet.
const STILL_PX = 4;
const REACH_PX = 12;

// A thumb's width, where no other handle is near.
const LARGEST_PX = 44;
const SMALLEST_PX = 24;

function share(part, whole) {
  return Math.min(100, Math.max(0, 100 * part / whole));
}

// Only what differs is written: a page that is touched is laid out anew.
function write(target, name, value) {
  if (target.getAttribute(name) !== value) {
    target.setAttribute(name, value);
  }
}

export class Drawing {
  /**
   * @param box the element that it fills
   * @param view "plan", "side" or "front"
   * @param acts what is done: choose(key), place(key, at, {free, reachM, gesture}), turn(key, from,
   *     to, {free, gesture}), key(event, key, view), end()
   */
  constructor(box, view, acts) {
    this.view = view;
    this.axes = VIEWS[view];
    this.acts = acts;
    this.handles = new Map();
    this.held = null;
    this.sheet = document.createElement("div");
    this.sheet.className = "desk-sheet";
    this.layer = document.createElement("div");
    this.layer.className = "desk-handles";
    box.replaceChildren(this.sheet, this.layer);
    box.addEventListener("pointerdown", (event) => this.grasp(event));
    box.addEventListener("pointermove", (event) => this.drag(event));
    box.addEventListener("pointerup", (event) => this.release(event));
    box.addEventListener("pointercancel", (event) => this.release(event));
    this.box = box;
  }

  /**
   * Shows the drawing as the engine made it. While it is held, its sheet lies still: the same metre
   * stays at the same pixel, whatever frame the engine chose.
   *
   * @param pieces {key, place}, as they stand on it
   * @param order the lights' ids as they are built
   */
  show(markup, pieces, order) {
    this.sheet.innerHTML = markup;
    this.svg = this.sheet.querySelector("svg");
    this.svg.removeAttribute("width");
    this.svg.removeAttribute("height");
    const { unitsPerMetre, originX, originY } = this.svg.dataset;
    this.scale = { units: Number(unitsPerMetre), x: Number(originX), y: Number(originY) };
    const seen = this.svg.viewBox.baseVal;
    this.seen = { x: seen.x, y: seen.y, width: seen.width, height: seen.height };
    if (this.held) {
      const grown = this.scale.units / this.held.scale.units;
      this.seen = {
        x: this.scale.x - (this.held.scale.x - this.held.seen.x) * grown,
        y: this.scale.y - (this.held.scale.y - this.held.seen.y) * grown,
        width: this.held.seen.width * grown,
        height: this.held.seen.height * grown,
      };
      const { x, y, width, height } = this.seen;
      this.svg.setAttribute("viewBox", `${x} ${y} ${width} ${height}`);
    }
    this.drawn = new Map(pieces.map((piece) => [piece.key, this.spot(piece.place)]));
    this.order = order;
    // A sheet that is taller than the window could not be worked on as a whole.
    this.box.style.setProperty("--shape", String(this.seen.width / this.seen.height));
  }

  hold() {
    this.held ??= this.scale && { scale: this.scale, seen: this.seen };
  }

  letGo() {
    this.held = null;
  }

  /**
   * Lays a handle over each piece, and takes away those of pieces that are gone.
   *
   * @param pieces {key, kind, place, words}
   * @param chosen the key of the chosen one
   * @param reached whether one comes to them by the keyboard
   */
  lay(pieces, chosen, reached) {
    const gone = new Set(this.handles.keys());
    const sizes = this.sizes(pieces);
    const stops = reached ? this.apart(pieces, chosen) : new Set();
    let before = null;
    for (const piece of pieces) {
      const handle = this.handles.get(piece.key) ?? this.handle(piece.key);
      gone.delete(piece.key);
      write(handle, "class", `handle handle-${piece.kind}`);
      write(handle, "aria-label", piece.words);
      write(handle, "aria-pressed", String(piece.key === chosen));
      write(handle, "tabindex", stops.has(piece.key) ? "0" : "-1");
      const at = this.spot(piece.place);
      carry(this.svg, piece.key, this.drawn.get(piece.key), at, this.order);
      // What lies off the sheet is held at its edge.
      handle.style.left = `${share(at.x - this.seen.x, this.seen.width)}%`;
      handle.style.top = `${share(at.y - this.seen.y, this.seen.height)}%`;
      handle.style.setProperty("--size", `${sizes.get(piece.key)}px`);
      // A handle that has the focus is not moved about in the page: it would lose it.
      if ((before ? before.nextSibling : this.layer.firstChild) !== handle && document.activeElement !== handle) {
        this.layer.insertBefore(handle, before ? before.nextSibling : this.layer.firstChild);
      }
      before = handle;
    }
    gone.forEach((key) => {
      this.handles.get(key).remove();
      this.handles.delete(key);
    });
  }

  // At which handles the keyboard stops: the chosen one, and each that lies apart from all before it.
  // What lies too near is chosen from the list of all pieces, as a finger that misses it does.
  apart(pieces, chosen) {
    const far = this.far();
    const stops = [];
    for (const piece of [...pieces].sort((one, other) => (other.key === chosen) - (one.key === chosen))) {
      if (stops.every((other) => far(piece, other) >= SMALLEST_PX)) {
        stops.push(piece);
      }
    }
    return new Set(stops.map((piece) => piece.key));
  }

  // Tells how large squares over two pieces may be in this view until they touch, in pixels.
  far() {
    const pixel = 1 / this.metresAPixel();
    return (one, other) => pixel * Math.max(
      Math.abs(one.place[this.axes.across] - other.place[this.axes.across]),
      Math.abs(one.place[this.axes.up] - other.place[this.axes.up]));
  }

  // Handles that would lie on one another are smaller. Nothing shrinks under a hand.
  sizes(pieces) {
    if (this.grip?.moved && this.lastSizes && pieces.every((piece) => this.lastSizes.has(piece.key))) {
      return this.lastSizes;
    }
    const far = this.far();
    this.lastSizes = new Map(pieces.map((piece) => {
      const near = Math.min(...pieces.filter((other) => other !== piece).map((other) => far(piece, other)));
      return [piece.key, Math.min(LARGEST_PX, Math.max(SMALLEST_PX, near))];
    }));
    return this.lastSizes;
  }

  // Where handles lie on one another, the one whose middle is nearest.
  nearest(event) {
    let best = null;
    let least = LARGEST_PX / 2;
    for (const [key, handle] of this.handles) {
      const box = handle.getBoundingClientRect();
      const far = Math.hypot(
        box.x + box.width / 2 - event.clientX, box.y + box.height / 2 - event.clientY);
      if (far < least) {
        [best, least] = [key, far];
      }
    }
    return best;
  }

  handle(key) {
    const handle = document.createElement("button");
    handle.type = "button";
    handle.dataset.piece = key;
    handle.addEventListener("focus", () => this.acts.choose(key));
    handle.addEventListener("keydown", (event) => this.acts.key(event, key, this.view));
    handle.addEventListener("blur", () => this.acts.end());
    this.handles.set(key, handle);
    return handle;
  }

  focus(key) {
    this.handles.get(key)?.focus();
  }

  spot(place) {
    return {
      x: this.scale.x + this.scale.units * place[this.axes.across],
      y: this.scale.y - this.scale.units * place[this.axes.up],
    };
  }

  metresAPixel() {
    return this.seen.width / this.scale.units / this.widthPx();
  }

  // While it is held, nothing changes its width; asking the page each time would lay it out anew.
  widthPx() {
    if (!this.held) {
      return this.sheet.getBoundingClientRect().width;
    }
    this.held.widthPx ??= this.sheet.getBoundingClientRect().width;
    return this.held.widthPx;
  }

  // Metres along both axes of the view under a pointer.
  under(event) {
    const box = this.sheet.getBoundingClientRect();
    const x = this.seen.x + (event.clientX - box.left) / box.width * this.seen.width;
    const y = this.seen.y + (event.clientY - box.top) / box.height * this.seen.height;
    return { across: (x - this.scale.x) / this.scale.units, up: (this.scale.y - y) / this.scale.units };
  }

  grasp(event) {
    const key = this.nearest(event) ?? event.target.closest("[data-piece]")?.dataset.piece;
    if (!key || event.button > 0 || !this.handles.has(key)) {
      return;
    }
    event.preventDefault();
    this.handles.get(key).focus({ preventScroll: true });
    this.box.setPointerCapture(event.pointerId);
    this.grip = {
      key, pointer: event.pointerId, x: event.clientX, y: event.clientY, moved: false,
      turns: event.shiftKey, gesture: `drag ${event.timeStamp}`, at: this.under(event),
    };
  }

  drag(event) {
    const grip = this.grip;
    if (!grip || event.pointerId !== grip.pointer) {
      return;
    }
    if (!grip.moved && Math.hypot(event.clientX - grip.x, event.clientY - grip.y) < STILL_PX) {
      return;
    }
    if (!grip.moved) {
      grip.moved = true;
      this.hold();
    }
    const under = this.under(event);
    const how = { free: event.altKey || event.ctrlKey || event.metaKey, gesture: grip.gesture };
    if (grip.turns && this.view === "plan") {
      this.acts.turn(grip.key, { x_m: under.across, y_m: under.up, z_m: 0 }, how);
      return;
    }
    grip.start ??= this.acts.placeOf(grip.key);
    this.acts.place(grip.key, {
      ...grip.start,
      [this.axes.across]: grip.start[this.axes.across] + under.across - grip.at.across,
      [this.axes.up]: grip.start[this.axes.up] + under.up - grip.at.up,
    }, { ...how, reachM: REACH_PX * this.metresAPixel(), view: this.view });
  }

  release(event) {
    if (this.grip && event.pointerId === this.grip.pointer) {
      this.grip = null;
      this.acts.end();
    }
  }

  // A thin line along which something came to rest; null takes it away.
  guide(line) {
    this.sheet.querySelector(".desk-guide")?.remove();
    if (!line || this.view !== "plan" || !this.svg) {
      return;
    }
    const mark = document.createElementNS("http://www.w3.org/2000/svg", "line");
    const [from, to] = [this.spot(line.from), this.spot(line.to)];
    mark.setAttribute("class", "desk-guide");
    mark.setAttribute("x1", from.x);
    mark.setAttribute("y1", from.y);
    mark.setAttribute("x2", to.x);
    mark.setAttribute("y2", to.y);
    this.svg.append(mark);
  }
}
