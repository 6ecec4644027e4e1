// The fields of a light: all that a document says of it, the seldom ones in groups that open.

import * as doc from "./editor-document.js";
import { apartM, atBearing, bearingDeg, distanceM, millimetre } from "./editor-geometry.js";
import * as lights from "./editor-lights.js";

const ROLES = ["key", "fill", "back", "rim", "kicker", "hair", "background", "accent"];
const HELD = ["toward_light", "toward_camera", "on_surface"];
const KNOWN = ["metered", "set", "estimated"];
const MOST_GELS = 6;

/**
 * @param make the ways of making fields; see editor-making.js
 * @param id of the light
 */
export function ofLight(make, id, document) {
  const get = (now) => lights.light(now, id);
  const field = (name) => (now, value) =>
    lights.withLight(now, id, (one) => lights.withField(one, name, value));
  const gear = (name) => (now, value) => lights.gear(now, id, name, value);
  const one = { make, id, get, field, gear, now: get(document) };
  return [
    ...where(one),
    light(one),
    heads(one),
    gels(one),
    ...target(one),
    { title: "group.reason", fields: [make.text("reason", "field.reason", "text", (now) => get(now).reason, field("reason"))] },
    stand(one),
    measured(one),
    output(one),
  ];
}

function kept(value, set) {
  return value === undefined ? null : set(value);
}

function where({ make, id, get }) {
  const place = (now, at) => lights.place(now, id, at);
  const polar = (now, distance, bearing) => place(now, atBearing(distance, bearing, get(now).place.z_m));
  return [
    { title: "group.place", fields: make.point("place", (now) => get(now).place, place) },
    {
      title: "group.polar",
      fields: [
        make.length("distance", "field.distance", (now) => distanceM(get(now).place),
          (now, value) => kept(value, (metres) => polar(now, metres, bearingDeg(get(now).place)))),
        make.number("bearing", "field.bearing", "°", (now) => bearingDeg(get(now).place),
          (now, value) => kept(value, (degrees) => polar(now, distanceM(get(now).place), degrees)), 1),
      ],
    },
  ];
}

function light({ make, id, get, field }) {
  return {
    title: "group.light",
    fields: [
      make.oneOf("role", "field.role", ROLES, "role", (now) => get(now).role, field("role")),
      make.number("power", "field.stops_down", make.say("unit.stops"), (now) => get(now).stops_down,
        (now, value) => (value === undefined ? field("stops_down")(now, value) : lights.power(now, id, value))),
      make.meter(get, field("reading")),
    ],
  };
}

function heads({ make, get, gear }) {
  return {
    title: "group.gear",
    fields: [
      make.choice("head", "field.head", make.gear.head, "", (now) => get(now).head,
        (now, head) => (head ? gear("head")(now, head) : now)),
      make.choice("modifier", "field.modifier", make.gear.modifier, "choice.no_modifier",
        (now) => get(now).modifier, gear("modifier")),
      make.number("heads", "field.heads", "", (now) => get(now).heads ?? 1,
        (now, value) => gear("heads")(now, value === 1 ? undefined : value), 0),
      make.number("pops", "field.pops", "", (now) => get(now).pops ?? 1,
        (now, value) => gear("pops")(now, value === 1 ? undefined : value), 0),
    ],
  };
}

// From the head outward; the last choice adds one more.
function gels({ make, get, gear, now }) {
  const count = now.gels?.length ?? 0;
  const fields = Array.from({ length: Math.min(MOST_GELS, count + 1) }, (unused, i) => make.choice(
    `gel-${i}`, "field.gel", make.gear.gel, "choice.no_gel", (document) => get(document).gels?.[i],
    (document, gel) => {
      const all = (get(document).gels ?? []).toSpliced(i, 1, ...(gel ? [gel] : []));
      return gear("gels")(document, all.length === 0 ? undefined : all);
    }));
  return {
    title: "group.gels", quiet: true, fields,
    note: (now.gels ?? []).map((gel) => gel.name).join(" + "),
    act: count > 1 ? {
      words: "act.swap_gels", change: (document) => gear("gels")(document, [...get(document).gels].reverse()),
    } : undefined,
  };
}

function target({ make, id, get, now }) {
  return [
    {
      title: "group.target",
      fields: [
        make.text("target-name", "field.name", "line", (document) => get(document).target.name,
          (document, name) => kept(name, () => doc.withTarget(document, id, "name", name))),
        ...make.point("target", (document) => get(document).target.at,
          (document, at) => lights.target(document, id, at)),
      ],
    },
    {
      title: "group.aim",
      fields: make.point("aim", (document) => lights.aimOf(get(document)),
        (document, at) => lights.aim(document, id, at)),
      act: now.aim !== undefined ? { words: "act.aim_at_target", does: "aimAtTarget" } : undefined,
    },
  ];
}

function stand({ make, get, field, now }) {
  const part = (name) => (document, value) =>
    field("stand")(document, lights.withField(get(document).stand, name, value));
  const of = (document) => get(document).stand ?? {};
  const fields = [
    make.choice("stand", "field.stand", make.gear.stand, "choice.not_said", (document) => get(document).stand, field("stand")),
  ];
  if (now.stand) {
    fields.push(
      make.number("ballast", "field.ballast_kg", "kg", (document) => of(document).ballast_kg ?? 0,
        (document, value) => part("ballast_kg")(document, value === 0 ? undefined : value), 1),
      make.length("leg-radius", "field.leg_radius_m", (document) => of(document).leg_radius_m, part("leg_radius_m")));
  }
  return { title: "group.stand", quiet: true, note: now.stand?.name ?? "", fields };
}

function measured({ make, id, get, field, now }) {
  const fields = [
    make.usually("place-known", "field.place_known", "set", ["set", "estimated"], "known",
      (document) => get(document).place_known, field("place_known")),
    make.usually("held", "field.held", "toward_light", HELD, "held", (document) => get(document).target.held,
      (document, held) => doc.withTarget(
        held === "on_surface" && get(document).target.surface_facing_deg === undefined
          ? doc.withTarget(document, id, "surface_facing_deg", 0) : document, id, "held", held)),
    make.number("surface-facing", "field.surface_facing_deg", "°",
      (document) => get(document).target.surface_facing_deg,
      (document, value) => doc.withTarget(document, id, "surface_facing_deg", value), 1),
  ];
  if (now.reading) {
    const of = (document) => get(document).reading ?? {};
    const part = (name) => (document, value) =>
      field("reading")(document, lights.withField(of(document), name, value));
    fields.push(
      make.number("reading-iso", "field.meter_iso", "", (document) => of(document).iso, part("iso"), 0),
      make.usually("reading-known", "field.known", "metered", KNOWN, "known", (document) => of(document).known, part("known")),
      make.usually("receptor", "field.receptor", "flat", ["flat", "dome"], "receptor",
        (document) => of(document).receptor, part("receptor")),
      make.flag("includes-ambient", "field.includes_ambient", ["no", "yes"],
        (document) => of(document).includes_ambient ?? false,
        (document, value) => part("includes_ambient")(document, value || undefined)));
  }
  return { title: "group.measured", quiet: true, fields };
}

// A reading of one such head with this modifier on goes before what both say of themselves.
function output({ make, get, gear, now }) {
  const of = (document) => get(document).output ?? {};
  const part = (name) => (document, value) => gear("output")(document, lights.withField(of(document), name, value));
  const fields = [
    make.number("output-f-number", "field.output_f_number", "", (document) => of(document).f_number,
      (document, value) => {
        const started = {
          distance_m: millimetre(apartM(get(document).place, get(document).target.at)), ...of(document),
        };
        return gear("output")(document, value === undefined ? undefined : { ...started, f_number: value });
      }, 1),
  ];
  if (now.output) {
    fields.push(
      make.length("output-distance", "field.output_distance_m", (document) => of(document).distance_m,
        (document, value) => kept(value, (metres) => part("distance_m")(document, metres))),
      make.number("output-iso", "field.meter_iso", "", (document) => of(document).iso ?? 100,
        (document, value) => part("iso")(document, value === 100 ? undefined : value), 0),
      make.number("output-power", "field.stops_down", make.say("unit.stops"), (document) => of(document).stops_down ?? 0,
        (document, value) => part("stops_down")(document, value === 0 ? undefined : value)));
  }
  return { title: "group.output", quiet: true, hint: "hint.output", fields };
}
