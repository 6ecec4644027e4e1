// The pure modules of the editor, each fact by itself; node stands for the browser. Prints one line a
// fact: "ok NAME" or "not NAME: why".
import { strict as assert } from "node:assert";
import { readFileSync } from "node:fs";
import { pathToFileURL } from "node:url";

const folder = pathToFileURL(`${process.argv[2]}/`);
const from = (name) => import(new URL(`editor-${name}.js`, folder));
const [{ withEndMoved }, doc, { Fields }, geometry, history, keys, lights, { merge }, { PARTS }, { snapped, onTurn }, units, { Words }, { Keeping }] =
  await Promise.all([
    from("carrying"), from("document"), from("fields"), from("geometry"), from("history"), from("keys"),
    from("lights"), from("merge"), from("record"), from("snapping"), from("units"), from("words"), from("keeping"),
  ]);

const METRES = { language: "en", lengths: "metres", stops: "tenths" };
const FEET = { language: "de", lengths: "feet", stops: "thirds" };
const point = geometry.point;

function light(id, place, more = {}) {
  return {
    id, role: "key", head: { name: "400 W·s", range_stops: 6 }, place,
    target: { name: "face", at: point(0, 0, 1.6) }, stops_down: 3, ...more,
  };
}

const SETUP = {
  title: "Quay", exposure: { f_number: 8, time: "1/125", iso: 100 }, moods: ["cold"],
  camera: { place: point(0, -4, 1.5), aim: point(0, 0, 1.5) },
  subjects: [{ name: "ferryman", place: point(0, 0, 0), path: [{ name: "start", at: point(-2, 1, 0) }] }],
  lights: [
    light("key", point(-1.4, -1.6, 2), { reading: { f_number: 5.6, tenths: 3 } }),
    light("fill", point(1, -2, 1.8)),
  ],
  build_order: [{ what: "Read the ambient." }, { light: "fill" }, { light: "key", what: "Then the face." }],
};

// Everything that the schema of a setup knows, by path, without the places in lists.
function leaves(schema) {
  const found = new Set();
  const walk = (part, path) => {
    const form = part.$ref ? schema.$defs[part.$ref.split("/").at(-1)] : part;
    if (WHOLE.has(path)) {
      found.add(path);
    } else if (form.items) {
      walk(form.items, path);
    } else if (form.properties) {
      Object.entries(form.properties).forEach(([name, inner]) => walk(inner, path ? `${path}.${name}` : name));
    } else {
      found.add(path);
    }
  };
  walk(schema, "");
  return found;
}

// Chosen from the studio's gear as a whole.
const WHOLE = new Set(["lights.head", "lights.modifier", "lights.gels", "lights.stand", "camera.body", "camera.lens"]);

// The words have a form of their own on the page. A light's id is its name for other programs.
const ELSEWHERE = ["title", "genre", "intent", "moods", "lights.id"];

const FULL = {
  ...{ title: "Full", exposure: { f_number: 8, time: "1/125", iso: 100 } },
  occasion: { place: { name: "Quay" } }, plan: { frames: 20 }, ambient: { ev100: 10 },
  camera: { place: point(0, -4, 1.5), aim: point(0, 0, 1.5) },
  subjects: [{ name: "ferryman", place: point(0, 0, 0), path: [{ name: "start", at: point(-2, 1, 0) }] }],
  surfaces: [{ name: "wall", from: point(-1, 2, 0), to: point(1, 2, 0) }],
  lights: [light("key", point(-1.4, -1.6, 2), {
    reading: { f_number: 5.6 }, output: { f_number: 8, distance_m: 2 }, stand: { name: "stand", highest_m: 3 },
  })],
  build_order: [{ what: "Read the ambient." }], cautions: ["Wet stone."], retouch_notes: ["The pole."],
  outcome: [{ judgement: "worked", text: "Yes." }],
};

function changed(before, after, path, found) {
  if (doc.same(before, after)) {
    return;
  }
  const isPart = (value) => typeof value === "object" && value !== null;
  if (WHOLE.has(path) || !isPart(before) && !isPart(after)) {
    found.add(path);
    return;
  }
  for (const name of new Set([...Object.keys(before ?? {}), ...Object.keys(after ?? {})])) {
    const isList = Array.isArray(before ?? after);
    changed(before?.[name], after?.[name], isList ? path : path ? `${path}.${name}` : name, found);
  }
}

const facts = {
  // fields
  everythingThatASetupHoldsCanBeChanged() {
    const words = new Words({ ...METRES, phrases: new Proxy({}, { get: (none, key) => key }) });
    const other = [{ name: "another" }];
    const fields = new Fields(words, {
      head: other, modifier: other, gel: other, body: other, lens: other, stand: other,
    }, [{ location: "quayquay", name: "Slate quay", latitude_deg: 53, longitude_deg: 0.3 }]);
    const keys = [...doc.everything(FULL).map((piece) => piece.key), "exposure", ...PARTS.map((part) => `record/${part}`)];
    const found = new Set(ELSEWHERE);
    for (const field of keys.flatMap((key) => fields.of(key, FULL)).flatMap((group) => group.fields)) {
      const typed = field.kind === "choice" ? field.options(FULL).map((option) => option.value)
        : field.kind === "number" ? ["3", "7", "5.6 + 0.3"] : ["2026-01-02", "04:05"];
      typed.forEach((text) => changed(FULL, field.take(FULL, text) ?? FULL, "", found));
    }
    const schema = JSON.parse(readFileSync(process.argv[3], "utf8"));
    const known = leaves(schema);
    assert.ok(known.size > 80, `${known.size} leaves`);
    assert.deepEqual([...known].filter((path) => !found.has(path)), []);
  },
  itemsOfAListAreMovedAndTakenOutAndOneMoreIsAdded() {
    const words = new Words({ ...METRES, phrases: new Proxy({}, { get: (none, key) => key }) });
    const fields = new Fields(words, { head: [], modifier: [], gel: [], body: [], lens: [], stand: [] });
    const of = (setup) => fields.of("record/cautions", setup);
    const added = of(FULL).at(-1).fields[0].take(FULL, " Cables. ");
    assert.deepEqual(added.cautions, ["Wet stone.", "Cables."]);
    const [, down, out] = of(added)[0].acts;
    assert.deepEqual(down.change(added).cautions, ["Cables.", "Wet stone."]);
    assert.deepEqual(out.change(added).cautions, ["Cables."]);
    assert.equal("cautions" in out.change(FULL), false);
    assert.equal("build_order" in fields.of("record/build_order", FULL)[0].fields[1].take(FULL, ""), false);
  },
  aSurfaceIsMovedAsAWholeAndByItsEnds() {
    const { document, key } = doc.addSurface(FULL, "hedge");
    assert.equal(key, "surface/1");
    const all = doc.move(document, key, point(1, 3.5, 0)).surfaces[1];
    assert.deepEqual([all.from, all.to], [point(-0.5, 3.5, 0), point(2.5, 3.5, 0)]);
    assert.deepEqual(doc.move(document, "to/1", point(2, 4, 0)).surfaces[1].to, point(2, 4, 0));
    const turned = doc.turn(document, key, 90).surfaces[1];
    assert.deepEqual([turned.from, turned.to], [point(0, 4, 0), point(0, 1, 0)]);
    assert.deepEqual(doc.ends(FULL, "surface/7"), []);
  },
  // carrying
  aLineFollowsAtTheEndThatIsPulled() {
    assert.equal(withEndMoved("M10 20L30.5 -4", 0, { x: 1, y: -2 }), "M11 18L30.5 -4");
    assert.equal(withEndMoved("M10 20L30.5 -4", 1, { x: 1, y: -2 }), "M10 20L31.5 -6");
    assert.equal(withEndMoved("M10 20L30 40L5 5", 0, { x: 1, y: 1 }), "M10 20L30 40L5 5");
  },
  // units
  numbersAreReadWithCommaPointAndTrueMinus() {
    assert.deepEqual(["1,5", " −0.3 ", "+2", "2."].map(units.readNumber), [1.5, -0.3, 2, 2]);
    ["", "1.2.3", "two", "1e5"].forEach((text) => assert.ok(Number.isNaN(units.readNumber(text)), text));
  },
  numbersAreWrittenWithoutZerosAtTheEnd() {
    assert.deepEqual([-4.4, 5, 100, 0, -0.0001, 0.25].map((one) => units.writeNumber(one, 3, METRES)),
      ["−4.4", "5", "100", "0", "0", "0.25"]);
    assert.equal(units.writeNumber(1.5, 1, FEET), "1,5");
  },
  // The international foot is 0.3048 m exactly (agreement of 1959), the inch a twelfth of it.
  feetAndInchesAreReadByTheInternationalFoot() {
    for (const text of ["10' 6\"", "10′ 6″", "10.5 ft", "10.5", "126\"", "10' 6", "10 ft 6 in"]) {
      assert.ok(Math.abs(units.readLength(text, FEET) - 3.2004) < 1e-9, text);
    }
    assert.ok(Math.abs(units.readLength("−10'", FEET) + 3.048) < 1e-9);
    assert.equal(units.readLength("2.4 m", FEET), 2.4);
    assert.ok(Math.abs(units.readLength("10' 6\"", METRES) - 3.2004) < 1e-9);
    ["", "'", "5 yards", "m"].forEach((text) => assert.ok(Number.isNaN(units.readLength(text, FEET)), text));
  },
  everyInchIsWrittenAsItIsRead() {
    for (let inches = -300; inches <= 300; inches += 1) {
      const metres = inches * 0.0254;
      const text = units.writeLength(metres, FEET);
      assert.ok(Math.abs(units.readLength(text, FEET) - metres) < 1e-9, text);
    }
  },
  aMetersWordIsReadAsItIsShown() {
    assert.deepEqual(units.readMeter("f/5.6 + 0.3"), { f_number: 5.6, tenths: 3 });
    assert.deepEqual(units.readMeter("5,6 3"), { f_number: 5.6, tenths: 3 });
    assert.deepEqual(units.readMeter("8"), { f_number: 8 });
    assert.equal(units.readMeter("bright"), null);
    assert.equal(units.writeMeter({ f_number: 5.6, tenths: 3 }, METRES), "5.6 + 0.3");
  },
  // geometry: directions as DESIGN.md section 4 says
  bearingsArePositiveToCameraRight() {
    assert.equal(geometry.bearingDeg(point(0, -4, 1)), 0);
    assert.equal(geometry.bearingDeg(point(2, 0, 1)), 90);
    assert.equal(geometry.bearingDeg(point(-2, -2, 1)), -45);
    assert.equal(geometry.bearingDeg(point(0, 3, 1)), 180);
  },
  distanceAndBearingLeadBackToThePlace() {
    for (let bearing = -175; bearing <= 175; bearing += 7) {
      const place = geometry.atBearing(3.2, bearing, 2);
      assert.ok(Math.abs(geometry.bearingDeg(place) - bearing) < 0.05, String(bearing));
      assert.ok(Math.abs(geometry.distanceM(place) - 3.2) < 0.002, String(bearing));
    }
  },
  aTurnIsClockwiseFromAbove() {
    assert.deepEqual(geometry.turned(point(0, 1, 2), point(0, 0, 0), 90), point(1, 0, 2));
    assert.equal(geometry.headingDeg(point(0, 0, 0), point(1, 0, 0)), 90);
    assert.equal(geometry.wrapped(270), -90);
    assert.equal(geometry.wrapped(-180), 180);
  },
  // history
  undoAndRedoWalkThroughEveryDocument() {
    let walk = history.begin(0);
    for (let one = 1; one <= 5; one += 1) {
      walk = history.change(walk, one);
    }
    for (let one = 4; one >= 0; one -= 1) {
      walk = history.undo(walk);
      assert.equal(walk.now, one);
    }
    assert.equal(history.undo(walk), walk);
    for (let one = 1; one <= 5; one += 1) {
      walk = history.redo(walk);
      assert.equal(walk.now, one);
    }
    assert.equal(history.redo(walk), walk);
  },
  aDragIsUndoneAtOnceAndAChangeEndsWhatCouldBeRedone() {
    let walk = history.begin("a");
    walk = history.change(walk, "b", "drag 1");
    walk = history.change(walk, "c", "drag 1");
    walk = history.change(walk, "d", "drag 2");
    assert.equal(history.undo(walk).now, "c");
    assert.equal(history.undo(history.undo(walk)).now, "a");
    const settled = history.change(history.settle(walk), "e", "drag 2");
    assert.equal(history.undo(settled).now, "d");
    assert.equal(history.change(history.undo(settled), "f").future.length, 0);
  },
  // keys
  arrowsMoveInTheAxesOfTheirView() {
    const key = (name, more = {}) => ({ key: name, ...more });
    assert.deepEqual(keys.act(key("ArrowLeft"), "plan"), { by: { x_m: -0.1 } });
    assert.deepEqual(keys.act(key("ArrowUp", { shiftKey: true }), "plan"), { by: { y_m: 0.5 } });
    assert.deepEqual(keys.act(key("ArrowUp", { altKey: true }), "side"), { by: { z_m: 0.01 } });
    assert.deepEqual(keys.act(key("ArrowRight"), "side"), { by: { y_m: 0.1 } });
    assert.deepEqual(keys.act(key("PageDown"), "plan"), { by: { z_m: -0.1 } });
    assert.deepEqual(keys.act(key("R", { shiftKey: true }), "plan"), { turn: -15 });
    assert.equal(keys.act(key("ArrowLeft", { ctrlKey: true }), "plan"), null);
    assert.equal(keys.act(key("Tab"), "plan"), null);
  },
  // lights
  numbersFollowTheBuildOrder() {
    assert.deepEqual(lights.inBuildOrder(SETUP).map((one) => one.id), ["fill", "key"]);
    const later = lights.moveInBuild(SETUP, "fill", 1);
    assert.deepEqual(lights.inBuildOrder(later).map((one) => one.id), ["key", "fill"]);
    assert.equal(later.build_order[0].what, "Read the ambient.");
    assert.equal(lights.moveInBuild(SETUP, "fill", -1), SETUP);
    const { build_order, ...unordered } = SETUP;
    assert.deepEqual(lights.moveInBuild(unordered, "fill", -1).build_order, [{ light: "fill" }, { light: "key" }]);
  },
  aReadingGoesWhenItsLightIsMovedOrTurnedButNotWithAnother() {
    const moved = lights.place(SETUP, "key", point(0, -2, 2));
    assert.equal(lights.light(moved, "key").reading, undefined);
    assert.deepEqual(lights.light(lights.place(SETUP, "fill", point(0, -2, 2)), "key").reading, { f_number: 5.6, tenths: 3 });
    assert.equal(lights.light(doc.turn(SETUP, "light/key", 15), "key").reading, undefined);
    const unset = lights.withLight(SETUP, "key", (one) => lights.withField(one, "stops_down", undefined));
    assert.ok(lights.light(lights.place(unset, "key", point(0, -2, 2)), "key").reading);
  },
  // Common practice, no source: a stop less power is a stop less on the meter.
  aReadingFollowsTheDialByTheStop() {
    const down = lights.light(lights.power(SETUP, "key", 4), "key").reading;
    assert.deepEqual(down, { f_number: 4, tenths: 3, known: "set" });
    const up = lights.light(lights.power(SETUP, "key", 2.3), "key").reading;
    assert.deepEqual(up, { f_number: 8, known: "set" });
  },
  aLightThatIsTakenOutIsNamedNowhere() {
    const told = { ...SETUP, outcome: [{ judgement: "worked", text: "Yes.", light: "key" }] };
    const rest = lights.remove(told, "key");
    assert.deepEqual(rest.lights.map((one) => one.id), ["fill"]);
    assert.deepEqual(rest.build_order.at(-1), { what: "Then the face." });
    assert.equal(rest.outcome[0].light, undefined);
    assert.equal(lights.remove(rest, "fill"), rest);
  },
  newLightsHaveIdsOfTheirOwnAndAPlaceInTheBuildOrder() {
    const once = lights.add(SETUP, SETUP.lights[0].head);
    assert.equal(once.id, "fill-2");
    assert.deepEqual(once.document.build_order.at(-1), { light: "fill-2" });
    const twice = lights.duplicate(once.document, "fill-2");
    assert.equal(twice.id, "fill-3");
    assert.equal(new Set(twice.document.lights.map((one) => one.id)).size, 4);
  },
  // document
  everyPieceIsFoundAndMoved() {
    const keysOf = doc.pieces(SETUP).map((piece) => piece.key);
    assert.deepEqual(keysOf, ["light/fill", "light/key", "camera", "subject/0", "mark/0/0"]);
    for (const key of [...keysOf, "target/key"]) {
      const moved = doc.move(SETUP, key, point(1, 2, 3));
      assert.deepEqual(doc.find(moved, key).place, point(1, 2, 3), key);
      assert.notEqual(moved, SETUP);
    }
  },
  turningAroundLeadsBack() {
    for (const key of ["light/key", "camera", "subject/0"]) {
      let turned = SETUP;
      for (let i = 0; i < 24; i += 1) {
        turned = doc.turn(turned, key, 15);
      }
      const [was, is] = [doc.looksAt(SETUP, key), doc.looksAt(turned, key)];
      assert.ok(geometry.apartM(was.to, is.to) < 0.05, key);
    }
  },
  aSubjectTurnedClockwiseFacesCameraLeft() {
    assert.equal(doc.turn(SETUP, "subject/0", 30).subjects[0].facing_deg, -30);
  },
  // snapping
  whatIsNearAnAxisADistanceOrABearingComesToRestThere() {
    const among = doc.neighbours(SETUP, "light/fill");
    const axis = snapped(point(0.04, -2.33, 1.8), among, 0.1);
    assert.equal(axis.by, "axis");
    assert.deepEqual(axis.at, point(0, -2.3, 1.8));
    const target = SETUP.lights[0].target.at;
    const equal = geometry.apartM(SETUP.lights[0].place, target);
    const far = snapped(point(1.55, -1.5, 1.6), { subjects: [], target, distances: [equal] }, 0.06);
    assert.equal(far.by, "distance");
    assert.ok(Math.abs(geometry.apartM(far.at, target) - equal) < 0.002);
    const free = snapped(point(2.34, 1.07, 1.96), { subjects: [], distances: [] }, 0.01);
    assert.equal(free.by, "step");
    assert.deepEqual(free.at, point(2.3, 1.1, 2));
    assert.equal(onTurn(52), 45);
  },
  nothingSnapsFartherThanTheReach() {
    const among = doc.neighbours(SETUP, "light/key");
    for (let x = -3; x <= 3; x += 0.37) {
      for (let y = -3; y <= 3; y += 0.41) {
        const held = point(x, y, 2);
        const rest = snapped(held, among, 0.15);
        assert.ok(geometry.apartM(rest.at, held) <= 0.15 + 1e-9, `${x} ${y} ${rest.by}`);
      }
    }
  },
  // merge
  whatOnlyOneChangedIsTakenOver() {
    const mine = lights.place(SETUP, "key", point(-2, -2, 2));
    const theirs = { ...SETUP, title: "Theirs", moods: ["cold", "late"] };
    const both = merge(SETUP, mine, theirs);
    assert.equal(both.document.title, "Theirs");
    assert.deepEqual(both.document.moods, ["cold", "late"]);
    assert.deepEqual(lights.light(both.document, "key").place, point(-2, -2, 2));
    assert.equal(lights.light(both.document, "key").reading, undefined);
    assert.ok(both.changes.every((change) => !change.isOpen));
    assert.deepEqual(new Set(both.changes.map((change) => change.by)), new Set(["mine", "theirs"]));
  },
  aPlaceIsTakenWholeAndConflictsAreChosen() {
    const mine = lights.place(SETUP, "fill", point(2, -2, 1.8));
    const theirs = lights.place(SETUP, "fill", point(1, -3, 1.8));
    const open = merge(SETUP, mine, theirs);
    const [change] = open.changes;
    assert.equal(change.name, "lights/=fill/place");
    assert.ok(change.isOpen);
    const chosen = merge(SETUP, mine, theirs, { [change.name]: "theirs" });
    assert.deepEqual(lights.light(chosen.document, "fill").place, point(1, -3, 1.8));
    assert.ok(!chosen.changes[0].isOpen);
  },
  lightsAddedByBothAreBothThere() {
    const mine = lights.add(SETUP, SETUP.lights[0].head).document;
    const theirs = lights.duplicate(SETUP, "key").document;
    const { document, changes } = merge(SETUP, mine, theirs);
    assert.deepEqual(new Set(document.lights.map((one) => one.id)), new Set(["key", "key-2", "fill", "fill-2"]));
    const built = document.build_order.map((step) => step.light).filter(Boolean);
    assert.deepEqual(new Set(built), new Set(["key", "key-2", "fill", "fill-2"]));
    assert.equal(built.length, 4);
    assert.ok(changes.every((change) => !change.isOpen));
  },
  aLightTakenOutByOneAndMovedByTheOtherIsAskedAbout() {
    const mine = lights.remove(SETUP, "fill");
    const theirs = lights.place(SETUP, "fill", point(1, -3, 1.8));
    const open = merge(SETUP, mine, theirs).changes.filter((change) => change.isOpen);
    assert.deepEqual(open.map((change) => change.name), ["lights/=fill"]);
    const out = merge(SETUP, mine, theirs, { "lights/=fill": "mine" }).document;
    assert.ok(out.build_order.every((step) => step.light !== "fill"));
    const back = merge(SETUP, mine, theirs, { "lights/=fill": "theirs" }).document;
    assert.ok(lights.light(back, "fill"));
  },
  aReadingTakenWhileTheOtherTurnedThePowerIsAskedAbout() {
    const mine = lights.withLight(SETUP, "fill", (one) => ({ ...one, reading: { f_number: 4 } }));
    const theirs = lights.power(SETUP, "fill", 4);
    const open = merge(SETUP, mine, theirs).changes.filter((change) => change.isOpen);
    assert.deepEqual(open.map((change) => change.name), ["lights/=fill/reading"]);
  },
  puttingTogetherIsFairAndKeepsWhatIsEqual() {
    const [one, other] = [lights.place(SETUP, "key", point(1, 1, 1)), { ...SETUP, title: "Other" }];
    assert.ok(doc.same(merge(SETUP, one, other).document, merge(SETUP, other, one).document));
    assert.ok(doc.same(merge(SETUP, one, one).document, one));
    assert.ok(doc.same(merge(SETUP, one, SETUP).document, one));
    assert.ok(doc.same(merge(SETUP, SETUP, one).document, one));
    assert.equal(merge(SETUP, SETUP, SETUP).changes.length, 0);
  },
  seededChangesOfBothSidesAreNeverLost() {
    let seed = 20261127;
    const dice = (sides) => {
      seed = (Math.imul(seed, 1103515245) + 12345) & 0x7fffffff;
      return Math.floor(seed / 0x7fffffff * sides * 0.999999);
    };
    const acts = [
      (one, to) => lights.place(one, one.lights[dice(one.lights.length)].id, to),
      (one) => lights.add(one, SETUP.lights[0].head).document,
      (one) => doc.addMark(one, 0, `mark ${dice(1e6)}`).document,
      (one) => ({ ...one, title: `Title ${dice(1e6)}` }),
      (one) => ({ ...one, moods: [...one.moods, `mood ${dice(1e6)}`] }),
      (one) => lights.power(one, one.lights[0].id, dice(6)),
    ];
    for (let round = 0; round < 400; round += 1) {
      const before = seed;
      const side = () => {
        let changed = SETUP;
        for (let i = 0; i <= dice(3); i += 1) {
          changed = acts[dice(acts.length)](changed, point(dice(9) - 4, dice(9) - 4, 2));
        }
        return changed;
      };
      const [mine, theirs] = [side(), side()];
      const { document, changes } = merge(SETUP, mine, theirs);
      const told = `seed ${before}`;
      assert.equal(new Set(document.lights.map((one) => one.id)).size, document.lights.length, told);
      for (const mood of [...mine.moods, ...theirs.moods]) {
        assert.ok(document.moods.includes(mood), told);
      }
      for (const other of [mine, theirs]) {
        if (other.title !== SETUP.title) {
          assert.ok(document.title === other.title || changes.some((change) => change.name === "title" && change.isOpen), told);
        }
      }
    }
  },
  // words
  aPlaceIsSaidAsOneWouldOnSet() {
    const words = new Words({
      ...METRES,
      phrases: {
        "editor.place.left": "{0} at {1}° camera left, {2}", "editor.place.up": "{0} up",
        "editor.place.at_hit_mark": "at the hit mark, {0}",
      },
    });
    assert.equal(words.place(geometry.atBearing(2.4, -40, 1.9)), "2.4 m at 40° camera left, 1.9 m up");
    assert.equal(words.place(point(0, 0, 0)), "at the hit mark, 0.0 m up");
    assert.throws(() => words.say("no.such"));
  },
  // keeping
  aDraftIsKeptFoundAndForgottenAndEachPersonHasTheirOwn() {
    const store = new Map();
    const storage = {
      getItem: (name) => store.get(name) ?? null,
      setItem: (name, text) => store.set(name, text),
      removeItem: (name) => store.delete(name),
    };
    const mine = new Keeping(storage, { person: "one1", studio: "demo", setup: "abcd", from: "" });
    const other = new Keeping(storage, { person: "two2", studio: "demo", setup: "abcd", from: "" });
    assert.ok(mine.keep({ document: SETUP, base: SETUP, revision: 3 }));
    assert.equal(mine.find().revision, 3);
    assert.equal(other.find(), null);
    mine.forget();
    assert.equal(mine.find(), null);
    store.set(mine.name, "{broken");
    assert.equal(mine.find(), null);
    const full = { setItem: () => { throw new Error("full"); }, getItem: () => { throw new Error("no"); } };
    assert.equal(new Keeping(full, { person: "one1", studio: "demo", setup: "", from: "" }).keep({}), false);
  },
};

for (const [name, fact] of Object.entries(facts)) {
  try {
    fact();
    console.log(`ok ${name}`);
  } catch (error) {
    console.log(`not ${name}: ${error.stack.split("\n").slice(0, 12).join(" | ")}`);
  }
}
