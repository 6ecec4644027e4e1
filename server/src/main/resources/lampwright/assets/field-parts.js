// One part of the page at a time, as a thumb turns it: what the address names, or where one was last.

export class Parts {
  constructor(page, day) {
    this.page = page;
    this.day = day;
    this.links = [...page.querySelectorAll(".contents a[href^='#']")];
    this.names = this.links.map((link) => link.hash.slice(1));
  }

  start() {
    addEventListener("hashchange", () => this.choose());
    this.choose();
  }

  choose() {
    const named = location.hash.slice(1);
    const part = [named, this.day.facts.part, this.names[0]].find((name) => this.names.includes(name));
    this.links.forEach((link) => {
      const isShown = link.hash.slice(1) === part;
      this.page.querySelector(link.hash).hidden = !isShown;
      if (isShown) {
        link.setAttribute("aria-current", "true");
      } else {
        link.removeAttribute("aria-current");
      }
    });
    if (part !== this.day.facts.part) {
      this.day.change({ part }).catch(() => undefined);
    }
  }
}
