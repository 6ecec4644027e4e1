// Says how old the copy of this setup on the phone is, and keeps it, renews it or takes it away.

import { button, element } from "./elements.js";
import { forget } from "./field-caches.js";
import { canKeep, keep, keptOf, newestRevision, NotKept, register } from "./field-keeping.js";
import { onNews } from "./field-store.js";

export class Copy {
  constructor(box, data, words) {
    Object.assign(this, { box, data, words });
    this.newest = undefined;
  }

  async start() {
    this.box.hidden = false;
    if (!isSecureContext || !canKeep()) {
      this.tell(this.words.say(isSecureContext ? "copy.cannot" : "copy.insecure"));
      return;
    }
    onNews(() => this.show());
    for (const event of ["online", "offline"]) {
      addEventListener(event, () => this.look());
    }
    await this.show();
    await this.look();
    if (await keptOf(this.data.path)) {
      // The worker of the newest build serves what is kept.
      await register().catch(() => undefined);
    }
  }

  async look() {
    this.newest = await newestRevision(this.data.path);
    this.looked = true;
    await this.show();
  }

  async show() {
    if (this.busy) {
      return;
    }
    const kept = await keptOf(this.data.path);
    if (!kept) {
      this.tell(this.words.say("copy.keep.hint"), this.keeper("copy.keep"));
      return;
    }
    const says = [this.words.say("copy.of", this.words.time(kept.at), kept.revision)];
    const isNewer = this.newest > kept.revision;
    if (this.looked) {
      says.push(this.newest === undefined
        ? this.words.say("copy.noSignal")
        : isNewer ? this.words.say("copy.newer", this.newest) : this.words.say("copy.signal"));
    }
    this.tell(says.join(" "),
      isNewer ? this.keeper("copy.take") : "",
      button(this.words.say("copy.forget"), () => forget(this.data.path)));
  }

  keeper(key) {
    return button(this.words.say(key), () => this.keep(), "");
  }

  async keep() {
    this.busy = true;
    try {
      await keep([this.data.path], this.data.person, (here, all) => this.tell(this.words.say("copy.keeping", here, all)));
      this.busy = false;
      const kept = await keptOf(this.data.path);
      if (kept.revision !== this.data.revision) {
        location.reload();
        return;
      }
      await this.look();
    } catch (failure) {
      this.busy = false;
      const reason = failure instanceof NotKept ? this.words.say(failure.reason, failure.part) : this.words.say("copy.cannot");
      this.tell(this.words.say("copy.failed", reason), this.keeper("copy.keep"));
    }
  }

  // A button that is under a thumb stays where nothing changed.
  tell(sentence, ...acts) {
    const told = [sentence, ...acts.map((act) => act.textContent ?? "")].join("|");
    if (told === this.told) {
      return;
    }
    this.told = told;
    this.box.replaceChildren(element("p", { role: "status" }, sentence),
      element("p", { class: "acts" }, ...acts));
  }
}
