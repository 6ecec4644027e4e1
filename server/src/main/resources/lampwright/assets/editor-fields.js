// The fields of what is chosen, to be typed into: what they show, and what they make of a document.

import * as doc from "./editor-document.js";
import { ofLight } from "./editor-light-fields.js";
import * as lights from "./editor-lights.js";
import { Making } from "./editor-making.js";
import { ofRecord } from "./editor-record.js";

export class Fields extends Making {
  // The groups of fields of a piece, or of a part of the record: "record/cautions".
  of(key, document) {
    const [kind, id, index] = key.split("/");
    switch (kind) {
      case "light": case "target": case "aim": return ofLight(this, id, document);
      case "camera": return this.ofCamera();
      case "subject": return this.ofSubject(id);
      case "mark": return this.ofMark(id, index);
      case "surface": case "from": case "to": return this.ofSurface(id);
      case "record": return ofRecord(this, id, document);
      default: return this.ofExposure(document);
    }
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

  ofSurface(index) {
    const get = (now) => now.surfaces[index];
    const field = (name) => (now, value) =>
      doc.withSurface(now, index, (one) => lights.withField(one, name, value));
    return [
      {
        title: "group.surface",
        fields: [
          this.text("name", "field.name", "line", (now) => get(now).name,
            (now, name) => (name === undefined ? null : field("name")(now, name))),
          this.length("height", "field.height_m", (now) => get(now).height_m, field("height_m")),
          { ...this.number("reflectance", "field.reflectance", "", (now) => get(now).reflectance, field("reflectance"), 2),
            hint: this.say("hint.reflectance") },
        ],
      },
      { title: "group.from", fields: this.point("from", (now) => get(now).from, field("from")) },
      { title: "group.to", fields: this.point("to", (now) => get(now).to, field("to")) },
    ];
  }

  ofExposure(document) {
    const field = (name) => (now, value) =>
      ({ ...now, exposure: lights.withField(now.exposure, name, value) });
    const needed = (name) => (now, value) => (value === undefined ? null : field(name)(now, value));
    const ambient = (now, value) => lights.withField(
      now, "ambient", value === undefined ? undefined : { ...now.ambient, ev100: value });
    const of = (name) => (now, value) =>
      ({ ...now, ambient: lights.withField(now.ambient, name, value) });
    const more = document.ambient ? [
      this.usually("ambient-known", "field.known", "metered", ["metered", "set", "estimated"], "known",
        (now) => now.ambient?.known, of("known")),
      this.oneOf("ambient-source", "field.ambient_source", ["", "sun", "sky", "lamps", "mixed"], "source",
        (now) => now.ambient?.source, of("source")),
      this.number("ambient-temperature", "field.temperature_k", "K", (now) => now.ambient?.temperature_k,
        of("temperature_k"), 0),
      this.text("ambient-how", "field.ambient_how", "line", (now) => now.ambient?.how, of("how")),
    ] : [];
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
      ],
    }, {
      title: "group.ambient",
      fields: [
        this.number("ambient", "field.ev100", "EV", (now) => now.ambient?.ev100, ambient, 1), ...more,
      ],
    }];
  }
}
