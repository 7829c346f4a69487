// A stopwatch for a stage of the work: it runs on when the page is left, and what it took becomes a row of the table.
(() => {
  "use strict";
  const part = (id) => document.getElementById(id);
  const nameOf = `turnalike clock ${part("clock").dataset.job}`;
  const still = { spent: 0, since: 0 };
  let clock = still;
  try {
    clock = JSON.parse(localStorage.getItem(nameOf)) || still;
  } catch {
    // A browser that keeps nothing still times while the page is open.
  }
  if (clock.stage) part("clock-stage").value = clock.stage;
  if (clock.piece) part("clock-piece").value = clock.piece;

  const spent = () => clock.spent + (clock.since ? Date.now() - clock.since : 0);
  const say = (id, text) => {
    if (part(id).textContent !== text) part(id).textContent = text;
  };
  const tick = () => {
    const seconds = Math.floor(spent() / 1000);
    say("clock-time", `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, "0")}`);
    say("clock-go", clock.since ? "Stop and keep" : "Start ");
    part("clock-drop").disabled = !clock.since;
  };
  const set = (value) => {
    clock = value;
    try {
      localStorage.setItem(nameOf, JSON.stringify(clock));
    } catch {
      // As above.
    }
    tick();
  };
  const field = (column) => part(`times-next-${column}`);

  part("main").addEventListener("click", (event) => {
    if (event.target.id === "clock-drop") set(still);
    if (event.target.id !== "clock-go") return;
    const stage = part("clock-stage").value.trim();
    if (!stage) {
      part("clock-stage").focus();
      window.turnalikePage.notice("Name the stage first: milling, sanding.");
      return;
    }
    if (!clock.since) {
      set({ spent: 0, since: Date.now(), stage, piece: part("clock-piece").value.trim() });
      window.turnalikePage.notice("");
      return;
    }
    field("stage").value = stage;
    field("minutes").value = window.turnalikePage.figure(String(Math.max(0.01, Math.round(spent() / 600) / 100)));
    field("pieces").value = "";
    field("piece").value = part("clock-piece").value.trim();
    set(still);
    part("f-times-next").requestSubmit();
  });
  window.setInterval(tick, 500);
  tick();
})();
