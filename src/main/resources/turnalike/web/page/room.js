// The room there is for the drawing, and the drawing larger and smaller in it.
(() => {
  "use strict";
  const page = window.turnalikePage;

  /** The room for the drawing, in whole pixels. */
  const room = () => {
    const lathe = document.querySelector(".lathe");
    return lathe ? Math.floor(lathe.clientWidth) : 0;
  };

  /** How many times as wide as its room the drawing is: a long post is looked at piece by piece. */
  let zoom = 1;
  const wanted = () => Math.max(620, Math.min(9600, Math.round(Math.min(2400, room()) * zoom)));

  /** The room a drawing will have on a job's page, told to the server with the next page, so that it need not be drawn twice. */
  const tellRoom = () => {
    const wide = page.root.clientWidth;
    const expected = room() || Math.floor(wide - 2 * Math.min(32, Math.max(12, wide * 0.02)) - 18);
    const drawing = document.getElementById("drawing");
    if (drawing) page.root.style.setProperty("--drawing", `${drawing.offsetHeight}px`);
    document.cookie = `turnalike-room=${Math.max(620, Math.min(2400, expected))}; path=/; max-age=31536000; samesite=strict`;
  };

  /** On a long post drawn large: what is chosen is looked at. */
  const inSight = () => {
    const lathe = document.querySelector("#drawing .lathe");
    const member = document.querySelector("#drawing .member.selected");
    if (!lathe || !member || lathe.scrollWidth <= lathe.clientWidth + 2) return;
    const box = member.getBoundingClientRect();
    const room = lathe.getBoundingClientRect();
    if (box.left < room.left || box.right > room.right) lathe.scrollLeft += box.left + box.width / 2 - room.left - room.width / 2;
  };

  // ---- larger and smaller
  document.addEventListener("click", (event) => {
    const button = event.target.closest("#larger, #smaller");
    if (!button) return;
    const before = page.work().dataset.width;
    zoom = Math.max(1, Math.min(8, button.id === "larger" ? zoom * 1.5 : zoom / 1.5));
    if (String(wanted()) !== before) page.select(page.work().dataset.selected).then(inSight);
  });

  const fit = () => {
    const now = page.work();
    if (!now || !room()) return;
    if (Math.abs(wanted() - Number(now.dataset.width)) > 12) page.select(now.dataset.selected);
  };

  let waiting = 0;
  window.addEventListener("resize", () => {
    clearTimeout(waiting);
    waiting = setTimeout(() => {
      fit();
      tellRoom();
    }, 200);
  });

  Object.assign(page, { room, wanted, tellRoom, inSight, fit });
})();
