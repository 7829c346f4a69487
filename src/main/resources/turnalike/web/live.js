// What another bench does to the job that is shown here appears here, unless something is half typed: then it is told, with a button.
(() => {
  "use strict";
  const job = /^\/jobs\/[0-9a-z]{4}-[0-9a-z]{4}-[0-9a-z]{4}/.exec(location.pathname);
  if (!job) return;
  const SETTLES_MS = 300; // an edit made here is answered within it, as a rule
  const work = () => document.getElementById("work");
  const version = () => {
    const shown = work() || document.querySelector("input[name=version]");
    return shown ? Number(shown.dataset.version || shown.value) : 0;
  };
  let seen = version();
  let asking = null;

  const fields = "input:not([type=hidden]):not([type=checkbox]):not([type=radio]):not([type=file]), textarea";
  const isTyped = () => [...document.querySelectorAll(fields)].some((field) => field.value !== (field.dataset.held ?? field.defaultValue));
  const isBusy = () => isTyped() || document.activeElement !== document.body || Boolean(document.querySelector("dialog[open]"));

  const pause = (ms) => new Promise((done) => setTimeout(done, ms));

  const tell = (what) => {
    const notice = document.getElementById("notice");
    notice.textContent = `Changed elsewhere: ${what}. `;
    const show = document.createElement("button");
    show.type = "button";
    show.textContent = "Show it";
    show.addEventListener("click", () => location.reload());
    notice.append(show);
  };

  const show = (what) => {
    // The job's own page brings itself up to date without losing its place.
    if (work() ? isTyped() : isBusy()) tell(what);
    else if (work()) window.dispatchEvent(new Event("focus"));
    else location.reload();
  };

  const ask = async () => {
    while (document.visibilityState === "visible") {
      asking = new AbortController();
      const answer = await fetch(`/api${job[0]}/changes?seen=${seen}`, { signal: asking.signal }).catch(() => null);
      if (!answer || answer.status >= 300) {
        if (asking.signal.aborted || (answer && answer.status < 500)) break;
        await pause(2000); // the program was stopped, or its database: it is asked again
        continue;
      }
      const told = await answer.json().catch(() => null);
      if (!told) await pause(2000); // cut off where the program was stopped
      if (!told || !told.changed) continue;
      seen = told.version;
      await pause(SETTLES_MS);
      await window.turnalikePage.free();
      if (seen > version()) show(told.what);
      else seen = Math.max(seen, version());
    }
    asking = null;
  };

  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState !== "visible") asking && asking.abort();
    else if (!asking) ask();
  });
  window.addEventListener("pagehide", () => asking && asking.abort());
  window.addEventListener("load", () => {
    if (seen > 0) ask();
  });
})();
