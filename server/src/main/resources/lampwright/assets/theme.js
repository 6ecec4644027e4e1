// Lets a person choose the theme. The choice sits in a cookie, so that the server draws the next
// page in it from the first byte and nothing flashes.
const themes = document.querySelector("[data-themes]");

function choose(theme) {
  const root = document.documentElement;
  if (theme) {
    root.dataset.theme = theme;
  } else {
    delete root.dataset.theme;
  }
  const age = theme ? 365 * 24 * 3600 : 0;
  document.cookie = `lampwright_theme=${theme}; path=/; max-age=${age}; samesite=lax`;
}

if (themes) {
  themes.hidden = false;
  themes.addEventListener("change", (event) => choose(event.target.value));
}
