// The plane of a setup: metres as the camera sees it, x to its right, y away from it, z up; the hit
// mark is the origin. Pure.

const DEGREE = Math.PI / 180;

// A millimetre is finer than any tape.
export function millimetre(metres) {
  const rounded = Math.round(metres * 1000) / 1000;
  return rounded === 0 ? 0 : rounded;
}

export function point(x, y, z) {
  return { x_m: millimetre(x), y_m: millimetre(y), z_m: millimetre(z) };
}

// On the ground, from the hit mark.
export function distanceM(place) {
  return Math.hypot(place.x_m, place.y_m);
}

// From the direction hit mark to camera, positive to camera-right, -180 to 180.
export function bearingDeg(place) {
  return place.x_m === 0 && place.y_m === 0 ? 0 : Math.atan2(place.x_m, -place.y_m) / DEGREE;
}

export function atBearing(distance, bearing, height) {
  const angle = bearing * DEGREE;
  return point(distance * Math.sin(angle), -distance * Math.cos(angle), height);
}

// Round another point, clockwise as one sees it from above.
export function turned(place, around, degrees) {
  const cos = Math.cos(degrees * DEGREE);
  const sin = Math.sin(degrees * DEGREE);
  const x = place.x_m - around.x_m;
  const y = place.y_m - around.y_m;
  return point(around.x_m + x * cos + y * sin, around.y_m - x * sin + y * cos, place.z_m);
}

// Clockwise from away from the camera, 0 to 360: which way one point lies from another.
export function headingDeg(from, to) {
  const angle = Math.atan2(to.x_m - from.x_m, to.y_m - from.y_m) / DEGREE;
  return (angle + 360) % 360;
}

// Within -180 to 180.
export function wrapped(degrees) {
  const turnedUp = ((degrees % 360) + 360) % 360;
  return turnedUp > 180 ? turnedUp - 360 : turnedUp;
}

export function apartM(one, other) {
  return Math.hypot(one.x_m - other.x_m, one.y_m - other.y_m, one.z_m - other.z_m);
}
