// Says what waits to be sent and how the sending goes, and has it sent: when there is signal again, when
// the page is opened, by a tap.

import { button, element } from "./elements.js";
import { entriesOf, REFUSED, Sender, SYNC_TAG, WAITING } from "./field-outbox.js";
import { onNews } from "./field-store.js";

export class Waiting {
  constructor(box, person, words) {
    Object.assign(this, { box, person, words });
    this.state = {};
    this.sender = new Sender((state) => {
      this.state = state;
      this.show();
    });
  }

  start() {
    addEventListener("online", () => this.sender.go());
    onNews(() => this.show());
    this.sender.go();
    return this.show();
  }

  go() {
    this.askTheBrowser();
    return this.sender.go();
  }

  // A browser that can send after the page is closed does.
  async askTheBrowser() {
    try {
      const registration = await navigator.serviceWorker?.getRegistration();
      await registration?.sync?.register(SYNC_TAG);
    } catch {
      // It may not: then the page sends when it is opened next.
    }
  }

  async show() {
    const mine = await entriesOf(this.person);
    const waiting = mine.filter((entry) => entry.state === WAITING).length;
    const refused = mine.some((entry) => entry.state === REFUSED);
    this.box.hidden = waiting === 0 && !refused && this.state.state !== "of-another";
    const says = [
      waiting === 0 ? "" : waiting === 1 ? this.words.say("waiting.one") : this.words.say("waiting.many", waiting),
      waiting === 0 && this.state.state !== "of-another" ? "" : this.how(),
      refused ? this.words.say("waiting.refused") : "",
    ].filter((sentence) => sentence !== "");
    const way = this.way(waiting);
    const told = [says.join(" "), way.textContent ?? ""].join("|");
    // A button that is under a thumb stays where nothing changed.
    if (told !== this.told) {
      this.told = told;
      this.box.replaceChildren(element("p", { role: "status" }, says.join(" ")), way);
    }
  }

  how() {
    switch (this.state.state) {
      case "sending": return this.words.say("waiting.sending", this.state.left);
      case "away": return this.words.say("waiting.away");
      case "signed-out": return this.words.say("waiting.signedOut");
      case "of-another": return this.words.say("waiting.ofAnother");
      default: return "";
    }
  }

  way(waiting) {
    if (waiting === 0) {
      return "";
    }
    return this.state.state === "signed-out"
      ? element("a", { class: "way", href: `/sign-in?next=${location.pathname}` }, this.words.say("waiting.signIn"))
      : button(this.words.say("waiting.send"), () => this.sender.go());
  }
}
