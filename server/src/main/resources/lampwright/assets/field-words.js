// What the pages on location say, in the person's language.

export class Words {
  constructor(data) {
    this.phrases = data.phrases;
    this.units = { language: data.language, lengths: data.lengths, stops: data.stops };
  }

  say(key, ...parts) {
    const pattern = this.phrases[`field.${key}`];
    if (pattern === undefined) {
      throw new Error(`No phrase "field.${key}".`);
    }
    return pattern.replace(/\{(\d)\}/g, (place, number) => parts[number] ?? place);
  }

  // "16:05", and the day before it where that is another.
  time(at) {
    const then = new Date(at);
    const hour = then.toLocaleTimeString(this.units.language, { hour: "2-digit", minute: "2-digit", hourCycle: "h23" });
    return then.toDateString() === new Date().toDateString()
      ? hour
      : `${then.toLocaleDateString(this.units.language, { day: "numeric", month: "long" })}, ${hour}`;
  }

  megabytes(bytes) {
    return (bytes / 1e6).toLocaleString(this.units.language, { minimumFractionDigits: 1, maximumFractionDigits: 1 });
  }
}
