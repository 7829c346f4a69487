// Sizes as they are typed, in the steps a turner works in; the value beside a finger; one size kept.
(() => {
  "use strict";
  const page = window.turnalikePage;

  const inches = () => page.work().dataset.units === "in";
  const fraction = (parts, under) => {
    let whole = Math.floor(parts / under);
    let over = parts % under;
    while (over && over % 2 === 0) {
      over /= 2;
      under /= 2;
    }
    return over ? `${whole ? whole + " " : ""}${over}/${under}` : String(whole);
  };
  /** The nearest step to that many millimetres, as it is typed. */
  const snapped = (mm, fine) => {
    if (inches()) {
      const under = fine ? 64 : 16;
      return fraction(Math.max(1, Math.round((mm / 25.4) * under)), under);
    }
    const step = fine ? 0.1 : 0.5;
    return String(Number((Math.max(1, Math.round(mm / step)) * step).toFixed(1)));
  };
  /** To the finest step. */
  const spell = (mm) => snapped(mm, true);
  /** The value beside the finger, not under it. */
  const finger = (event, words) => {
    let told = document.getElementById("finger");
    if (!told) {
      told = document.createElement("output");
      told.id = "finger";
      told.setAttribute("aria-hidden", "true");
      document.body.append(told);
    }
    told.hidden = !words;
    if (!words) return;
    told.textContent = words;
    const above = event.pointerType === "touch" ? 84 : 48;
    told.style.left = `${Math.max(8, Math.min(page.root.clientWidth - told.offsetWidth - 8, event.clientX - told.offsetWidth / 2))}px`;
    told.style.top = `${event.clientY > above + 8 ? event.clientY - above : event.clientY + 40}px`;
  };
  /** Keeps one size; how the job stood when it was taken hold of tells it from what others did meanwhile. */
  const keepSize = (number, key, value, version = page.work().dataset.version) => {
    const way = key === "length" ? "/boundary" : "";
    return page.send(`/member/${number}${way}`, { member: number, version, [key]: value });
  };
  /** A size with its unit, as it is read in the page's language. */
  const inWords = (size) => `${page.figure(size)} ${page.work().dataset.unit}`;
  /** What a size of the chosen member is called on the page. */
  const word = (key) => {
    const field = document.querySelector(`#member form.each [name="${key}"]`);
    return field && field.labels.length ? field.labels[0].firstChild.textContent.trim() : key.replaceAll("_", " ");
  };

  // ---- arrow keys step a size as a drag does
  document.addEventListener("keydown", (event) => {
    const field = event.target.closest("input.figure");
    if (!field || !field.dataset.mm || (event.key !== "ArrowUp" && event.key !== "ArrowDown")) return;
    event.preventDefault();
    const step = inches() ? 25.4 / (event.altKey ? 64 : 16) : event.altKey ? 0.1 : 0.5;
    const mm = Number(field.dataset.mm) + (event.key === "ArrowUp" ? step : -step);
    if (mm <= 0) return;
    field.dataset.mm = String(mm);
    field.value = page.figure(snapped(mm, true));
    clearTimeout(stepping);
    stepping = setTimeout(() => field.dispatchEvent(new Event("change", { bubbles: true })), 350);
  });
  let stepping = 0;

  Object.assign(page, { inches, snapped, spell, finger, keepSize, inWords, word });
})();
