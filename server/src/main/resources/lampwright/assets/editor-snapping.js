// Where a thing that is moved comes to rest: on somebody's axis, as far from its target as another
// light, on a round bearing, else on whole steps. Pure.

import { apartM, atBearing, bearingDeg, distanceM, point } from "./editor-geometry.js";

const STEP_M = 0.1;
const TURN_DEG = 15;

function whole(value, step) {
  return Math.round(value / step) * step;
}

export function onSteps(place) {
  return point(whole(place.x_m, STEP_M), whole(place.y_m, STEP_M), whole(place.z_m, STEP_M));
}

export function onTurn(degrees) {
  return whole(degrees, TURN_DEG);
}

// On a line through a point in a direction, in whole steps along it.
function onLine(place, through, degrees) {
  const way = atBearing(1, degrees, 0);
  const x = place.x_m - through.x_m;
  const y = place.y_m - through.y_m;
  const along = whole(x * way.x_m + y * way.y_m, STEP_M);
  return point(through.x_m + along * way.x_m, through.y_m + along * way.y_m, place.z_m);
}

// In the direction that it has from the target, but as far away as another light is.
function onSphere(place, target, distance) {
  const height = place.z_m - target.z_m;
  const x = place.x_m - target.x_m;
  const y = place.y_m - target.y_m;
  const ground = Math.hypot(x, y);
  const wanted = distance * distance - height * height;
  if (ground === 0 || wanted <= 0) {
    return null;
  }
  const scale = Math.sqrt(wanted) / ground;
  return point(target.x_m + x * scale, target.y_m + y * scale, place.z_m);
}

function candidates(place, among) {
  const found = [];
  for (const subject of among.subjects) {
    const facing = subject.facing_deg ?? 0;
    for (const degrees of [facing, facing + 90]) {
      const at = onLine(place, subject.place, degrees);
      found.push({ at, by: "axis", from: subject.place, to: at });
    }
  }
  if (among.target) {
    for (const distance of among.distances) {
      const at = onSphere(place, among.target, distance);
      if (at) {
        found.push({ at, by: "distance", from: among.target, to: at });
      }
    }
  }
  const bearing = whole(bearingDeg(place), TURN_DEG);
  const at = atBearing(whole(distanceM(place), STEP_M), bearing, place.z_m);
  found.push({ at, by: "bearing", from: point(0, 0, 0), to: at });
  return found;
}

/**
 * @param place where it is held, in metres
 * @param among what it may line up with: subjects, the target of a light that is moved, and how far
 *     from it other lights of this target stand
 * @param reachM nearer than this it is drawn to an axis, a distance or a bearing
 * @returns its place; by what: "axis", "distance", "bearing" or "step"; the line of it, from and to
 */
export function snapped(place, among, reachM) {
  const flat = { ...place, z_m: whole(place.z_m, STEP_M) };
  const best = candidates(flat, among)
    .map((one) => ({ ...one, off: apartM(one.at, flat) }))
    .filter((one) => one.off <= reachM)
    .sort((one, other) => one.off - other.off)[0];
  if (best) {
    return best;
  }
  const at = onSteps(place);
  return { at, by: "step", from: at, to: at };
}
