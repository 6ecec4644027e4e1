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
  return all;
}

// What a chosen light can be pulled by besides itself.
export function ends(document, key) {
  const [kind, id] = key.split("/");
  const one = ["light", "target", "aim"].includes(kind) ? lights.light(document, id) : undefined;
  if (!one) {
    return [];
  }
  const target = { key: `target/${id}`, kind: "target", name: one.target.name, place: one.target.at };
  return one.aim ? [target, { key: `aim/${id}`, kind: "aim", name: "", place: one.aim }] : [target];
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

export function withCamera(document, change) {
  return { ...document, camera: change(document.camera ?? {}) };
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

export function remove(document, key) {
  const [kind, id, index] = key.split("/");
  switch (kind) {
    case "light": return lights.remove(document, id);
    case "mark":
      return withSubject(document, id, (one) => ({
        ...one, path: one.path.toSpliced(Number(index), 1),
      }));
    case "subject": return { ...document, subjects: document.subjects.toSpliced(Number(id), 1) };
    default: return document;
  }
}
