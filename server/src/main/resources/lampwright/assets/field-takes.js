// Logs run-throughs and takes with one thumb: each is on this phone's disk before the page says so.

import { writeMeter } from "./editor-units.js";
import { button, element } from "./elements.js";
import { entriesOf, log, REFUSED, SENT, throwAway, tryAgain } from "./field-outbox.js";
import { onNews } from "./field-store.js";

const SHOWN = 12;

export class Takes {
  constructor(page, data, day, words, sender) {
    Object.assign(this, { page, data, day, words, sender });
    this.box = page.querySelector("[data-takes]");
  }

  start() {
    this.page.querySelector("#takes [data-plainly]").hidden = true;
    this.box.hidden = false;
    this.box.querySelector("[data-run-through]").addEventListener("click", () => this.logRunThrough());
    this.box.querySelector("[data-take-now]").addEventListener("submit", (event) => {
      event.preventDefault();
      this.logTake(event.target, event.submitter?.value ?? "undecided");
    });
    this.day.onChange(() => this.gathered());
    onNews(() => this.entries());
    return this.entries();
  }

  readings() {
    return Object.entries(this.day.facts.readings)
      .filter(([, reading]) => reading)
      .map(([light, reading]) => ({ light, ...reading }));
  }

  gathered() {
    const readings = this.readings().length + Object.values(this.day.facts.onMarks).filter(Boolean).length;
    const walked = this.day.facts.walked.length;
    const nothing = readings === 0 && walked === 0 && !this.day.facts.focus;
    this.box.querySelector("[data-gathered]").textContent = nothing
      ? this.words.say("gathered.none")
      : this.words.say("gathered.some", readings, walked);
    this.box.querySelector("[data-run-through]").disabled = nothing;
  }

  // What a take has no field for, in words: the marks, their readings, the focus.
  whatWasWalked() {
    const { walked, onMarks, focus } = this.day.facts;
    const names = [...this.page.querySelectorAll("[data-mark] .walk-name b")].map((name) => name.textContent);
    const said = names
      .map((name, i) => {
        const reading = onMarks[i] && `f/${writeMeter(onMarks[i], this.words.units)}`;
        return reading ? this.words.say("walk.why.mark", name, reading) : walked.includes(i) ? name : undefined;
      })
      .filter((name) => name !== undefined);
    return [
      said.length > 0 ? this.words.say("walk.why.marks", said.join("; ")) : "",
      focus ? this.words.say("walk.why.focus") : "",
    ].filter((sentence) => sentence !== "").join(" ");
  }

  async logRunThrough() {
    const why = this.whatWasWalked();
    const logged = await this.log({
      kind: "run_through", setup_revision: this.data.revision, readings: this.readings(), ...(why && { why }),
    });
    if (logged) {
      await this.day.begin();
    }
  }

  async logTake(form, kept) {
    const why = [
      ...[...form.querySelectorAll("[name=reason]:checked")].map((reason) => `${reason.value}.`),
      form.elements.words.value.trim(),
    ].filter((part) => part !== "").join(" ");
    const logged = await this.log({
      kind: "take", setup_revision: this.data.revision, kept, ...(why && { why }),
    });
    if (logged) {
      form.reset();
      form.querySelector("details").open = false;
    }
  }

  async log(take) {
    const told = this.box.querySelector("[data-told]");
    try {
      const entry = await log(this.data, take);
      told.textContent = this.words.say("logged", this.words.time(entry.at));
    } catch {
      told.textContent = this.words.say("logged.not");
      return false;
    }
    await this.entries();
    this.sender.go();
    return true;
  }

  async entries() {
    const mine = (await entriesOf(this.data.person)).filter((entry) => entry.path === this.data.path);
    this.box.querySelector("[data-entries]").replaceChildren(
      ...mine.reverse().slice(0, SHOWN).map((entry) => this.line(entry)));
  }

  line(entry) {
    const kind = this.words.say(entry.take.kind === "take" ? "entry.take" : "entry.runThrough");
    const state = entry.state === SENT
      ? this.words.say("entry.sent", entry.number)
      : entry.state === REFUSED ? this.words.say("entry.refused", entry.problem) : this.words.say("entry.waiting");
    const line = element("li", { class: `entry entry-${entry.state}` },
      element("b", {}, `${kind}, ${this.words.time(entry.at)}`), " ",
      element("span", { class: "known" }, state), entry.take.why ? element("p", { class: "said" }, entry.take.why) : "");
    if (entry.state === REFUSED) {
      line.append(element("p", { class: "acts" },
        button(this.words.say("entry.again"), async () => {
          await tryAgain(entry);
          this.sender.go();
        }),
        this.thrower(entry)));
    }
    return line;
  }

  // The only copy there is goes with the second tap, not with the first.
  thrower(entry) {
    const thrower = button(this.words.say("entry.throwAway"), () => {
      if (thrower.dataset.sure) {
        throwAway(entry.place);
      } else {
        thrower.dataset.sure = "yes";
        thrower.textContent = this.words.say("entry.throwAway.sure");
      }
    });
    return thrower;
  }
}
