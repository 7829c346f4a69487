// A new member where the drawing is touched; the chosen one carried to another place in the run.
(() => {
  "use strict";
  const page = window.turnalikePage;

  // ---- a new member where the drawing is touched
  let placing = false;
  const kind = () => document.getElementById("insert").selectedOptions[0].textContent;
  const place = (on) => {
    placing = on;
    document.getElementById("drawing").classList.toggle("placing", on);
    document.getElementById("touch").setAttribute("aria-pressed", String(on));
    page.notice(on ? `Touch the piece where the ${kind()} is to stand; the button once more leaves it.` : "");
  };
  /** The place along the piece in millimetres, and the member there. */
  const touched = (event) => {
    const sheet = document.getElementById("drawing");
    const drawing = sheet.querySelector(".drawing");
    const matrix = drawing.getScreenCTM();
    const mm = ((event.clientX - matrix.e) / matrix.a - Number(sheet.dataset.side)) / Number(sheet.dataset.scale);
    let number = 1;
    for (const member of sheet.querySelectorAll(".member")) {
      if (member.getBoundingClientRect().left <= event.clientX) number = Number(member.dataset.member);
    }
    return { mm: Math.max(0, mm), number };
  };
  document.addEventListener("click", (event) => {
    if (event.target.closest("#touch")) {
      place(!placing);
      return;
    }
    if (!placing || !event.target.closest("#drawing .lathe")) return;
    const { mm, number } = touched(event);
    place(false);
    page.send(`/member/${number}/insert-at`, { kind: document.getElementById("insert").value, mm: mm.toFixed(4) });
  });
  document.addEventListener("keydown", (event) => placing && event.key === "Escape" && place(false));
  // Whatever comes meanwhile is drawn as if nothing were to be placed.
  document.addEventListener("htmx:afterRequest", () => placing && place(true));

  // ---- the chosen member dragged to another place in the run; what lies beside the piece drags the drawing
  let carried = null;
  // A finger that rests on a member picks it up; one that moves at once scrolls, as everywhere.
  let resting = null;
  const rest = (event, lathe, member) => {
    if (!member) return;
    const number = Number(member.dataset.member);
    const timer = setTimeout(() => {
      resting = null;
      carried = { lathe, from: event.clientX, at: lathe.scrollLeft, number, to: 0, byTouch: true };
      page.finger(event, document.getElementById(`m-${number}`).textContent);
    }, 350);
    resting = { x: event.clientX, y: event.clientY, timer };
  };
  /** What is about to be carried is not: a handle is dragged instead. */
  const setAside = () => {
    unrest();
    carried = null;
  };
  const unrest = () => {
    if (resting) clearTimeout(resting.timer);
    resting = null;
  };
  document.addEventListener("touchmove", (event) => (page.isDragging() || (carried && carried.byTouch)) && event.cancelable && event.preventDefault(), { passive: false });
  document.addEventListener("contextmenu", (event) => carried && carried.byTouch && event.preventDefault());
  document.addEventListener("pointerdown", (event) => {
    const lathe = event.target.closest("#drawing .lathe");
    unrest();
    if (!lathe || page.isDragging() || placing || event.button !== 0 || !event.isPrimary) return;
    const member = event.target.closest(".member");
    if (event.pointerType === "touch") {
      rest(event, lathe, member);
      return;
    }
    if (member && !member.classList.contains("selected")) return;
    carried = { lathe, from: event.clientX, at: lathe.scrollLeft, number: member ? Number(member.dataset.member) : 0, to: 0 };
  });
  document.addEventListener("pointermove", (event) => {
    if (resting && Math.hypot(event.clientX - resting.x, event.clientY - resting.y) > 10) unrest();
    if (!carried) return;
    const gone = event.clientX - carried.from;
    if (!carried.number) {
      carried.lathe.scrollLeft = carried.at - gone;
      return;
    }
    const to = touched(event).number;
    carried.to = Math.abs(gone) > 24 && to !== carried.number ? to : 0;
    const over = carried.to || (carried.byTouch ? carried.number : 0);
    const name = over ? document.getElementById(`m-${over}`).textContent : "";
    page.finger(event, !carried.to ? name : carried.to < carried.number ? `Move before ${name}` : `Move after ${name}`);
  });
  const setDown = (keep) => {
    const { number, to } = carried;
    carried = null;
    if (number) page.finger({}, "");
    if (!keep || !to) return;
    page.send(`/member/${number}/move`, { to });
  };
  document.addEventListener("pointerup", () => {
    unrest();
    if (carried) setDown(true);
  });
  document.addEventListener("pointercancel", () => {
    unrest();
    if (carried) setDown(false);
  });
  document.addEventListener("keydown", (event) => carried && event.key === "Escape" && setDown(false));

  Object.assign(page, { isPlacing: () => placing, setAside });
})();
