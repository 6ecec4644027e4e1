// The parts of a setup that stand on no drawing: when and where, pace, build order, cautions, how it
// came out, retouching. Each is a list of groups of fields; the last group of a list takes one more.

import * as lights from "./editor-lights.js";

const JUDGEMENTS = ["worked", "mistake", "mistake_kept", "retouched", "do_differently"];

export const PARTS = ["occasion", "pace", "build_order", "cautions", "outcome", "retouch_notes"];

const OF = { occasion, pace, build_order: buildOrder, cautions, outcome, retouch_notes: retouch };

/**
 * @param make the ways of making fields; see editor-making.js
 * @param part one of PARTS
 */
export function ofRecord(make, part, document) {
  return OF[part](make, document);
}

// What a part holds, said beside its name: how many, or where and when.
export function noteOf(part, document) {
  switch (part) {
    case "occasion":
      return [document.occasion?.place?.name, document.occasion?.date].filter(Boolean).join(", ");
    case "pace": return document.plan?.frames ? String(document.plan.frames) : "";
    default: return document[part]?.length ? String(document[part].length) : "";
  }
}

function withPart(document, name, field, value) {
  const part = lights.withField(document[name] ?? {}, field, value);
  return lights.withField(document, name, Object.keys(part).length === 0 ? undefined : part);
}

function occasion(make) {
  const get = (now) => now.occasion ?? {};
  const field = (name) => (now, value) => withPart(now, "occasion", name, value);
  const of = (now) => get(now).place ?? {};
  const place = (name) => (now, value) => {
    const changed = lights.withField(of(now), name, value);
    return field("place")(now, Object.keys(changed).length === 0 ? undefined : changed);
  };
  // One of the studio's locations fills in what it knows; the place stays readable without it.
  const location = {
    id: "location", label: make.say("field.location"), kind: "choice", unit: "",
    options: () => [{ value: "", words: make.say("choice.no_location") }, ...make.locations.map((one) => ({
      value: one.location, words: one.name,
    }))],
    show: (now) => of(now).location ?? "",
    take: (now, id) => (id === "" ? place("location")(now, undefined)
      : field("place")(now, make.locations.find((one) => one.location === id) ?? of(now))),
  };
  const text = (id, label, kind, from, set) => make.text(id, `field.${label}`, kind, from, set);
  return [
    {
      title: "group.where",
      fields: [
        location,
        text("place-name", "place_name", "line", (now) => of(now).name, place("name")),
        text("place-kind", "place_kind", "line", (now) => of(now).kind, place("kind")),
        make.flag("indoors", "field.indoors", ["", "yes", "no"], (now) => of(now).indoors, place("indoors")),
        make.number("latitude", "field.latitude_deg", "°", (now) => of(now).latitude_deg, place("latitude_deg"), 6),
        make.number("longitude", "field.longitude_deg", "°", (now) => of(now).longitude_deg, place("longitude_deg"), 6),
      ],
    },
    {
      title: "group.when",
      fields: [
        text("date", "date", "date", (now) => get(now).date, field("date")),
        text("clock", "clock", "time", (now) => get(now).time, field("time")),
        { ...text("utc-offset", "utc_offset", "line", (now) => get(now).utc_offset, field("utc_offset")), hint: make.say("hint.utc_offset") },
        text("weather", "weather", "line", (now) => get(now).weather, field("weather")),
        make.number("wind", "field.wind_m_per_s", "m/s", (now) => get(now).wind_m_per_s, field("wind_m_per_s"), 1),
      ],
    },
  ];
}

function pace(make) {
  const get = (now) => now.plan ?? {};
  const field = (name, usual) => (now, value) => withPart(now, "plan", name, value === usual ? undefined : value);
  return [{
    title: "group.pace",
    fields: [
      make.number("between", "field.seconds_between_frames", "s", (now) => get(now).seconds_between_frames,
        field("seconds_between_frames"), 2),
      make.number("frames", "field.frames", "", (now) => get(now).frames, field("frames"), 0),
      make.number("volts", "field.mains_volts", "V", (now) => get(now).mains_volts ?? 230, field("mains_volts", 230), 0),
      make.number("power-factor", "field.power_factor", "", (now) => get(now).power_factor ?? 0.65,
        field("power_factor", 0.65), 2),
    ],
  }];
}

// One change of a list; an empty list is left out of the document.
function withList(document, name, change) {
  const list = change(document[name] ?? []);
  return lights.withField(document, name, list.length === 0 ? undefined : list);
}

function withItem(document, name, i, item) {
  return withList(document, name, (list) => list.toSpliced(i, 1, ...(item === undefined ? [] : [item])));
}

function moved(document, name, from, to) {
  return withList(document, name, (list) => {
    const rest = list.toSpliced(from, 1);
    return rest.toSpliced(to, 0, list[from]);
  });
}

// The rows of a list, each with what can be done to it, and a blank one at the end.
function rows(document, name, fields, move = true) {
  const list = document[name] ?? [];
  return [...list, undefined].map((item, i) => ({
    id: `${name}-${i}`,
    heading: item === undefined ? "group.one_more" : "",
    number: i + 1,
    fields: fields(i, item === undefined),
    acts: item === undefined ? [] : [
      ...(move ? [
        { words: "act.up", off: i === 0, focus: `${name}-${i - 1}`, change: (now) => moved(now, name, i, i - 1) },
        { words: "act.down", off: i === list.length - 1, focus: `${name}-${i + 1}`, change: (now) => moved(now, name, i, i + 1) },
      ] : []),
      { words: "act.remove", focus: `${name}-${Math.max(0, i - 1)}`, change: (now) => withItem(now, name, i, undefined) },
    ],
  }));
}

function buildOrder(make, document) {
  const step = (now, i) => now.build_order?.[i] ?? {};
  const field = (name, i) => (now, value) => {
    const changed = lights.withField(step(now, i), name, value);
    return withItem(now, "build_order", i, Object.keys(changed).length === 0 ? undefined : changed);
  };
  const offered = (i) => (now) => {
    const built = new Set((now.build_order ?? []).filter((one, j) => j !== i).map((one) => one.light));
    return lights.inBuildOrder(now).map((one, j) => ({ ...one, number: j + 1 })).filter((one) => !built.has(one.id));
  };
  return rows(document, "build_order", (i) => [
    make.light(`build-light-${i}`, "field.build_light", offered(i), (now) => step(now, i).light, field("light", i)),
    make.text(`build-what-${i}`, "field.build_what", "text", (now) => step(now, i).what, field("what", i)),
  ]);
}

function sentences(name, label) {
  return (make, document) => rows(document, name, (i) => [
    make.text(`${name}-text-${i}`, label, "text", (now) => now[name]?.[i],
      (now, value) => withItem(now, name, i, value)),
  ]);
}

function cautions(make, document) {
  return sentences("cautions", "field.caution")(make, document);
}

function retouch(make, document) {
  return sentences("retouch_notes", "field.retouch_note")(make, document);
}

function outcome(make, document) {
  const note = (now, i) => now.outcome?.[i];
  const field = (name, i) => (now, value) =>
    withItem(now, "outcome", i, lights.withField(note(now, i), name, value));
  const numbered = (now) => lights.inBuildOrder(now).map((one, j) => ({ ...one, number: j + 1 }));
  return rows(document, "outcome", (i, isNew) => {
    const text = make.text(`outcome-text-${i}`, "field.outcome_text", "text", (now) => note(now, i)?.text,
      (now, value) => {
        if (value === undefined) {
          return withItem(now, "outcome", i, undefined);
        }
        return note(now, i) ? field("text", i)(now, value)
          : withItem(now, "outcome", i, { judgement: JUDGEMENTS[0], text: value });
      });
    return isNew ? [text] : [
      make.oneOf(`outcome-judgement-${i}`, "field.judgement", JUDGEMENTS, "judgement",
        (now) => note(now, i)?.judgement, field("judgement", i)),
      make.light(`outcome-light-${i}`, "field.outcome_light", numbered, (now) => note(now, i)?.light, field("light", i)),
      text,
    ];
  });
}
