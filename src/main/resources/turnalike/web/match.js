// Placing by hand: two pieces are swapped by dragging, by two presses or by keys, and the figures follow before anything is kept.
(() => {
  "use strict";
  const set = () => document.getElementById("set");
  const form = () => document.getElementById("hand");
  const figures = () => document.getElementById("figures");
  const row = (label) => [...document.querySelectorAll("#hand tr[data-piece]")].find((each) => each.dataset.piece === label);

  let picked = "";
  let shown = "";
  let target = "";
  let asking = null;
  let waiting = 0;

  /** The piece that something on the page stands for: a row, or a place in the picture. */
  const pieceOf = (node) => {
    const line = node && node.closest && node.closest("#hand tr[data-piece]");
    if (line) return line.dataset.piece;
    const place = node && node.closest && node.closest(".places-picture .place");
    const at = place && document.querySelector(`#hand tr[data-place="${place.dataset.place}"]`);
    return at ? at.dataset.piece : "";
  };

  const mark = () => {
    for (const line of document.querySelectorAll("#hand tr[data-piece]")) {
      line.classList.toggle("picked", line.dataset.piece === picked);
      line.classList.toggle("aimed", line.dataset.piece === target && target !== picked);
      const button = line.querySelector(".swap");
      if (button) {
        button.dataset.word ||= button.textContent; // as the page has it, in its own language
        button.textContent = !picked ? button.dataset.word : line.dataset.piece === picked ? "Put back" : "Put here";
      }
    }
    for (const place of document.querySelectorAll(".places-picture .place")) {
      const label = pieceOf(place);
      const line = row(label);
      place.classList.toggle("held", Boolean(line && line.classList.contains("held")));
      place.classList.toggle("picked", picked !== "" && label === picked);
      place.classList.toggle("aimed", target !== "" && label === target && target !== picked);
    }
  };

  /** Shows what a swap with that piece would come to; none shows the set as it stands again. */
  const aim = (label) => {
    if (label === target) return;
    target = label;
    mark();
    clearTimeout(waiting);
    if (asking) asking.abort();
    asking = null;
    if (!picked || !label || label === picked) {
      if (shown && figures()) figures().innerHTML = shown;
      shown = "";
      return;
    }
    waiting = setTimeout(() => attempt(picked, label), 30);
  };

  const attempt = async (one, other) => {
    const asked = new AbortController();
    asking = asked;
    const query = new URLSearchParams({ one, other });
    const answer = await fetch(`${set().dataset.address}/try?${query}`, { headers: { "HX-Request": "true" }, signal: asked.signal }).catch(() => null);
    if (!answer || answer.status === 204 || asked.signal.aborted || target !== other) return;
    const text = await answer.text();
    if (target !== other || !figures()) return;
    if (!shown) shown = figures().innerHTML;
    figures().innerHTML = text;
  };

  const pick = (label) => {
    picked = label;
    target = "";
    mark();
    window.turnalikePage.notice(label ? `Piece ${label} is picked up: choose the piece it changes places with. Esc puts it back.` : "");
  };
  const drop = () => {
    aim("");
    pick("");
  };

  /** Sends the form with what was done, and puts the page that comes back in place of this one. */
  const send = async (fields) => {
    const body = new URLSearchParams(new FormData(form()));
    body.delete("one");
    body.delete("other");
    for (const [name, value] of Object.entries(fields)) body.set(name, value);
    const focus = document.activeElement && document.activeElement.id;
    clearTimeout(waiting);
    if (asking) asking.abort();
    shown = "";
    picked = "";
    target = "";
    const answer = await fetch(form().action, { method: "POST", body }).catch(() => null);
    if (!answer) {
      window.turnalikePage.notice("The program does not answer. Start it and try again.");
      mark();
      return;
    }
    const page = new DOMParser().parseFromString(await answer.text(), "text/html");
    const main = page.getElementById("main");
    if (!answer.ok || !main || !page.getElementById("set")) {
      window.turnalikePage.notice((main || page.body).textContent.trim().replace(/\s+/g, " ").slice(0, 300));
      mark();
      return;
    }
    const here = document.getElementById("main");
    const from = document.querySelector("#hand .tall");
    const scrolled = from ? from.scrollTop : 0;
    here.innerHTML = main.innerHTML;
    const tall = document.querySelector("#hand .tall");
    if (tall) tall.scrollTop = scrolled;
    const back = focus && document.getElementById(focus);
    if (back) back.focus({ preventScroll: true });
    const done = document.querySelector("#undo").title;
    window.turnalikePage.notice(done ? `Done: ${done}. Undo takes it back.` : "");
    document.dispatchEvent(new CustomEvent("htmx:load"));
  };
  const swap = (one, other) => {
    if (one && other && one !== other) send({ one, other, swap: "true" });
  };

  document.addEventListener("click", (event) => {
    const button = event.target.closest("#hand .swap");
    if (!button || dragged) return;
    const label = pieceOf(button);
    if (!picked) pick(label);
    else if (picked === label) drop();
    else swap(picked, label);
  });
  document.addEventListener("submit", (event) => {
    const by = event.submitter;
    if (event.target !== form() || !by || !["hold", "release"].includes(by.name)) return;
    event.preventDefault();
    send({ [by.name]: by.value });
  });
  document.addEventListener("focusin", (event) => {
    if (picked && !dragging) aim(event.target.closest("#hand tr[data-piece]") ? pieceOf(event.target) : "");
  });

  document.addEventListener("keydown", (event) => {
    if (event.key === "Escape" && picked) {
      drop();
      return;
    }
    const line = event.target.closest("#hand tr[data-piece]");
    if (!line || event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.key === "ArrowDown" || event.key === "ArrowUp") {
      const next = event.key === "ArrowDown" ? line.nextElementSibling : line.previousElementSibling;
      const kind = event.target.classList.contains("swap") ? ".swap" : "button";
      const button = next && (next.querySelector(kind) || next.querySelector("button"));
      if (button) button.focus();
      event.preventDefault();
    } else if (event.key.toLowerCase() === "h") {
      const hold = line.querySelector("[name=hold], [name=release]");
      if (hold) send({ [hold.name]: hold.value });
    } else if (event.key.toLowerCase() === "s") {
      line.querySelector(".swap").click();
    }
  });

  // ---- dragging: from a place of the picture or a Swap button, onto any other place, row or button
  let dragging = null;
  let dragged = false;
  const carried = () => {
    let box = document.getElementById("carried");
    if (!box) {
      box = document.createElement("div");
      box.id = "carried";
      document.body.append(box);
    }
    return box;
  };
  /** The piece under a finger: a label in the picture is smaller than a fingertip, so the nearest within one counts. */
  const fingertip = 40;
  const pieceAt = (x, y) => {
    const under = document.elementFromPoint(x, y);
    const exact = pieceOf(under);
    if (exact || !under || !under.closest(".places-picture")) return exact;
    let nearest = null;
    let least = fingertip;
    for (const place of document.querySelectorAll(".places-picture .place")) {
      const box = place.getBoundingClientRect();
      const away = Math.hypot(box.x + box.width / 2 - x, box.y + box.height / 2 - y);
      if (box.width && away < least) {
        least = away;
        nearest = place;
      }
    }
    return nearest && pieceOf(nearest);
  };
  document.addEventListener("pointerdown", (event) => {
    const from = event.target.closest && event.target.closest("#hand .swap, .places-picture .place");
    dragged = false;
    if (!from || event.button !== 0 || !form()) return;
    dragging = { label: pieceOf(from), x: event.clientX, y: event.clientY };
    // A place of the picture may be the first of two that are pressed; a touch would else stay with what it began on.
    if (event.target.hasPointerCapture && event.target.hasPointerCapture(event.pointerId)) event.target.releasePointerCapture(event.pointerId);
  });
  document.addEventListener("touchmove", (event) => dragging && event.cancelable && event.preventDefault(), { passive: false });
  document.addEventListener("pointermove", (event) => {
    if (!dragging) return;
    if (!dragged && Math.hypot(event.clientX - dragging.x, event.clientY - dragging.y) < 8) return;
    if (!dragged) {
      dragged = true;
      pick(dragging.label);
    }
    const box = carried();
    box.textContent = `Piece ${dragging.label}`;
    box.style.left = `${event.clientX + 14}px`;
    box.style.top = `${event.clientY - 44}px`;
    aim(pieceAt(event.clientX, event.clientY));
  });
  const end = (event) => {
    if (!dragging) return;
    const label = dragging.label;
    const moved = dragged;
    dragging = null;
    const box = document.getElementById("carried");
    if (box) box.remove();
    const over = pieceAt(event.clientX, event.clientY);
    if (moved) {
      const keep = event.type === "pointerup" && over && over !== label;
      drop();
      if (keep) swap(label, over);
      setTimeout(() => {
        dragged = false;
      }, 0);
    } else if (event.type === "pointerup" && event.target.closest && event.target.closest(".places-picture .place")) {
      if (!picked) pick(label);
      else if (picked === label) drop();
      else swap(picked, label);
    }
  };
  document.addEventListener("htmx:load", mark);
  document.addEventListener("DOMContentLoaded", mark);
  document.addEventListener("pointerup", end);
  document.addEventListener("pointercancel", end);
  document.addEventListener("pointerover", (event) => {
    if (picked && !dragging && event.pointerType === "mouse") aim(pieceOf(event.target));
  });
})();
