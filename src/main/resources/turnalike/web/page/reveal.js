// A part of the page that an address or a button points at is opened and brought into sight.
(() => {
  "use strict";
  const page = window.turnalikePage;
  const SETTLES_MS = 1500; // the drawing finds its room, and what lies out of sight is laid out

  let until = 0;
  const reveal = (hash) => {
    const box = hash.length > 1 && page.work() && document.getElementById(hash.slice(1));
    if (!box || !box.matches("#work details")) return;
    box.open = true;
    box.scrollIntoView({ block: "start", behavior: "instant" });
    box.querySelector("summary").focus({ preventScroll: true });
  };
  const begin = (hash) => {
    until = performance.now() + SETTLES_MS;
    reveal(hash);
  };
  window.addEventListener("load", () => begin(location.hash));
  window.addEventListener("hashchange", () => begin(location.hash));
  document.addEventListener("click", (event) => {
    const link = event.target.closest('a[href^="#"]');
    if (link) begin(link.hash);
  });
  // Whoever has begun to do something is not taken elsewhere.
  for (const deed of ["pointerdown", "keydown", "wheel"]) document.addEventListener(deed, () => { until = 0; }, { passive: true });
  document.addEventListener("turnalike:redrawn", () => {
    if (performance.now() < until) reveal(location.hash);
  });
})();
