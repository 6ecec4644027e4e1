// What the editor says, in the person's language.

import { bearingDeg, distanceM } from "./editor-geometry.js";
import { inBuildOrder } from "./editor-lights.js";
import { sayLength, writeLength, writeMeter, writeNumber } from "./editor-units.js";

export class Words {
  constructor(data) {
    this.phrases = data.phrases;
    this.units = { language: data.language, lengths: data.lengths, stops: data.stops };
  }

  has(key) {
    return Object.hasOwn(this.phrases, `editor.${key}`);
  }

  say(key, ...parts) {
    const pattern = this.phrases[`editor.${key}`];
    if (pattern === undefined) {
      throw new Error(`No phrase "editor.${key}".`);
    }
    return pattern.replace(/\{(\d)\}/g, (place, number) => parts[number] ?? place);
  }

  count(key, number, ...parts) {
    return this.say(`${key}.${number === 1 ? "one" : "other"}`, number, ...parts);
  }

  role(role) {
    return this.say(`role.${role}`);
  }

  // "2 Fill", "Camera", "Subject: Osk", "Mark: start".
  piece(piece) {
    switch (piece.kind) {
      case "light": return this.say("piece.light", piece.number, this.role(piece.role));
      case "subject": case "mark": case "target": case "surface":
        return this.say(`piece.${piece.kind}`, piece.name);
      default: return this.say(`piece.${piece.kind}`);
    }
  }

  // "2.4 m at 40° camera left, 1.9 m up"
  place(place) {
    const distance = distanceM(place);
    const up = this.say("place.up", sayLength(place.z_m, this.units));
    if (distance < 0.05) {
      return this.say("place.at_hit_mark", up);
    }
    const bearing = Math.round(bearingDeg(place));
    const side = bearing === 0 ? "front" : Math.abs(bearing) === 180 ? "behind" : bearing < 0 ? "left" : "right";
    const away = sayLength(distance, this.units);
    return this.say(`place.${side}`, away, Math.abs(bearing), up);
  }

  // A value of a document as a person reads it.
  value(field, value) {
    if (value === undefined) {
      return this.say("value.none");
    }
    if (Array.isArray(value)) {
      return value.map((item) => this.value(field, item)).join("; ") || this.say("value.none");
    }
    if (typeof value === "object") {
      return this.whole(field, value);
    }
    if (typeof value === "number") {
      return field.endsWith("_m") ? `${writeLength(value, this.units)}${this.units.lengths === "feet" ? "" : " m"}`
        : writeNumber(value, 3, this.units);
    }
    if (typeof value === "boolean") {
      return this.say(`value.${value ? "yes" : "no"}`);
    }
    return this.has(`role.${value}`) && field === "role" ? this.role(value) : value;
  }

  whole(field, value) {
    if ("x_m" in value) {
      return this.place(value);
    }
    if (field === "reading") {
      return `f/${writeMeter(value, this.units)}`;
    }
    if ("role" in value) {
      return `${this.role(value.role)}, ${value.head.name}, ${this.place(value.place)}`;
    }
    if ("name" in value) {
      return value.name;
    }
    const named = Object.entries(value)
      .map(([key, inner]) => this.value(key, inner));
    return named.join(", ");
  }

  // Where a change is: "Light rim-right, place".
  path(path, document) {
    const words = [];
    path.forEach((part, i) => {
      if (part.startsWith("=")) {
        const id = part.slice(1);
        const light = ["lights", "build_order"].includes(path[i - 1])
          && document.lights.find((one) => one.id === id);
        const number = light ? inBuildOrder(document).indexOf(light) + 1 : 0;
        words.push(light ? this.say("piece.light", number, this.role(light.role)) : id);
      } else if (part !== "lights" || path.length === 1) {
        words.push(this.has(`field.${part}`) ? this.say(`field.${part}`) : part.replace(/_/g, " "));
      }
    });
    return words.join(", ");
  }

  // How long ago, in words.
  since(then, now) {
    const minutes = Math.max(0, Math.round((now - then) / 60_000));
    if (minutes === 0) {
      return this.say("since.now");
    }
    if (minutes < 60) {
      return this.count("since.minutes", minutes);
    }
    const hours = Math.round(minutes / 60);
    return hours < 48 ? this.count("since.hours", hours) : this.count("since.days", Math.round(hours / 24));
  }
}
