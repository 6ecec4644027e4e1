// Puts two changes of one document together: theirs and mine, both made from the same base. Pure.
//
// What only one of them changed is taken over; what both changed alike too; where they differ,
// somebody has to choose. Objects are taken field by field, but what belongs together stays whole:
// a place, a head, a reading. Lists go by what their items are called (a light's id, a step's light,
// a name), else whole. A path is a list of fields and of items' names, "lights/=rim/place".

import { same } from "./editor-document.js";

const WHOLE = new Set(["head", "modifier", "gels", "output", "reading", "stand", "body", "lens"]);

// What a reading was taken with: it does not outlive a change of these by the other side.
const READ_WITH = ["place", "aim", "target", "head", "heads", "modifier", "gels", "output", "stops_down"];

function isObject(value) {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function isWhole(path, value) {
  return "x_m" in value || WHOLE.has(path.at(-1));
}

function nameOf(item) {
  if (typeof item === "string") {
    return `=${item}`;
  }
  if (!isObject(item)) {
    return undefined;
  }
  const name = item.id ?? item.light ?? item.name ?? item.what;
  return name === undefined ? undefined : `=${name}`;
}

// The items by name; null where they cannot be told apart.
function named(list) {
  const items = new Map();
  for (const item of list) {
    const name = nameOf(item);
    if (name === undefined || items.has(name)) {
      return null;
    }
    items.set(name, item);
  }
  return items;
}

class Merge {
  constructor(choices) {
    this.choices = choices;
    this.changes = [];
  }

  // Notes what becomes of one place, and gives it.
  note(path, base, mine, theirs, by) {
    const name = path.join("/");
    const chosen = by === "conflict" ? this.choices[name] : by;
    const merged = chosen === "theirs" ? theirs : mine;
    this.changes.push({ path, name, base, mine, theirs, merged, by, isOpen: by === "conflict" && !chosen });
    return merged;
  }

  value(path, base, mine, theirs) {
    if (same(mine, theirs)) {
      return same(base, mine) ? mine : this.note(path, base, mine, theirs, "both");
    }
    const values = [base, mine, theirs];
    if (values.every(isObject) && !isWhole(path, mine)) {
      return this.fields(path, base, mine, theirs);
    }
    const lists = values.map((value) => value ?? []);
    if (lists.every(Array.isArray) && !WHOLE.has(path.at(-1))) {
      const items = lists.map(named);
      if (items.every((one) => one !== null)) {
        return this.items(path, lists, items);
      }
    }
    if (same(base, mine)) {
      return this.note(path, base, mine, theirs, "theirs");
    }
    return this.note(path, base, mine, theirs, same(base, theirs) ? "mine" : "conflict");
  }

  fields(path, base, mine, theirs) {
    const merged = {};
    for (const key of new Set([...Object.keys(mine), ...Object.keys(theirs), ...Object.keys(base)])) {
      const both = this.readingIsTorn(key, base, mine, theirs);
      const at = [...path, key];
      const value = both
        ? this.note(at, base[key], mine[key], theirs[key], "conflict")
        : this.value(at, base[key], mine[key], theirs[key]);
      if (value !== undefined) {
        merged[key] = value;
      }
    }
    return merged;
  }

  // One side metered a light, the other changed what was metered.
  readingIsTorn(key, base, mine, theirs) {
    if (key !== "reading" || !("place" in mine) || same(mine.reading, theirs.reading)) {
      return false;
    }
    const isOther = (side) => READ_WITH.some((field) => !same(base[field], side[field]));
    return same(base.reading, mine.reading) ? isOther(mine) : same(base.reading, theirs.reading) && isOther(theirs);
  }

  items(path, [base, mine, theirs], [ofBase, ofMine, ofTheirs]) {
    const order = this.order(base, mine, theirs);
    const merged = [];
    for (const name of order) {
      const value = this.value(
        [...path, name], ofBase.get(name), ofMine.get(name), ofTheirs.get(name));
      if (value !== undefined) {
        merged.push(value);
      }
    }
    return merged;
  }

  // Mine where I changed the order, else theirs; what only the other has comes after what it follows.
  order(base, mine, theirs) {
    const names = [base, mine, theirs].map((list) => list.map(nameOf));
    const [ofBase, ofMine, ofTheirs] = names;
    const kept = ofMine.filter((name) => ofBase.includes(name));
    const isMine = !same(kept, ofBase.filter((name) => kept.includes(name)));
    const order = [...(isMine ? ofMine : ofTheirs)];
    const others = isMine ? ofTheirs : ofMine;
    others.forEach((name, i) => {
      if (!order.includes(name)) {
        order.splice(i === 0 ? 0 : order.indexOf(others[i - 1]) + 1, 0, name);
      }
    });
    return order;
  }
}

// A light that one side took out and the other still names in an order or a note.
function whole(document) {
  const ids = new Set((document.lights ?? []).map((light) => light.id));
  const sound = { ...document };
  for (const field of ["build_order", "outcome"]) {
    if (document[field]) {
      sound[field] = document[field]
        .map(({ light, ...rest }) => (light === undefined || ids.has(light) ? { light, ...rest } : rest))
        .map((step) => Object.fromEntries(Object.entries(step).filter((entry) => entry[1] !== undefined)))
        .filter((step) => step.light || step.what || step.text);
    }
  }
  return sound;
}

/**
 * @param choices by the name of a change that is in conflict: "mine" or "theirs"
 * @returns document, with mine where nothing was chosen yet; changes, each with path, name, base,
 *     mine, theirs, merged (undefined for what is not there) and by: "mine", "theirs", "both" or
 *     "conflict"; isOpen says that it is still to be chosen
 */
export function merge(base, mine, theirs, choices = {}) {
  const merging = new Merge(choices);
  const document = merging.value([], base, mine, theirs);
  return { document: whole(document), changes: merging.changes };
}
