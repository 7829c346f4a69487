// Dragging: one size, snapped to a step a turner works in, kept as one edit when it is let go.
(() => {
  "use strict";
  const page = window.turnalikePage;

  const nearest = (event) => {
    let best = null;
    let least = 24;
    for (const handle of document.querySelectorAll(".lathe .handle")) {
      const box = handle.getBoundingClientRect();
      const away = Math.hypot(event.clientX - (box.left + box.width / 2), event.clientY - (box.top + box.height / 2));
      if (away < least) {
        least = away;
        best = handle;
      }
    }
    return best;
  };

  let drag = null;
  const said = (of) => {
    const size = `${page.word(of.key)} ${page.inWords(of.stopped ? of.good || of.value : of.value)}`;
    return of.stopped ? `As far as it goes: ${size}` : size;
  };
  const moved = (event) => {
    drag.event = event;
    const dx = event.clientX - drag.x;
    const dy = event.clientY - drag.y;
    const perPx = 1 / (drag.unit * drag.scale);
    const wood = drag.along ? dx * perPx : -2 * dy * perPx;
    drag.value = page.snapped(drag.mm + wood, event.altKey);
    drag.far = drag.far || Math.hypot(dx, dy) > 4;
    page.finger(event, said(drag));
    preview();
  };
  /** Drawing, weight and warnings as they would be, one question at a time: what came meanwhile is asked about next. */
  const preview = async () => {
    const of = drag;
    if (!of || !of.far || of.asking || of.asked === of.value) return;
    of.asking = true;
    const value = of.value;
    const query = new URLSearchParams({ key: of.key, value, scale: String(of.scale), w: page.work().dataset.width });
    const answer = await fetch(`${page.work().dataset.address}/member/${of.number}/drag?${query}`).catch(() => null);
    const text = answer ? await answer.text() : "";
    of.asking = false;
    of.asked = value;
    if (drag !== of) return;
    if (answer && answer.ok) {
      of.good = value;
      of.stopped = false;
      became(text);
    } else if (answer && answer.status === 422) {
      of.stopped = true;
      page.notice(text);
    }
    page.finger(of.event, said(of));
    if (of.value !== value) preview();
  };
  /** The parts of the page that follow a finger. */
  const became = (text) => {
    const came = document.createElement("template");
    came.innerHTML = text;
    const changed = [];
    page.liken(document.querySelector("#drawing .lathe .drawing"), came.content.querySelector(".drawing"), changed);
    page.forget("drawing");
    for (const id of ["misfits", "figures", "before-turning"]) {
      page.forget(id);
      page.liken(document.getElementById(id), came.content.getElementById(id), changed);
    }
    page.show();
  };
  const let_go = (keep) => {
    const of = drag;
    drag = null;
    page.atHand(false);
    page.finger(of.event, "");
    page.notice("");
    const value = of.stopped && of.good ? of.good : of.value;
    if (!keep || !of.far || !value) {
      if (of.good) page.select(page.work().dataset.selected);
      // Touched and not moved, a handle was not meant, but what lies below it.
      else if (keep && !of.far) page.touch(of.event.clientX, of.event.clientY);
      return;
    }
    page.keepSize(of.number, of.key, value, of.version);
  };
  document.addEventListener("pointerdown", (event) => {
    const lathe = event.target.closest(".lathe");
    if (event.button !== 0 || !lathe || page.isPlacing()) return;
    const handle = nearest(event);
    if (!handle) return;
    event.preventDefault();
    page.setAside();
    const told = handle.dataset;
    // What others do meanwhile waits, and what is kept in the end is told apart from it by the version it began with.
    page.atHand(true);
    drag = {
      event,
      x: event.clientX,
      y: event.clientY,
      along: handle.classList.contains("along"),
      unit: handle.ownerSVGElement.getScreenCTM().a,
      key: told.key,
      number: told.number,
      mm: Number(told.mm),
      scale: Number(told.scale),
      far: false,
      version: page.work().dataset.version,
    };
    // Of the drawing's frame, which stays: the handle itself is drawn anew on the way.
    lathe.setPointerCapture(event.pointerId);
  });
  document.addEventListener("pointermove", (event) => drag && moved(event));
  document.addEventListener("pointerup", () => drag && let_go(true));
  document.addEventListener("pointercancel", () => drag && let_go(false));
  document.addEventListener("keydown", (event) => {
    if (drag && event.key === "Escape") let_go(false);
  });

  Object.assign(page, { isDragging: () => drag !== null });
})();
