// Suggests how a search may go on while it is typed: a combobox with a list, by the ARIA Authoring
// Practices (list autocomplete with manual selection). Without this the box is a plain one.
const PAUSE_MS = 120;

class Suggest {
  constructor(input, number) {
    this.input = input;
    this.setups = new URL(input.form.action).pathname;
    this.address = "/api" + this.setups.replace(/setups$/, "suggestions");
    this.items = [];
    this.at = -1;
    const [name, one, many, none, ...kinds] = input.dataset.suggest.split("\n");
    this.words = { name, one, many, none };
    this.kinds = new Map(kinds.map((kind) => kind.split("=")));
    this.build(`suggestions-${number}`);
    input.addEventListener("input", () => this.askSoon());
    input.addEventListener("keydown", (event) => this.press(event));
    input.addEventListener("blur", () => this.close());
  }

  build(id) {
    const { input } = this;
    const box = document.createElement("div");
    box.className = "suggest-box";
    this.list = document.createElement("ul");
    this.list.className = "suggest-list";
    this.list.id = id;
    this.list.hidden = true;
    this.list.setAttribute("role", "listbox");
    this.list.setAttribute("aria-label", this.words.name);
    this.status = document.createElement("p");
    this.status.className = "unseen";
    this.status.setAttribute("role", "status");
    const focused = document.activeElement === input;
    input.replaceWith(box);
    box.append(input, this.list, this.status);
    if (focused) {
      input.focus();
    }
    input.setAttribute("role", "combobox");
    input.setAttribute("aria-autocomplete", "list");
    input.setAttribute("aria-expanded", "false");
    input.setAttribute("aria-controls", id);
    // The box keeps the focus while somebody chooses with mouse or finger.
    this.list.addEventListener("mousedown", (event) => event.preventDefault());
    this.list.addEventListener("click", (event) => {
      const option = event.target.closest("[role=option]");
      if (option) {
        this.choose([...this.list.children].indexOf(option));
      }
    });
  }

  askSoon() {
    clearTimeout(this.waiting);
    this.waiting = setTimeout(() => this.ask(), PAUSE_MS);
  }

  stop() {
    clearTimeout(this.waiting);
    this.asking?.abort();
  }

  async ask() {
    this.asking?.abort();
    const asking = new AbortController();
    this.asking = asking;
    const address = `${this.address}?limit=8&q=${encodeURIComponent(this.input.value)}`;
    try {
      const answer = await fetch(address, {
        signal: asking.signal,
        headers: { accept: "application/json" },
      });
      const items = answer.ok ? (await answer.json()).items : [];
      if (!asking.signal.aborted && document.activeElement === this.input) {
        this.show(items);
      }
    } catch {
      // Aborted, or the network is away: the search itself works without suggestions.
    }
  }

  show(items) {
    this.items = items;
    this.at = -1;
    this.input.removeAttribute("aria-activedescendant");
    this.list.replaceChildren(...items.map((item, i) => this.option(item, i)));
    this.list.hidden = items.length === 0;
    this.input.setAttribute("aria-expanded", String(items.length > 0));
    this.status.textContent =
      items.length === 0
        ? this.words.none
        : items.length === 1
          ? this.words.one
          : this.words.many.replace("#", items.length);
  }

  option(item, i) {
    const option = document.createElement("li");
    option.id = `${this.list.id}-${i}`;
    option.setAttribute("role", "option");
    option.setAttribute("aria-selected", "false");
    const part = (kind, text) => {
      const span = document.createElement("span");
      span.className = `suggest-${kind}`;
      span.textContent = text;
      option.append(span, " ");
    };
    part("words", item.words);
    part("kind", this.kinds.get(item.kind) ?? item.kind);
    if (item.count) {
      part("count", item.count);
    }
    return option;
  }

  press(event) {
    if (event.isComposing) {
      return;
    }
    const open = !this.list.hidden;
    if (event.key === "ArrowDown" || event.key === "ArrowUp") {
      event.preventDefault();
      if (open) {
        this.move(event.key === "ArrowDown" ? 1 : -1);
      } else {
        this.ask();
      }
    } else if (event.key === "Escape" && open) {
      event.preventDefault();
      this.close();
    } else if (event.key === "Enter") {
      if (open && this.at >= 0) {
        event.preventDefault();
        this.choose(this.at);
      } else {
        this.close();
      }
    }
  }

  // One place more than there are options: the box itself.
  move(step) {
    const places = this.items.length + 1;
    this.mark(((this.at + 1 + step + places) % places) - 1);
  }

  mark(at) {
    this.at = at;
    [...this.list.children].forEach((option, i) => {
      option.setAttribute("aria-selected", String(i === at));
    });
    if (at >= 0) {
      const option = this.list.children[at];
      this.input.setAttribute("aria-activedescendant", option.id);
      option.scrollIntoView({ block: "nearest" });
    } else {
      this.input.removeAttribute("aria-activedescendant");
    }
  }

  choose(at) {
    const item = this.items[at];
    this.close();
    if (item.setup) {
      location.assign(`${this.setups}/${encodeURIComponent(item.setup)}`);
      return;
    }
    this.input.value = item.q.endsWith(" ") ? item.q : `${item.q} `;
    if (!item.count) {
      this.ask();
    }
  }

  close() {
    this.stop();
    this.list.hidden = true;
    this.at = -1;
    this.input.setAttribute("aria-expanded", "false");
    this.input.removeAttribute("aria-activedescendant");
    this.status.textContent = "";
  }
}

document.querySelectorAll("input[data-suggest]").forEach((input, i) => new Suggest(input, i));
