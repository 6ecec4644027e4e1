// The fields of what is chosen, to be typed into: what they show, and what they make of a document.

import * as doc from "./editor-document.js";
import { atBearing, bearingDeg, distanceM, millimetre } from "./editor-geometry.js";
import * as lights from "./editor-lights.js";
import { readLength, readMeter, readNumber, writeLength, writeMeter, writeNumber } from "./editor-units.js";

// A field is {id, label, kind, show(document), take(document, text)}: take gives the new document,
// or null for what cannot be read. Kinds: "number", "line", "text", "choice" (with options).

export class Fields {
  constructor(words, gear) {
    this.words = words;
    this.units = words.units;
    this.gear = gear;
  }

  // The groups of fields of a piece: {title, fields, open}.
  of(key, document) {
    const [kind, id, index] = key.split("/");
    switch (kind) {
      case "light": case "target": case "aim": return this.ofLight(id, document);
      case "camera": return this.ofCamera();
      case "subject": return this.ofSubject(id);
      case "mark": return this.ofMark(id, index);
      default: return this.ofExposure();
    }
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

  ofLight(id, document) {
    const get = (now) => lights.light(now, id);
    const field = (name) => (now, value) =>
      lights.withLight(now, id, (one) => lights.withField(one, name, value));
    const place = (now, at) => lights.place(now, id, at);
    const polar = (now, distance, bearing) =>
      place(now, atBearing(distance, bearing, get(now).place.z_m));
    const kept = (now, value, set) => (value === undefined ? null : set(value));
    const aimed = get(document).aim !== undefined;
    return [
      { title: "group.place", fields: this.point("place", (now) => get(now).place, place) },
      {
        title: "group.polar",
        fields: [
          this.length("distance", "field.distance", (now) => distanceM(get(now).place),
            (now, value) => kept(now, value, (metres) => polar(now, metres, bearingDeg(get(now).place)))),
          this.number("bearing", "field.bearing", "°", (now) => bearingDeg(get(now).place),
            (now, value) => kept(now, value, (degrees) => polar(now, distanceM(get(now).place), degrees)), 1),
        ],
      },
      {
        title: "group.light",
        fields: [
          this.role(get, field("role")),
          this.number("power", "field.stops_down", this.say("unit.stops"), (now) => get(now).stops_down,
            (now, value) => (value === undefined ? field("stops_down")(now, value) : lights.power(now, id, value))),
          this.meter(get, field("reading")),
        ],
      },
      {
        title: "group.gear",
        fields: [
          this.choice("head", "field.head", this.gear.head, "", (now) => get(now).head,
            (now, head) => (head ? lights.gear(now, id, "head", head) : now)),
          this.choice("modifier", "field.modifier", this.gear.modifier, "choice.no_modifier",
            (now) => get(now).modifier, (now, modifier) => lights.gear(now, id, "modifier", modifier)),
          this.choice("gel", "field.gel", this.gear.gel, "choice.no_gel", (now) => get(now).gels?.[0],
            (now, gel) => lights.gear(now, id, "gels", gel && [gel])),
          this.number("heads", "field.heads", "", (now) => get(now).heads ?? 1,
            (now, value) => lights.gear(now, id, "heads", value === 1 ? undefined : value), 0),
        ],
      },
      {
        title: "group.target",
        fields: [
          this.text("target-name", "field.name", "line", (now) => get(now).target.name,
            (now, name) => kept(now, name, () => lights.withLight(now, id, (one) => ({
              ...one, target: { ...one.target, name },
            })))),
          ...this.point("target", (now) => get(now).target.at, (now, at) => lights.target(now, id, at)),
        ],
      },
      {
        title: "group.aim",
        fields: this.point(
          "aim", (now) => lights.aimOf(get(now)), (now, at) => lights.aim(now, id, at)),
        act: aimed ? { words: "act.aim_at_target", does: "aimAtTarget" } : undefined,
      },
      { title: "group.reason", fields: [this.text("reason", "field.reason", "text", (now) => get(now).reason, field("reason"))] },
    ];
  }

  role(get, set) {
    const roles = ["key", "fill", "back", "rim", "kicker", "hair", "background", "accent"];
    return {
      id: "role", label: this.say("field.role"), kind: "choice", unit: "",
      options: () => roles.map((role) => ({ value: role, words: this.words.role(role) })),
      show: (document) => get(document).role,
      take: (document, role) => set(document, role),
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

  ofCamera() {
    const get = (now) => now.camera ?? {};
    const field = (name) => (now, value) =>
      doc.withCamera(now, (camera) => lights.withField(camera, name, value));
    return [
      { title: "group.place", fields: this.point("place", (now) => get(now).place, field("place")) },
      { title: "group.camera_aim", fields: this.point("aim", (now) => get(now).aim, field("aim")) },
      {
        title: "group.camera",
        fields: [
          this.choice("body", "field.body", this.gear.body, "choice.no_body", (now) => get(now).body, field("body")),
          this.choice("lens", "field.lens", this.gear.lens, "choice.no_lens", (now) => get(now).lens, field("lens")),
          this.length("focus", "field.focus_distance_m", (now) => get(now).focus_distance_m, field("focus_distance_m")),
          this.number("true-bearing", "field.bearing_deg", "°", (now) => get(now).bearing_deg, field("bearing_deg"), 1),
        ],
      },
    ];
  }

  ofSubject(index) {
    const get = (now) => now.subjects[index];
    const field = (name) => (now, value) =>
      doc.withSubject(now, index, (one) => lights.withField(one, name, value));
    return [
      {
        title: "group.subject",
        fields: [
          this.text("name", "field.name", "line", (now) => get(now).name,
            (now, name) => (name === undefined ? null : field("name")(now, name))),
          this.number("facing", "field.facing_deg", "°", (now) => get(now).facing_deg ?? 0, field("facing_deg"), 1),
          this.length("height", "field.height_m", (now) => get(now).height_m, field("height_m")),
          this.number("speed", "field.speed_m_per_s", "m/s", (now) => get(now).speed_m_per_s, field("speed_m_per_s"), 2),
        ],
      },
      {
        title: "group.place",
        fields: this.point("place", (now) => get(now).place, (now, at) => doc.move(now, `subject/${index}`, at)),
      },
    ];
  }

  ofMark(subject, index) {
    const get = (now) => now.subjects[subject].path[index];
    const field = (name) => (now, value) =>
      doc.withMark(now, subject, index, (mark) => lights.withField(mark, name, value));
    return [
      {
        title: "group.mark",
        fields: [
          this.text("name", "field.name", "line", (now) => get(now).name,
            (now, name) => (name === undefined ? null : field("name")(now, name))),
          this.text("cue", "field.cue", "text", (now) => get(now).cue, field("cue")),
        ],
      },
      { title: "group.place", fields: this.point("place", (now) => get(now).at, field("at")) },
    ];
  }

  ofExposure() {
    const field = (name) => (now, value) =>
      ({ ...now, exposure: lights.withField(now.exposure, name, value) });
    const needed = (name) => (now, value) => (value === undefined ? null : field(name)(now, value));
    const ambient = (now, value) => lights.withField(
      now, "ambient", value === undefined ? undefined : { ...now.ambient, ev100: value });
    return [{
      title: "group.exposure",
      fields: [
        this.number("aperture", "field.f_number", "", (now) => now.exposure.f_number, needed("f_number"), 1),
        this.text("time", "field.time", "line", (now) => now.exposure.time, needed("time")),
        this.number("iso", "field.iso", "", (now) => now.exposure.iso, needed("iso"), 0),
        this.number("density", "field.neutral_density_stops", this.say("unit.stops"),
          (now) => now.exposure.neutral_density_stops ?? 0, field("neutral_density_stops"), 1),
        this.number("white-balance", "field.white_balance_k", "K",
          (now) => now.exposure.white_balance_k, field("white_balance_k"), 0),
        this.number("ambient", "field.ev100", "EV", (now) => now.ambient?.ev100, ambient, 1),
      ],
    }];
  }
}
