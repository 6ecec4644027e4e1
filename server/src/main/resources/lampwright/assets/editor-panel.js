// Shows the fields of what is chosen, and takes what is typed into them.

import { button, element, put } from "./elements.js";

// One group of fields on the page. It stays where its fields stay the same, so that nobody loses the
// place where they type.
class Group {
  constructor(panel, group, now) {
    this.panel = panel;
    this.acts = element("div", { class: "desk-acts" });
    this.entries = group.fields.map((field) => ({ field }));
    const numbers = group.fields.filter((field) => field.kind === "number").length;
    const cssClass = numbers > 1 ? "desk-group desk-numbers" : "desk-group";
    this.name = element("span");
    this.note = element("span", { class: "desk-note" });
    const hint = group.hint ? element("p", { class: "hint" }, panel.words.say(group.hint)) : null;
    const fields = this.entries.map((entry) => this.field(entry, now));
    if (group.quiet) {
      const body = element("div", { class: cssClass }, hint, ...fields, this.acts);
      this.element = element("details", { class: "desk-quiet", open: panel.opened.has(group.title) },
        element("summary", {}, this.name, " ", this.note), body);
      this.element.addEventListener("toggle", () =>
        panel.opened[this.element.open ? "add" : "delete"](group.title));
    } else {
      this.element = element("fieldset", { class: cssClass },
        element("legend", {}, this.name), hint, ...fields, this.acts);
    }
  }

  update(group, now) {
    const { words } = this.panel;
    const heading = group.heading ?? group.title;
    put(this.name, heading ? words.say(heading) : String(group.number));
    put(this.note, group.note ?? "");
    this.entries.forEach((entry, i) => {
      entry.field = group.fields[i];
      this.panel.fill(entry.field, entry.input, now);
    });
    this.offer(group.acts ?? (group.act ? [group.act] : []));
  }

  offer(acts) {
    this.offered = acts;
    const named = JSON.stringify(acts.map((act) => [act.words, act.off ?? false]));
    this.acts.hidden = acts.length === 0;
    if (this.acts.dataset.named !== named) {
      this.acts.dataset.named = named;
      this.acts.replaceChildren(...acts.map((act, i) => {
        const made = button(this.panel.words.say(act.words), () => this.act(i));
        made.dataset.does = act.words;
        if (act.off) {
          made.setAttribute("aria-disabled", "true");
        }
        return made;
      }));
    }
  }

  act(i) {
    const { change, does, focus, off, words } = this.offered[i];
    if (off) {
      return;
    }
    if (change) {
      this.panel.acts.take(change(this.panel.acts.document()));
      this.panel.redraw();
      this.panel.focus(focus, words);
    } else {
      this.panel.acts.does(does, this.panel.key);
    }
  }

  field(entry, now) {
    const { panel } = this;
    const { field } = entry;
    const id = `${panel.prefix}-${field.id}`;
    const input = panel.input(field, id, now);
    const error = element("p", { class: "field-error", id: `${id}-error`, hidden: true });
    const hint = field.hint ? element("p", { class: "hint", id: `${id}-hint` }, field.hint) : null;
    const unit = field.unit ? element("span", { class: "unit" }, ` ${field.unit}`) : null;
    input.setAttribute("aria-describedby", `${hint ? `${id}-hint ` : ""}${id}-error`);
    input.addEventListener("input", () => {
      input.dataset.typed = "yes";
    });
    input.addEventListener("change", () => panel.take(entry.field, input, error));
    input.addEventListener("keydown", (event) => {
      if (event.key === "Escape") {
        delete input.dataset.typed;
        panel.settle(input, error);
        panel.fill(entry.field, input, panel.acts.document());
      }
    });
    entry.input = input;
    return element("div", { class: `field field-${field.kind}` },
      element("label", { for: id }, field.label, unit), hint, error, input);
  }
}

export class Panel {
  /**
   * @param box the element that it fills
   * @param acts what is done: take(document) with what a field makes, does(name, key) for a button,
   *     document() gives the current one
   * @param prefix of the ids of its fields
   */
  constructor(box, fields, words, acts, prefix = "piece") {
    this.box = box;
    this.fields = fields;
    this.words = words;
    this.acts = acts;
    this.prefix = prefix;
    this.key = "";
    this.opened = new Set();
  }

  /**
   * @param acts the buttons of this piece: {words, does, off}
   */
  show(key, now, buttons = []) {
    if (key !== this.key) {
      this.key = key;
      this.groups = new Map();
      this.buttons = element("div", { class: "desk-acts", hidden: buttons.length === 0 });
      this.box.replaceChildren(this.buttons);
    }
    this.redraw(now);
    this.offer(key, buttons);
  }

  redraw(now = this.acts.document()) {
    const before = this.groups;
    this.groups = new Map();
    let last = this.buttons;
    for (const group of this.fields.of(this.key, now)) {
      const name = JSON.stringify([group.id ?? group.title, group.fields.map((field) => field.id)]);
      const shown = before.get(name) ?? new Group(this, group, now);
      before.delete(name);
      this.groups.set(name, shown);
      if (last.nextElementSibling !== shown.element) {
        last.after(shown.element);
      }
      last = shown.element;
      shown.update(group, now);
    }
    before.forEach((gone) => gone.element.remove());
  }

  // To the same button of another row, or to its first field.
  focus(id, words) {
    const found = [...this.groups].find(([name]) => JSON.parse(name)[0] === id)?.[1].element;
    const target = found?.querySelector(`[data-does="${words}"]:not([aria-disabled])`)
      ?? found?.querySelector("input, select, textarea");
    target?.focus();
  }

  input(field, id, now) {
    if (field.kind === "choice") {
      return element("select", { id }, ...this.options(field, now));
    }
    const isTyped = ["date", "time"].includes(field.kind);
    return field.kind === "text"
      ? element("textarea", { id, rows: "3" })
      : element("input", {
        id, type: isTyped ? field.kind : "text", autocomplete: "off",
        inputmode: field.kind === "number" ? "decimal" : undefined,
      });
  }

  options(field, now) {
    return field.options(now).map((option) => element("option", { value: option.value }, option.words));
  }

  take(field, input, error) {
    const taken = field.take(this.acts.document(), input.value);
    if (taken === null) {
      input.setAttribute("aria-invalid", "true");
      error.hidden = false;
      error.textContent = this.words.say(field.kind === "number" ? "wrong.unreadable" : "wrong.needed", field.label);
      return;
    }
    delete input.dataset.typed;
    this.settle(input, error);
    this.acts.take(taken);
    this.redraw();
  }

  settle(input, error) {
    input.removeAttribute("aria-invalid");
    error.hidden = true;
  }

  // What somebody is typing stays as it is.
  fill(field, input, now) {
    if (field.kind === "choice") {
      const offered = JSON.stringify(field.options(now));
      if ((input.dataset.offered ??= offered) !== offered) {
        input.dataset.offered = offered;
        input.replaceChildren(...this.options(field, now));
      }
    }
    const text = String(field.show(now));
    if (!input.dataset.typed && !input.hasAttribute("aria-invalid") && input.value !== text) {
      if (field.kind === "choice" && ![...input.options].some((option) => option.value === text)) {
        input.prepend(element("option", { value: text }, text));
      }
      input.value = text;
    }
  }

  offer(key, buttons) {
    const named = JSON.stringify(buttons);
    if (this.buttons.dataset.named !== named) {
      const focused = this.buttons.contains(document.activeElement) ? document.activeElement.dataset.does : "";
      this.buttons.dataset.named = named;
      this.buttons.hidden = buttons.length === 0;
      this.buttons.replaceChildren(...buttons.map((one) => {
        const made = button(one.words, () => !one.off && this.acts.does(one.does, key));
        made.dataset.does = one.does;
        if (one.off) {
          made.setAttribute("aria-disabled", "true");
        }
        return made;
      }));
      this.buttons.querySelector(`[data-does="${focused}"]`)?.focus();
    }
  }
}
