// Shows the fields of what is chosen, and takes what is typed into them.

export function element(name, attributes = {}, ...children) {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) {
    if (value !== undefined && value !== false) {
      made.setAttribute(key, value === true ? "" : value);
    }
  }
  made.append(...children.filter((child) => child !== null && child !== undefined));
  return made;
}

export function button(words, act, cssClass = "quiet") {
  const made = element("button", { type: "button", class: cssClass }, words);
  made.addEventListener("click", act);
  return made;
}

// Only what differs is touched, so that nothing flickers and no selection is lost.
export function put(target, text) {
  if (target.textContent !== text) {
    target.textContent = text;
  }
}

export class Panel {
  /**
   * @param box the element that it fills
   * @param acts what is done: take(document) with what a field makes, does(name, key) for a button,
   *     document() gives the current one
   */
  constructor(box, fields, words, acts) {
    this.box = box;
    this.fields = fields;
    this.words = words;
    this.acts = acts;
    this.shown = "";
    this.inputs = [];
  }

  /**
   * @param acts the buttons of this piece: {words, does, off}
   */
  show(key, now, buttons) {
    const groups = this.fields.of(key, now);
    const shape = JSON.stringify([key, groups.map((group) => [group.title, group.act?.does])]);
    if (shape !== this.shown) {
      this.shown = shape;
      this.build(key, groups, now);
    }
    this.inputs.forEach(({ field, input }) => this.fill(field, input, now));
    this.offer(key, buttons);
  }

  build(key, groups, now) {
    this.inputs = [];
    this.buttons = element("div", { class: "desk-acts" });
    this.box.replaceChildren(
      this.buttons, ...groups.map((group) => this.group(key, group, now)));
  }

  group(key, group, now) {
    const numbers = group.fields.filter((field) => field.kind === "number").length;
    const made = element("fieldset", { class: numbers > 1 ? "desk-group desk-numbers" : "desk-group" },
      element("legend", {}, this.words.say(group.title)),
      ...group.fields.map((field) => this.field(field, now)));
    if (group.act) {
      made.append(button(this.words.say(group.act.words), () => this.acts.does(group.act.does, key)));
    }
    return made;
  }

  field(field, now) {
    const id = `piece-${field.id}`;
    const input = this.input(field, id, now);
    const error = element("p", { class: "field-error", id: `${id}-error`, hidden: true });
    const hint = field.hint ? element("p", { class: "hint", id: `${id}-hint` }, field.hint) : null;
    const unit = field.unit ? element("span", { class: "unit" }, ` ${field.unit}`) : null;
    input.setAttribute("aria-describedby", `${hint ? `${id}-hint ` : ""}${id}-error`);
    input.addEventListener("input", () => {
      input.dataset.typed = "yes";
    });
    input.addEventListener("change", () => this.take(field, input, error));
    input.addEventListener("keydown", (event) => {
      if (event.key === "Escape") {
        delete input.dataset.typed;
        this.settle(input, error);
        this.fill(field, input, this.acts.document());
      }
    });
    this.inputs.push({ field, input });
    return element("div", { class: `field field-${field.kind}` },
      element("label", { for: id }, field.label, unit), hint, error, input);
  }

  input(field, id, now) {
    if (field.kind === "choice") {
      return element("select", { id }, ...field.options(now).map((option) =>
        element("option", { value: option.value }, option.words)));
    }
    return field.kind === "text"
      ? element("textarea", { id, rows: "3" })
      : element("input", { id, type: "text", autocomplete: "off", inputmode: field.kind === "number" ? "decimal" : undefined });
  }

  take(field, input, error) {
    const taken = field.take(this.acts.document(), input.value);
    if (taken === null) {
      input.setAttribute("aria-invalid", "true");
      error.hidden = false;
      error.textContent = this.words.say("wrong.unreadable", field.label);
      return;
    }
    delete input.dataset.typed;
    this.settle(input, error);
    this.acts.take(taken);
    this.fill(field, input, this.acts.document());
  }

  settle(input, error) {
    input.removeAttribute("aria-invalid");
    error.hidden = true;
  }

  // What somebody is typing stays as it is.
  fill(field, input, now) {
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
