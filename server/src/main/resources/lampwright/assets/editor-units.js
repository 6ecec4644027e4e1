// Numbers, lengths and stops as a person writes and reads them. Pure; lengths are in metres inside.

const FOOT_M = 0.3048;

// "1,5", "−0.3", "+2": a number, or NaN.
export function readNumber(text) {
  const plain = text.trim().replace("−", "-").replace(",", ".");
  return /^[-+]?(\d+(\.\d*)?|\.\d+)$/.test(plain) ? Number(plain) : NaN;
}

// "2.4", "2.4 m", "7' 10", "7′ 10″", "7.5 ft", "10″": metres, or NaN.
export function readLength(text, units) {
  const plain = text.trim().replace(/''|”|“|″/g, '"').replace(/’|′/g, "'");
  const sign = /^[-−]/.test(plain) ? -1 : 1;
  const size = plain.replace(/^[-+−]\s*/, "");
  const parts = /^(?:(\d+(?:[.,]\d+)?)\s*(?:'|ft)\s*)?(?:(\d+(?:[.,]\d+)?)\s*("|in)?)?$/.exec(size);
  if (/['"]|ft|in$/.test(size)) {
    if (!parts || (parts[1] === undefined && !parts[3])) {
      return NaN;
    }
    return sign * FOOT_M * (readNumber(parts[1] ?? "0") + readNumber(parts[2] ?? "0") / 12);
  }
  const inMetres = /\s*m$/.test(size);
  const value = readNumber(size.replace(/\s*m$/, ""));
  return sign * value * (units.lengths === "feet" && !inMetres ? FOOT_M : 1);
}

export function writeNumber(value, decimals, units) {
  const fixedText = value.toFixed(decimals);
  const rounded = fixedText.includes(".") ? fixedText.replace(/\.?0+$/, "") : fixedText;
  const text = rounded === "-0" ? "0" : rounded;
  return text.replace("-", "−").replace(".", units.language === "de" ? "," : ".");
}

// A length in a field: "2.4" or "7′ 10″".
export function writeLength(metres, units) {
  if (units.lengths !== "feet") {
    return writeNumber(metres, 3, units);
  }
  const inches = Math.round(Math.abs(metres) / FOOT_M * 12);
  const size = inches < 12 ? `${inches}″` : `${Math.floor(inches / 12)}′ ${inches % 12}″`;
  return metres < 0 && inches > 0 ? `−${size}` : size;
}

// A length in a sentence: "2.4 m" or "7′ 10″".
export function sayLength(metres, units) {
  return units.lengths === "feet"
    ? writeLength(metres, units)
    : `${fixed(metres, 1, units)} m`;
}

function fixed(value, decimals, units) {
  const text = value.toFixed(decimals);
  const plain = Number(text) === 0 ? text.replace("-", "") : text;
  return plain.replace("-", "−").replace(".", units.language === "de" ? "," : ".");
}

// What a meter shows: "5.6", "5.6 + 0.3", "f/5.6 3". Null where it is no such thing.
export function readMeter(text) {
  const parts = /^(?:f\s*\/?\s*)?(\d{1,3}(?:[.,]\d{1,2})?)(?:\s*\+\s*0?[.,](\d)|\s+(\d))?$/i.exec(text.trim());
  if (!parts) {
    return null;
  }
  const tenths = Number(parts[2] ?? parts[3] ?? 0);
  const reading = { f_number: readNumber(parts[1]) };
  return tenths > 0 ? { ...reading, tenths } : reading;
}

export function writeMeter(reading, units) {
  const mark = writeNumber(reading.f_number, 1, units);
  return reading.tenths ? `${mark} + ${fixed(reading.tenths / 10, 1, units)}` : mark;
}
