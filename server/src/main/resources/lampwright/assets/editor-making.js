// The ways in which a field shows a part of a document and takes what is typed.

import { millimetre } from "./editor-geometry.js";
import { readLength, readMeter, readNumber, writeLength, writeMeter, writeNumber } from "./editor-units.js";

// A field is {id, label, kind, show(document), take(document, text)}: take gives the new document,
// or null for what cannot be read. Kinds: "number", "line", "text", "date", "time", "choice" (with
// options). A group is {title, fields} and may be quiet (it opens when it is wanted, and says a note of
// what is in it); it may have an id where several are alike, and acts: {words, does} or {words, change}.

export class Making {
  // locations are the studio's, each as the place of an occasion says it
  constructor(words, gear, locations = []) {
    this.words = words;
    this.units = words.units;
    this.gear = gear;
    this.locations = locations;
  }

  say(key) {
    return this.words.say(key);
  }

  length(id, label, get, set) {
    return {
      id, label: this.say(label), kind: "number", unit: this.units.lengths === "feet" ? "" : "m",
      show: (document) => {
        const value = get(document);
        return value === undefined ? "" : writeLength(value, this.units);
      },
      take: (document, text) => {
        if (text.trim() === "") {
          return set(document, undefined);
        }
        const metres = readLength(text, this.units);
        return Number.isNaN(metres) ? null : set(document, millimetre(metres));
      },
    };
  }

  number(id, label, unit, get, set, decimals = 3) {
    return {
      id, label: this.say(label), kind: "number", unit,
      show: (document) => {
        const value = get(document);
        return value === undefined ? "" : writeNumber(value, decimals, this.units);
      },
      take: (document, text) => {
        const value = text.trim() === "" ? undefined : readNumber(text);
        return Number.isNaN(value) ? null : set(document, value);
      },
    };
  }

  text(id, label, kind, get, set) {
    return {
      id, label: this.say(label), kind, unit: "",
      show: (document) => get(document) ?? "",
      take: (document, text) => set(document, text.trim() || undefined),
    };
  }

  // One of the studio's, by name; what stands there now is offered too.
  choice(id, label, pieces, none, get, set) {
    return {
      id, label: this.say(label), kind: "choice", unit: "",
      options: (document) => {
        const names = pieces.map((piece) => piece.name);
        const now = get(document)?.name;
        const all = now && !names.includes(now) ? [now, ...names] : names;
        const offered = all.map((name) => ({ value: name, words: name }));
        return none ? [{ value: "", words: this.say(none) }, ...offered] : offered;
      },
      show: (document) => get(document)?.name ?? "",
      take: (document, name) => {
        const now = get(document);
        const piece = pieces.find((one) => one.name === name);
        return name === now?.name ? document : set(document, name === "" ? undefined : piece);
      },
    };
  }

  // Three ordinates of a point; an empty one changes nothing.
  point(id, get, set) {
    const one = (axis) => this.length(
      `${id}-${axis}`, `field.${axis}`,
      (document) => get(document)?.[axis],
      (document, metres) => {
        const now = get(document) ?? { x_m: 0, y_m: 0, z_m: 0 };
        return metres === undefined ? null : set(document, { ...now, [axis]: metres });
      });
    return [one("x_m"), one("y_m"), one("z_m")];
  }

  // One of a few words, such as "metered"; "" stands for nothing said, where that may be.
  oneOf(id, label, values, group, get, set) {
    return {
      id, label: this.say(label), kind: "choice", unit: "",
      options: () => values.map((value) => ({
        value, words: value === "" ? this.say("choice.not_said") : this.say(`${group}.${value}`),
      })),
      show: (document) => get(document) ?? "",
      take: (document, value) => set(document, value === "" ? undefined : value),
    };
  }

  // Yes or no, in the order in which they are offered; "" where neither may have been said.
  flag(id, label, values, get, set) {
    return this.oneOf(id, label, values, "value",
      (document) => ({ true: "yes", false: "no" })[get(document)] ?? "",
      (document, value) => set(document, value === undefined ? undefined : value === "yes"));
  }

  // One of a few words of which one is usual and is not written.
  usually(id, label, usual, values, group, get, set) {
    return this.oneOf(id, label, values, group,
      (document) => get(document) ?? usual,
      (document, value) => set(document, value === usual ? undefined : value));
  }

  // One of the setup's lights, by number and role.
  light(id, label, offered, get, set) {
    return {
      id, label: this.say(label), kind: "choice", unit: "",
      options: (document) => [{ value: "", words: this.say("choice.no_light") }, ...offered(document)
        .map((one) => ({ value: one.id, words: this.words.say("piece.light", one.number, this.words.role(one.role)) }))],
      show: (document) => get(document) ?? "",
      take: (document, value) => set(document, value === "" ? undefined : value),
    };
  }

  meter(get, set) {
    return {
      id: "reading", label: this.say("field.reading"), kind: "number", unit: "",
      hint: this.say("hint.reading"),
      show: (document) => {
        const reading = get(document).reading;
        return reading ? writeMeter(reading, this.units) : "";
      },
      take: (document, text) => {
        if (text.trim() === "") {
          return set(document, undefined);
        }
        const read = readMeter(text);
        const { f_number, tenths, known, ...rest } = get(document).reading ?? {};
        return read && set(document, { ...rest, ...read });
      },
    };
  }
}
