// What one does to the lights of a setup document. Pure: each function gives a new document.

import { point, turned } from "./editor-geometry.js";

// Full stops as they are printed: f/1 to f/90.
const MARKS = [1, 1.4, 2, 2.8, 4, 5.6, 8, 11, 16, 22, 32, 45, 64, 90];

export function light(document, id) {
  return document.lights.find((one) => one.id === id);
}

// As the plan numbers them: first those that the build order names.
export function inBuildOrder(document) {
  const order = (document.build_order ?? []).map((step) => step.light).filter(Boolean);
  const rank = (one) => (order.includes(one.id) ? order.indexOf(one.id) : order.length);
  return [...document.lights].sort((one, other) => rank(one) - rank(other));
}

export function withLight(document, id, change) {
  return {
    ...document,
    lights: document.lights.map((one) => (one.id === id ? change(one) : one)),
  };
}

// A reading holds for the place and gear that it was taken with. It stays only where nothing else
// says how bright the light is.
function withoutReading(one) {
  if (one.reading === undefined || one.stops_down === undefined) {
    return one;
  }
  const { reading, ...rest } = one;
  return rest;
}

export function place(document, id, at) {
  return withLight(document, id, (one) => withoutReading({ ...one, place: at }));
}

export function target(document, id, at) {
  return withLight(document, id, (one) =>
    withoutReading({ ...one, target: { ...one.target, at } }));
}

export function aim(document, id, at) {
  return withLight(document, id, (one) => withoutReading({ ...one, aim: at }));
}

export function aimAtTarget(document, id) {
  return withLight(document, id, ({ aim: dropped, ...one }) =>
    dropped === undefined ? one : withoutReading(one));
}

export function aimOf(one) {
  return one.aim ?? one.target.at;
}

// Clockwise as one sees it from above.
export function turn(document, id, degrees) {
  return withLight(document, id, (one) =>
    withoutReading({ ...one, aim: turned(aimOf(one), one.place, degrees) }));
}

// One field that changes what the light gives; undefined takes it out.
export function gear(document, id, field, value) {
  return withLight(document, id, (one) => withoutReading(withField(one, field, value)));
}

export function withField(object, field, value) {
  const { [field]: before, ...rest } = object;
  return value === undefined ? rest : { ...object, [field]: value };
}

// A reading goes along with the dial, and is known by it; with the ambient in it, it cannot.
export function power(document, id, stopsDown) {
  return withLight(document, id, (one) => {
    const moved = { ...one, stops_down: stopsDown };
    if (one.reading === undefined || one.stops_down === undefined) {
      return moved;
    }
    const less = stopsDown - one.stops_down;
    const follows = !one.reading.includes_ambient && turnedReading(one.reading, less);
    return follows ? { ...moved, reading: follows } : withoutReading(moved);
  });
}

function turnedReading(reading, less) {
  const printed = MARKS.findIndex((mark) => Math.abs(mark - reading.f_number) < 0.01);
  if (printed < 0) {
    return null;
  }
  const tenths = Math.round(10 * (printed - less)) + (reading.tenths ?? 0);
  const mark = MARKS[Math.floor(tenths / 10)];
  if (mark === undefined) {
    return null;
  }
  const { tenths: before, ...rest } = reading;
  const after = { ...rest, f_number: mark, known: "set" };
  return tenths % 10 === 0 ? after : { ...after, tenths: tenths % 10 };
}

function freeId(document, wanted) {
  const taken = new Set(document.lights.map((one) => one.id));
  let id = wanted;
  for (let number = 2; taken.has(id); number += 1) {
    id = `${wanted}-${number}`;
  }
  return id;
}

// Where the build order names lights, it names the new one too.
function built(document, id, afterId) {
  const steps = document.build_order ?? [];
  if (!steps.some((step) => step.light)) {
    return document;
  }
  const at = steps.findIndex((step) => step.light === afterId);
  const end = at < 0 ? steps.length : at + 1;
  return { ...document, build_order: steps.toSpliced(end, 0, { light: id }) };
}

// A new fill, on the other side of the camera from the light before it.
export function add(document, head) {
  const like = inBuildOrder(document).at(-1);
  const id = freeId(document, "fill");
  const added = {
    id,
    role: "fill",
    head,
    place: point(-like.place.x_m || 1.5, like.place.y_m || -1.5, like.place.z_m),
    target: like.target,
    stops_down: Math.min(3, head.range_stops ?? 6),
  };
  return { document: built({ ...document, lights: [...document.lights, added] }, id, ""), id };
}

// The same light once more, a step to the right.
export function duplicate(document, id) {
  const one = light(document, id);
  const copy = withoutReading({
    ...one,
    id: freeId(document, id.replace(/-\d+$/, "")),
    place: point(one.place.x_m + 0.5, one.place.y_m, one.place.z_m),
  });
  const lights = document.lights.toSpliced(document.lights.indexOf(one) + 1, 0, copy);
  return { document: built({ ...document, lights }, copy.id, id), id: copy.id };
}

// Takes it out wherever the document names it; the last light stays.
export function remove(document, id) {
  if (document.lights.length === 1) {
    return document;
  }
  const rest = { ...document, lights: document.lights.filter((one) => one.id !== id) };
  if (document.build_order) {
    rest.build_order = document.build_order
      .map((step) => (step.light === id ? withField(step, "light", undefined) : step))
      .filter((step) => step.light || step.what);
  }
  if (document.outcome) {
    rest.outcome = document.outcome.map((note) =>
      note.light === id ? withField(note, "light", undefined) : note);
  }
  return rest;
}

// One place earlier (-1) or later (1) among the lights as they are built.
export function moveInBuild(document, id, by) {
  const lights = inBuildOrder(document).map((one) => one.id);
  const to = lights.indexOf(id) + by;
  if (to < 0 || to >= lights.length) {
    return document;
  }
  const named = new Set((document.build_order ?? []).map((step) => step.light));
  const steps = [
    ...(document.build_order ?? []),
    ...lights.filter((one) => !named.has(one)).map((one) => ({ light: one })),
  ];
  const step = steps.find((one) => one.light === id);
  const others = steps.filter((one) => one !== step);
  const next = others.findIndex((one) => one.light === lights[to]);
  return { ...document, build_order: others.toSpliced(by < 0 ? next : next + 1, 0, step) };
}
