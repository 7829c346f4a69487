// The bench view: one cut at a time, worked with one finger, one key or a foot pedal. What is weighed is put in a queue in this browser first
// and sent from there, so that a lost connection loses nothing; each entry carries a number of its own, so that the program keeps it once.
(() => {
  "use strict";
  const bench = document.getElementById("bench");
  const steps = Array.from(document.querySelectorAll(".step"));
  const form = document.getElementById("entry");
  const fields = Array.from(form.querySelectorAll("input[data-figure]"));
  const part = (id) => document.getElementById(id);
  const token = () => document.querySelector("meta[name=token]").content;
  document.documentElement.classList.add("scripted");

  // A browser that keeps nothing (a private window) still works until it is closed.
  const shelf = new Map();
  const nameOf = (name) => `turnalike ${bench.dataset.job} ${name}`;
  const keep = (name, value) => {
    shelf.set(name, value);
    try {
      localStorage.setItem(nameOf(name), JSON.stringify(value));
    } catch {
      part("state").dataset.shelf = "none";
    }
  };
  const kept = (name, otherwise) => {
    if (shelf.has(name)) return shelf.get(name);
    try {
      const text = localStorage.getItem(nameOf(name));
      return text === null ? otherwise : JSON.parse(text);
    } catch {
      return otherwise;
    }
  };

  // Which cut.
  let at = Math.min(kept("at", 0), steps.length - 1);
  const isLast = () => at === steps.length - 1;
  const show = () => {
    steps.forEach((step, index) => step.classList.toggle("now", index === at));
    part("where").textContent = `Cut ${at + 1} of ${steps.length}`;
    part("back").disabled = at === 0;
    part("next").textContent = isLast() ? "First cut" : "Next ";
    keep("at", at);
    window.scrollTo(0, 0);
    if (isLast()) fields[0].focus();
  };
  const go = (by) => {
    at = isLast() && by > 0 ? 0 : Math.max(0, Math.min(steps.length - 1, at + by));
    if (document.activeElement instanceof HTMLElement && document.activeElement.matches("input")) document.activeElement.blur();
    show();
    start();
  };
  part("back").addEventListener("click", () => go(-1));
  part("next").addEventListener("click", () => go(1));
  for (const step of steps) {
    step.querySelector(".face")?.addEventListener("click", () => go(1));
  }

  // Pedals type what a presenter's clicker types.
  document.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const typing = event.target instanceof Element && event.target.closest("input, select, textarea");
    const forth = ["PageDown", ...(typing ? [] : ["ArrowRight", "ArrowDown", " "])];
    const back = ["PageUp", ...(typing ? [] : ["ArrowLeft", "ArrowUp", "Backspace"])];
    const enter = event.key === "Enter" && (event.target === document.body || event.target === document.documentElement);
    if (forth.includes(event.key) || enter) {
      event.preventDefault();
      go(1);
    } else if (back.includes(event.key)) {
      event.preventDefault();
      go(-1);
    }
  });

  // Which piece, and how long it takes.
  let piece = kept("piece", bench.dataset.piece);
  let clock = kept("clock", { spent: 0, since: 0 });
  const spent = () => clock.spent + (clock.since ? Date.now() - clock.since : 0);
  const two = (number) => String(number).padStart(2, "0");
  const tick = () => {
    const seconds = Math.floor(spent() / 1000);
    const text = `${Math.floor(seconds / 60)}:${two(seconds % 60)}`;
    if (part("time").textContent !== text) part("time").textContent = text;
  };
  const setClock = (value) => {
    clock = value;
    keep("clock", clock);
    part("timer").setAttribute("aria-pressed", String(clock.since > 0));
    part("timer-word").textContent = clock.since ? "Pause " : spent() ? "Go on" : "Start ";
    tick();
  };
  const start = () => {
    if (!clock.since && !clock.spent) setClock({ spent: 0, since: Date.now() });
  };
  part("timer").addEventListener("click", () => {
    setClock(clock.since ? { spent: spent(), since: 0 } : { spent: clock.spent, since: Date.now() });
  });
  window.setInterval(tick, 500);

  const setPiece = (label) => {
    piece = label;
    keep("piece", piece);
    part("piece").textContent = piece;
    part("piece-field").value = piece;
    part("of").hidden = !(Number(piece) <= Number(part("of").dataset.wanted));
  };
  const shifted = (by) => (/^\d{1,6}$/.test(piece) ? String(Math.max(1, Number(piece) + by)) : piece);
  part("piece-less").addEventListener("click", () => setPiece(shifted(-1)));
  part("piece-more").addEventListener("click", () => setPiece(shifted(1)));
  part("piece-field").addEventListener("change", (event) => {
    const label = event.target.value.trim();
    if (label) setPiece(label);
    else event.target.value = piece;
  });

  // What is entered.
  const say = (words, grave) => {
    part("said").textContent = words;
    part("said").classList.toggle("grave", Boolean(grave));
  };
  const queue = () => kept("queue", []);
  const waiting = () => {
    const all = queue();
    const refused = all.filter((each) => each.refused).length;
    const state = part("state");
    state.textContent = refused
      ? `${refused} to mend `
      : all.length
        ? `${all.length} waiting to be sent `
        : "all kept ";
    state.classList.toggle("grave", all.length > 0);
    part("takeback").disabled = !kept("last", "");
  };
  const serial = () => {
    const bytes = crypto.getRandomValues(new Uint8Array(12));
    return Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");
  };

  let sending = false;
  const ask = (method, below, body) =>
    fetch(bench.dataset.api + below, { method, body, headers: { "Content-Type": "application/json", "X-Turnalike-Token": token() } });
  /** An entry as the program takes it. A clock that cannot be right is left out: the figures matter more. */
  const asSent = ({ entry, sure, values: { piece, minutes, ...figures } }) => {
    const clock = Number(minutes);
    return JSON.stringify({ entry, ask: !sure, pieces: [{ piece, figures, ...(clock >= 0.01 && clock <= 10000 ? { minutes: clock } : {}) }] });
  };
  /** What is wrong, by the words that stand over the field. */
  const told = ({ where, what, mend }) => {
    const label = document.querySelector(`label[for="figure-${CSS.escape(where)}"]`);
    return `${label ? label.textContent : where}: ${what}; ${mend}`;
  };
  const settle = (entry, change) => keep("queue", queue().flatMap((each) => (each.entry === entry ? change(each) : [each])));
  const send = async () => {
    if (sending) return;
    sending = true;
    try {
      for (let next = queue().find((each) => !each.refused); next; next = queue().find((each) => !each.refused)) {
        const sent = next;
        const answer = await ask("POST", "/pieces", asSent(sent));
        if (answer.ok) {
          const { kept_before: before } = await answer.json();
          settle(sent.entry, () => []);
          say(before ? `Piece ${sent.values.piece} was kept already.` : `Piece ${sent.values.piece} is kept.`, false);
        } else if (answer.status === 422) {
          const text = (await answer.json()).problems.map(told).join(" ");
          settle(sent.entry, (each) => [{ ...each, refused: text }]);
          say(`Piece ${sent.values.piece} is not kept: ${text}`, true);
          mend(sent, `Piece ${sent.values.piece} is not kept: ${text}`);
        } else if (answer.status === 409) {
          askAbout(sent, (await answer.json()).problems.map((each) => each.what).join(" "));
        } else {
          const denied = answer.status === 403;
          say(denied ? "Not sent yet: load the page again. Nothing is lost." : "Not sent yet: the program has trouble. Nothing is lost.", true);
          return;
        }
      }
    } catch {
      say("No connection to the program. Entries wait here and are sent when it is back.", true);
    } finally {
      sending = false;
      waiting();
    }
  };
  /** Puts what is not kept back where it can be mended. */
  const mend = (sent, words) => {
    at = steps.length - 1;
    setPiece(sent.values.piece);
    for (const field of fields) field.value = sent.values[field.name] || "";
    settle(sent.entry, () => []);
    show();
    say(words, true);
  };
  /** What reads like a slip comes back too; sent once more as it is, it is meant. */
  let asked = null;
  const setAsked = (sent) => {
    asked = sent;
    part("keep").textContent = asked ? "Keep it as it is" : "Keep this piece";
  };
  const askAbout = (sent, questions) => {
    mend(sent, `Piece ${sent.values.piece} is not kept yet. ${questions}`);
    setAsked(sent.values);
  };
  const isMeant = (values) => asked !== null && [...fields.map((field) => field.name), "piece"].every((name) => (values[name] || "") === (asked[name] || ""));
  form.addEventListener("input", () => asked && setAsked(null));

  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const values = {};
    for (const field of fields) if (field.value.trim()) values[field.name] = field.value.trim();
    if (!Object.keys(values).length) {
      say("Nothing is entered yet.", true);
      fields[0].focus();
      return;
    }
    values.piece = piece;
    const sure = isMeant(values);
    if (sure && asked.minutes) values.minutes = asked.minutes;
    else if (spent() >= 1000) values.minutes = (spent() / 60000).toFixed(3);
    setAsked(null);
    const entry = serial();
    keep("queue", [...queue(), { entry, sure, values }]);
    keep("last", entry);
    form.reset();
    say(`Piece ${piece} is entered.`, false);
    setPiece(shifted(1));
    setClock({ spent: 0, since: 0 });
    at = 0;
    show();
    waiting();
    send();
  });
  // An instrument types its figure and presses Enter: on to the next field, and from the last one in.
  fields.forEach((field, index) => {
    field.addEventListener("keydown", (event) => {
      if (event.key !== "Enter") return;
      event.preventDefault();
      const next = fields[index + 1];
      if (next) next.focus();
      else form.requestSubmit();
    });
  });

  part("takeback").addEventListener("click", async () => {
    const entry = kept("last", "");
    const isWaiting = queue().some((each) => each.entry === entry);
    if (isWaiting && !sending) {
      settle(entry, () => []);
      say("Taken back.", false);
      keep("last", "");
    } else {
      try {
        const answer = await ask("DELETE", `/entries/${entry}`);
        if (answer.ok) {
          say("Taken back.", false);
          keep("last", "");
        } else if (answer.status === 409) {
          say("Something else was done since: take it back in the office, or enter the piece again.", true);
        } else {
          say(told(await answer.json()), true);
        }
      } catch {
        say("No connection: it cannot be taken back just now.", true);
      }
    }
    waiting();
  });

  // A browser says "online" before the first request gets through: asked again soon, and as long as anything waits.
  window.addEventListener("online", send);
  window.setInterval(() => {
    if (queue().some((each) => !each.refused)) send();
  }, 2000);

  // The screen.
  const awake = async () => {
    const word = part("awake");
    if (!("wakeLock" in navigator)) {
      word.textContent = "This browser may let the screen sleep: lengthen its time in the device's settings.";
      return;
    }
    try {
      await navigator.wakeLock.request("screen");
      word.textContent = "The screen stays awake.";
    } catch {
      word.textContent = "The screen may sleep: touch it to wake it.";
    }
  };
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible") awake();
  });
  awake();

  // So that the page itself opens again without a connection, where the browser allows it.
  if ("serviceWorker" in navigator && window.isSecureContext) {
    navigator.serviceWorker.register(bench.dataset.worker, { scope: location.pathname }).then(async () => {
      const registration = await navigator.serviceWorker.ready;
      const files = Array.from(document.querySelectorAll("link[rel=stylesheet], script[src]"), (each) => each.href || each.src);
      registration.active.postMessage([location.href, ...files]);
    });
  }

  setPiece(piece);
  setClock(clock);
  show();
  waiting();
  send();
})();
