// A setup document as the pieces that one can take hold of. Keys are the drawings' own: "light/ID",
// "target/ID", "aim/ID", "subject/0", "mark/0/1", "camera". Pure.

import { point, turned, wrapped } from "./editor-geometry.js";
import * as lights from "./editor-lights.js";

export function same(one, other) {
  if (one === other) {
    return true;
  }
  if (typeof one !== "object" || typeof other !== "object" || !one || !other) {
    return false;
  }
  if (Array.isArray(one) !== Array.isArray(other)) {
    return false;
  }
  const keys = Object.keys(one);
  return keys.length === Object.keys(other).length
    && keys.every((key) => Object.hasOwn(other, key) && same(one[key], other[key]));
}

// Every piece with its place, in the order in which one goes through them.
export function pieces(document) {
  const all = lights.inBuildOrder(document).map((one, i) => ({
    key: `light/${one.id}`, kind: "light", number: i + 1, role: one.role, place: one.place,
  }));
  if (document.camera?.place) {
    all.push({ key: "camera", kind: "camera", place: document.camera.place });
  }
  (document.subjects ?? []).forEach((subject, i) => {
    all.push({ key: `subject/${i}`, kind: "subject", name: subject.name, place: subject.place });
    (subject.path ?? []).forEach((mark, j) => {
      all.push({ key: `mark/${i}/${j}`, kind: "mark", name: mark.name, place: mark.at });
    });
  });
  (document.surfaces ?? []).forEach((surface, i) => {
    all.push({ key: `surface/${i}`, kind: "surface", name: surface.name, place: middle(surface) });
  });
  return all;
}

function middle({ from, to }) {
  return point((from.x_m + to.x_m) / 2, (from.y_m + to.y_m) / 2, (from.z_m + to.z_m) / 2);
}

// What a chosen light or surface can be pulled by besides itself.
export function ends(document, key) {
  const [kind, id] = key.split("/");
  if (["surface", "from", "to"].includes(kind)) {
    const surface = document.surfaces?.[id];
    return surface
      ? ["from", "to"].map((end) => ({ key: `${end}/${id}`, kind: end, name: "", place: surface[end] }))
      : [];
  }
  const one = ["light", "target", "aim"].includes(kind) ? lights.light(document, id) : undefined;
  if (!one) {
    return [];
  }
  const target = { key: `target/${id}`, kind: "target", name: one.target.name, place: one.target.at };
  return one.aim ? [target, { key: `aim/${id}`, kind: "aim", name: "", place: one.aim }] : [target];
}

// All that a drawing may show, the ends of every light among it.
export function everything(document) {
  return [...pieces(document), ...document.lights.flatMap((one) => ends(document, `light/${one.id}`))];
}

export function find(document, key) {
  return [...pieces(document), ...ends(document, key)].find((piece) => piece.key === key);
}

function withItem(list, index, change) {
  return list.map((item, i) => (i === Number(index) ? change(item) : item));
}

export function withSubject(document, index, change) {
  return { ...document, subjects: withItem(document.subjects, index, change) };
}

export function withMark(document, subject, index, change) {
  return withSubject(document, subject, (one) => ({ ...one, path: withItem(one.path, index, change) }));
}

export function withSurface(document, index, change) {
  return { ...document, surfaces: withItem(document.surfaces, index, change) };
}

export function withTarget(document, id, field, value) {
  return lights.withLight(document, id, (one) => ({
    ...one, target: lights.withField(one.target, field, value),
  }));
}

export function withCamera(document, change) {
  return { ...document, camera: change(document.camera ?? {}) };
}

function shifted(surface, at) {
  const was = middle(surface);
  const by = (end) => point(
    end.x_m + at.x_m - was.x_m, end.y_m + at.y_m - was.y_m, end.z_m + at.z_m - was.z_m);
  return { ...surface, from: by(surface.from), to: by(surface.to) };
}

export function move(document, key, at) {
  const [kind, id, index] = key.split("/");
  switch (kind) {
    case "light": return lights.place(document, id, at);
    case "target": return lights.target(document, id, at);
    case "aim": return lights.aim(document, id, at);
    case "subject": return withSubject(document, id, (one) => ({ ...one, place: at }));
    case "mark": return withMark(document, id, index, (mark) => ({ ...mark, at }));
    case "camera": return withCamera(document, (camera) => ({ ...camera, place: at }));
    case "surface": return withSurface(document, id, (one) => shifted(one, at));
    case "from": case "to": return withSurface(document, id, (one) => ({ ...one, [kind]: at }));
    default: return document;
  }
}

// Which way it looks: of a light and the camera the way to its aim, of a subject its face; clockwise
// from away from the camera. Undefined for what looks nowhere.
export function looksAt(document, key) {
  const [kind, id] = key.split("/");
  if (kind === "light") {
    const one = lights.light(document, id);
    return { from: one.place, to: lights.aimOf(one) };
  }
  if (kind === "camera" && document.camera?.aim) {
    return { from: document.camera.place, to: document.camera.aim };
  }
  if (kind === "subject") {
    const { place, facing_deg: facing = 0 } = document.subjects[id];
    const ahead = point(place.x_m, place.y_m - 1, place.z_m);
    return { from: place, to: turned(ahead, place, -facing) };
  }
  return undefined;
}

// Clockwise as one sees it from above.
export function turn(document, key, degrees) {
  const [kind, id] = key.split("/");
  switch (kind) {
    case "light": return lights.turn(document, id, degrees);
    case "subject":
      return withSubject(document, id, (one) => ({
        ...one, facing_deg: wrapped((one.facing_deg ?? 0) - degrees),
      }));
    case "surface":
      return withSurface(document, id, (one) => ({
        ...one, from: turned(one.from, middle(one), degrees), to: turned(one.to, middle(one), degrees),
      }));
    case "camera":
      return document.camera?.aim && document.camera.place
        ? withCamera(document, (camera) => ({
          ...camera, aim: turned(camera.aim, camera.place, degrees),
        }))
        : document;
    default: return document;
  }
}

// What a piece may line up with while it is moved; see editor-snapping.js.
export function neighbours(document, key) {
  const [kind, id] = key.split("/");
  const subjects = (document.subjects ?? []).filter((one, i) => key !== `subject/${i}`);
  if (kind !== "light") {
    return { subjects, distances: [] };
  }
  const target = lights.light(document, id).target.at;
  const distances = document.lights
    .filter((one) => one.id !== id && same(one.target.at, target))
    .map((one) => Math.hypot(
      one.place.x_m - target.x_m, one.place.y_m - target.y_m, one.place.z_m - target.z_m));
  return { subjects, target, distances };
}

// A mark a step before the last one, or before the subject itself.
export function addMark(document, index, name) {
  const subject = document.subjects[index];
  const path = subject.path ?? [];
  const last = path.at(-1)?.at ?? subject.place;
  const mark = { name, at: point(last.x_m + 0.5, last.y_m, last.z_m) };
  return {
    document: withSubject(document, index, (one) => ({ ...one, path: [...path, mark] })),
    key: `mark/${index}/${path.length}`,
  };
}

export function addSubject(document, name) {
  const subjects = document.subjects ?? [];
  const place = point(0, 0, 0);
  return {
    document: { ...document, subjects: [...subjects, { name, place, height_m: 1.7 }] },
    key: `subject/${subjects.length}`,
  };
}

// A wall of the usual height behind the subject. Common practice, no source.
export function addSurface(document, name) {
  const surfaces = document.surfaces ?? [];
  const surface = { name, from: point(-1.5, 2.5, 0), to: point(1.5, 2.5, 0), height_m: 2.5 };
  return { document: { ...document, surfaces: [...surfaces, surface] }, key: `surface/${surfaces.length}` };
}

export function addCamera(document) {
  const camera = { place: point(0, -4, 1.5), aim: point(0, 0, 1.3), ...document.camera };
  return { document: { ...document, camera }, key: "camera" };
}

// One place earlier (-1) or later (1) on the path.
export function moveMark(document, index, mark, by) {
  const { path } = document.subjects[index];
  const to = Number(mark) + by;
  if (to < 0 || to >= path.length) {
    return { document, key: `mark/${index}/${mark}` };
  }
  const rest = path.toSpliced(Number(mark), 1).toSpliced(to, 0, path[mark]);
  return { document: withSubject(document, index, (one) => ({ ...one, path: rest })), key: `mark/${index}/${to}` };
}

export function remove(document, key) {
  const [kind, id, index] = key.split("/");
  switch (kind) {
    case "light": return lights.remove(document, id);
    case "mark":
      return withSubject(document, id, (one) => ({
        ...one, path: one.path.toSpliced(Number(index), 1),
      }));
    case "subject": return { ...document, subjects: document.subjects.toSpliced(Number(id), 1) };
    case "surface": return { ...document, surfaces: document.surfaces.toSpliced(Number(id), 1) };
    case "camera": return lights.withField(document, "camera", undefined);
    default: return document;
  }
}
