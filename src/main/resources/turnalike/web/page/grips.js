// Handles by the keyboard: one slider over each, so that a screen reader meets them too.
(() => {
  "use strict";
  const page = window.turnalikePage;

  const grips = () => {
    const box = document.getElementById("grips");
    if (!box) return;
    const left = new Set();
    for (const handle of document.querySelectorAll("#drawing .lathe .handle")) {
      const { key, mm, number } = handle.dataset;
      const id = `grip-${key}`;
      left.add(id);
      let grip = document.getElementById(id);
      if (!grip) {
        grip = document.createElement("span");
        grip.id = id;
        grip.className = "grip";
        grip.tabIndex = 0;
        grip.setAttribute("role", "slider");
        grip.setAttribute("aria-valuemin", "0");
        box.append(grip);
      }
      grip.dataset.key = key;
      grip.dataset.number = number;
      // An answer to the step before must not take back the steps since.
      if (!stepped || stepped.key !== key || stepped.number !== number) grip.dataset.mm = mm;
      grip.setAttribute("aria-label", `Handle of member ${number}: ${page.word(key)}`);
      grip.setAttribute("aria-valuemax", String(Math.max(1000, 2 * Number(mm))));
      tellGrip(grip);
    }
    for (const grip of [...box.children]) if (!left.has(grip.id)) grip.remove();
    // Where they lie is only seen round the one in focus: measured with every edit, it would have the page laid out twice.
    if (document.activeElement.classList.contains("grip")) placeGrips();
  };
  const tellGrip = (grip) => {
    grip.setAttribute("aria-valuenow", grip.dataset.mm);
    grip.setAttribute("aria-valuetext", page.inWords(page.spell(Number(grip.dataset.mm))));
  };
  const placeGrips = () => {
    const sheet = document.getElementById("drawing");
    if (!sheet) return;
    const origin = sheet.getBoundingClientRect();
    for (const grip of document.querySelectorAll(".grip")) {
      const handle = document.querySelector(`#drawing .handle[data-key="${grip.dataset.key}"]`);
      if (!handle) continue;
      const box = handle.getBoundingClientRect();
      grip.style.left = `${box.left + box.width / 2 - origin.left - sheet.clientLeft}px`;
      grip.style.top = `${box.top + box.height / 2 - origin.top - sheet.clientTop}px`;
    }
  };
  document.addEventListener("focusin", (event) => event.target.classList.contains("grip") && placeGrips());
  document.addEventListener("scroll", (event) => event.target.matches && event.target.matches("#drawing .lathe") && placeGrips(), true);
  let gripping = 0;
  let stepped = null;
  let keeping = false;
  /** One step after another: the next is told apart from somebody else's edit only once the last one's answer has come. */
  const keepStep = () => {
    if (keeping || !stepped) return;
    const { number, key, mm } = stepped;
    stepped = null;
    keeping = true;
    page.keepSize(number, key, page.spell(mm)).finally(() => {
      keeping = false;
      keepStep();
    });
  };
  document.addEventListener("keydown", (event) => {
    const grip = event.target.closest(".grip");
    const way = { ArrowUp: 1, ArrowRight: 1, ArrowDown: -1, ArrowLeft: -1 }[event.key];
    if (!grip || !way || event.ctrlKey || event.altKey || event.metaKey) return;
    event.preventDefault();
    const step = (page.inches() ? 25.4 / 64 : 0.5) * (event.shiftKey ? 4 : 1);
    const mm = (Math.round(Number(grip.dataset.mm) / step) + way) * step;
    if (mm <= 0) return;
    grip.dataset.mm = String(mm);
    tellGrip(grip);
    const { key, number } = grip.dataset;
    page.tell(`${page.word(key)} ${page.inWords(page.spell(mm))}`);
    clearTimeout(gripping);
    stepped = { number, key, mm };
    gripping = setTimeout(keepStep, 200);
  });
  document.addEventListener("turnalike:redrawn", () => {
    const reason = document.querySelector("#member .wrong .mend, #told li");
    if (reason && document.activeElement.classList.contains("grip")) page.tell(reason.textContent);
  });

  Object.assign(page, { grips });
})();
