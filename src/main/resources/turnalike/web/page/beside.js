// The photograph behind the drawing, a search that goes on, what others did meanwhile, and taking back by keys.
(() => {
  "use strict";
  const page = window.turnalikePage;

  // ---- the photograph behind the drawing: whether it is shown is remembered on this machine
  const backed = () => localStorage.getItem("turnalike-behind") !== "no";
  const back = () => {
    page.root.classList.toggle("unbacked", !backed());
    const tick = document.getElementById("behind");
    if (tick) tick.checked = backed();
  };
  document.addEventListener("change", (event) => {
    if (event.target.id !== "behind") return;
    localStorage.setItem("turnalike-behind", event.target.checked ? "yes" : "no");
    back();
  });
  document.addEventListener("turnalike:redrawn", back);
  document.addEventListener("DOMContentLoaded", back);

  // ---- a search that goes on: its progress as it comes, its answer in its place when it is done
  let listening = null;
  const listen = () => {
    const set = document.getElementById("set");
    if (!set || !set.dataset.progress || listening) return;
    listening = new EventSource(set.dataset.progress);
    listening.addEventListener("progress", (event) => {
      const words = document.getElementById("progress");
      if (words) words.textContent = `Searching: ${event.data}`;
    });
    const end = async () => {
      listening.close();
      await page.free();
      listening = null;
      htmx.ajax("GET", document.getElementById("set").dataset.address, { target: "#set", swap: "outerHTML" });
    };
    listening.addEventListener("done", end);
  };
  document.addEventListener("htmx:load", listen);
  document.addEventListener("DOMContentLoaded", () => {
    page.show();
    page.fit();
    page.tellRoom();
  });

  // ---- coming back to a page that was left open: what others did meanwhile is shown, unless something is half typed here
  window.addEventListener("focus", async () => {
    const now = page.work();
    if (!now || [...now.querySelectorAll("input[id], textarea[id]")].some(page.isDirty)) return;
    const answer = await fetch(`/api${now.dataset.address}/changes`).catch(() => null);
    const told = answer && answer.ok ? await answer.json().catch(() => null) : null;
    const version = told ? told.version : 0;
    if (version > Number(page.work().dataset.version)) page.catchUp(version);
  });

  document.addEventListener("keydown", (event) => {
    const typing = event.target.closest("input, textarea, select");
    if (typing || !(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== "z") return;
    const button = document.getElementById(event.shiftKey ? "redo" : "undo");
    if (button && !button.disabled) {
      event.preventDefault();
      button.click();
    }
  });
})();
