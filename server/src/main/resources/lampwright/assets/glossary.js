// Leafs through the small drawings of the glossary. Without it each shows its first, middle and last leaf.
for (const book of document.querySelectorAll("[data-flip]")) {
  const turn = book.querySelector("[data-turn]");
  const slider = turn.querySelector("input");
  const output = turn.querySelector("output");
  const leaves = [...book.querySelectorAll("[data-value]")];

  const show = () => {
    const shown = leaves[slider.valueAsNumber];
    for (const leaf of leaves) {
      leaf.hidden = leaf !== shown;
    }
    output.value = shown.dataset.value;
    slider.setAttribute("aria-valuetext", shown.querySelector("[data-says]").textContent);
  };

  book.querySelector("[data-label]").hidden = true;
  turn.hidden = false;
  book.dataset.flip = "on";
  slider.addEventListener("input", show);
  show();
}
