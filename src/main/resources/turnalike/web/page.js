// What a page cannot do without a script: choosing and dragging in the drawing, and drawing it to the room there is.
(() => {
  "use strict";
  const root = document.documentElement;
  root.classList.add("scripted");

  const work = () => document.getElementById("work");
  const token = () => document.querySelector("meta[name=token]").content;

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
    const wide = root.clientWidth;
    const expected = room() || Math.floor(wide - 2 * Math.min(32, Math.max(12, wide * 0.02)) - 18);
    const drawing = document.getElementById("drawing");
    if (drawing) root.style.setProperty("--drawing", `${drawing.offsetHeight}px`);
    document.cookie = `turnalike-room=${Math.max(620, Math.min(2400, expected))}; path=/; max-age=31536000; samesite=strict`;
  };

  let turn = 0;
  let shown = 0;
  document.addEventListener("htmx:configRequest", (event) => {
    event.detail.turn = ++turn;
    event.detail.headers["X-Turnalike-Token"] = token();
    const left = event.detail.triggeringEvent;
    // Which field was left: it is kept by itself, whatever still stands refused beside it.
    if (event.detail.elt.matches("form.each") && left && left.type === "change" && left.target.name) event.detail.parameters["field"] = left.target.name;
    if (room()) event.detail.parameters["w"] = String(wanted());
    const now = work();
    if (!now) return;
    event.detail.headers["X-Turnalike-Parts"] = partsShown();
    if (event.detail.verb === "get") return;
    for (const [name, value] of [["version", now.dataset.version], ["member", now.dataset.selected]]) {
      if (event.detail.parameters[name] === undefined) event.detail.parameters[name] = value;
    }
  });

  // ---- parts of a job's page that have not changed are not sent again: the digests of those that stand here go with each request
  const standing = new Map();
  const partsShown = () => {
    const told = [];
    for (const [id, digest] of standing) {
      const part = document.getElementById(id);
      // One that shows what was refused is sent, so that it can be cleared.
      if (part && !part.querySelector(".wrong")) told.push(`${id}=${digest}`);
    }
    return told.join(" ");
  };
  /** Says whether what was left out of an answer is what stands here: two answers may have crossed each other. */
  const learnParts = (left) => {
    const told = document.getElementById("parts");
    const now = new Map(told ? told.dataset.told.split(" ").map((each) => each.split("=")) : []);
    const sound = left.every((id) => standing.get(id) === now.get(id));
    standing.clear();
    if (sound) now.forEach((digest, id) => standing.set(id, digest));
    return sound;
  };
  /** What every form of the page says is said once, from the page itself: so a form stays as it is from one state to the next. */
  const thinForms = () => {
    if (!window.htmx || !work()) return;
    for (const form of work().querySelectorAll("form[hx-post]")) {
      for (const name of ["token", "version", "member"]) form.querySelector(`input[type=hidden][name=${name}]`)?.remove();
    }
  };
  document.addEventListener("DOMContentLoaded", thinForms);

  const notice = (words) => {
    document.getElementById("notice").textContent = words;
  };
  document.addEventListener("htmx:sendError", () => notice("The program does not answer. What you typed is still here; start it and try again."));
  document.addEventListener("htmx:responseError", (event) => {
    const told = new DOMParser().parseFromString(event.detail.xhr.responseText, "text/html");
    notice(told.body.textContent.trim().slice(0, 300) || "That could not be done.");
  });
  document.addEventListener("htmx:afterRequest", (event) => {
    if (event.detail.successful) notice("");
  });

  // Answers may cross each other and what is being typed: the newest state of the job stays, and so does whatever was typed meanwhile.
  const typed = new Map();
  const isDirty = (field) => field.type !== "hidden" && field.type !== "checkbox" && field.tagName !== "SELECT" && field.value !== (field.dataset.held ?? field.defaultValue);
  const keepTyped = (now, config) => {
    typed.clear();
    for (const field of now.querySelectorAll("input[id], textarea[id]")) {
      const sent = config.elt.contains(field) && config.parameters[field.name] === field.value;
      if (isDirty(field) && !sent) typed.set(field.id, field.value);
    }
  };
  // ---- putting an answer in place: it is redrawn with every edit, so what has not changed is left standing and needs no new layout
  const isHtmx = (name) => name.startsWith("hx-");
  /** Makes the attributes those that came; says whether any of htmx's changed. Whether a box is open is the person's own. */
  const likenAttributes = (now, next) => {
    let process = false;
    for (const { name, value } of next.attributes) {
      if (now.getAttribute(name) === value) continue;
      now.setAttribute(name, value);
      process = process || isHtmx(name);
    }
    if (now.attributes.length === next.attributes.length) return process;
    for (const { name } of [...now.attributes]) {
      if (next.hasAttribute(name) || (name === "open" && now.nodeName === "DETAILS")) continue;
      now.removeAttribute(name);
      process = process || isHtmx(name);
    }
    return process;
  };
  /** Makes a node what came; those that are new, or that htmx must look at again, are added to the list. */
  const liken = (now, next, changed) => {
    if ((next.dataset && "same" in next.dataset) || now.isEqualNode(next) || now.id === "grips") return;
    if (now.nodeName !== next.nodeName || now.id !== next.id || (next.dataset && "anew" in next.dataset)) {
      now.replaceWith(next);
      changed.push(next);
      return;
    }
    if (next.nodeType !== Node.ELEMENT_NODE) {
      now.nodeValue = next.nodeValue;
      return;
    }
    if (likenAttributes(now, next)) changed.push(now);
    const coming = idsOf(next);
    let old = now.firstChild;
    for (const child of [...next.childNodes]) {
      if (coming.size > 0 && child.id && old && old.id !== child.id) old = upTo(now, old, child.id);
      if (!old || (old.id && old.id !== child.id && coming.has(old.id))) {
        now.insertBefore(child, old);
        changed.push(child);
        continue;
      }
      const after = old.nextSibling;
      liken(old, child, changed);
      old = after;
    }
    while (old) old = removed(old);
  };
  // ---- while something is carried or on its way to be kept, what arrives from elsewhere waits: it would be pulled from under the hand
  const atHand = (is) => root.classList.toggle("at-hand", is);
  const free = async () => {
    while (root.classList.contains("at-hand")) await new Promise((later) => setTimeout(later, 50));
  };
  /** For a tab's own script. */
  window.turnalikePage = { liken, notice, atHand, free };
  const idsOf = (parent) => new Set([...parent.children].map((child) => child.id).filter((id) => id));
  /** Takes the child out; gives the one that followed it. */
  const removed = (child) => {
    const after = child.nextSibling;
    child.remove();
    return after;
  };
  /** What stood before the child of that name goes, so that it meets its own; where no such child follows, nothing does. */
  const upTo = (parent, from, id) => {
    let there = from;
    while (there && there.id !== id) there = there.nextSibling;
    if (!there) return from;
    while (from !== there) from = removed(from);
    return there;
  };
  /** While fewer settings may still be found: has the program look for longer, once no edit has come for a moment. */
  const seek = () => {
    const settings = document.querySelector("#settings[hx-get]");
    if (settings) htmx.trigger(settings, "turnalike:seek");
  };
  document.addEventListener("htmx:load", seek);
  const isActive = "[hx-get], [hx-post]";
  const process = (changed) => {
    // One by one: asked for all of it, htmx would look through every line of the drawing too.
    for (const node of changed) {
      if (node.nodeType !== Node.ELEMENT_NODE) continue;
      if (node.matches(isActive)) htmx.process(node);
      for (const inside of node.querySelectorAll(isActive)) htmx.process(inside);
    }
  };
  /** Every field shows what came with it, except those in which something else was typed meanwhile. */
  const resetFields = (fresh) => {
    for (const field of fresh.querySelectorAll("input, textarea")) {
      if (field.type === "checkbox") field.checked = field.defaultChecked;
      else if (isDirty(field) && !typed.has(field.id)) field.value = field.defaultValue;
    }
    for (const choice of fresh.querySelectorAll("option")) {
      if (choice.selected !== choice.defaultSelected) choice.selected = choice.defaultSelected;
    }
  };
  document.addEventListener("htmx:beforeSwap", (event) => {
    const now = work();
    const detail = event.detail;
    if (!now || !detail.shouldSwap || (detail.target.id !== "work" && detail.target.id !== "settings")) return;
    const text = detail.serverResponse;
    const came = Number((/data-version="(\d+)"/.exec(text) || [])[1] || 0);
    const here = Number(now.dataset.version);
    if (detail.target.id === "settings") {
      detail.shouldSwap = came >= here;
      if (detail.shouldSwap) standing.delete("settings");
      return;
    }
    detail.shouldSwap = false;
    if (came < here || (came === here && detail.requestConfig.turn < shown)) return;
    shown = detail.requestConfig.turn;
    keepTyped(now, detail.requestConfig);
    const active = document.activeElement;
    const at = active && active.id && now.contains(active) ? { id: active.id, from: active.selectionStart, to: active.selectionEnd } : null;
    const opened = [...now.querySelectorAll("details[open][id]")].map((box) => box.id);
    const answer = document.createElement("template");
    answer.innerHTML = text.slice(text.indexOf("<main"));
    stayRefused(now, answer.content, detail.requestConfig);
    const left = [...answer.content.querySelectorAll("div[data-same]")].map((part) => part.id);
    // Of a drawing, the groups that are as they were.
    const groups = answer.content.querySelector("#drawing [data-same]");
    const base = detail.requestConfig.headers["X-Turnalike-Parts"] || "";
    const changed = [];
    const drawn = standing.get("drawing");
    liken(now, answer.content.firstElementChild, changed);
    const sound = learnParts(left) && (!groups || drawn === ((/(?:^| )drawing=(\S+)/.exec(base) || [])[1]));
    resetFields(now);
    for (const [id, value] of typed) {
      const field = document.getElementById(id);
      if (field && field.value !== value) field.value = value;
    }
    const back = at && document.activeElement !== active && document.getElementById(at.id);
    if (back) {
      back.focus({ preventScroll: true });
      if (typeof at.from === "number") back.setSelectionRange(at.from, at.to);
    }
    process(changed);
    for (const id of opened) {
      const box = document.getElementById(id);
      if (box && !box.open) box.open = true;
    }
    show();
    seek();
    if (!sound) {
      standing.clear();
      select(now.dataset.selected);
    }
    document.dispatchEvent(new CustomEvent("turnalike:redrawn"));
  });

  /** What was refused in another form stays, with its reason, until it is mended or left out there. */
  const stayRefused = (now, coming, config) => {
    for (const box of now.querySelectorAll(".field.wrong")) {
      const field = box.querySelector("[id][name]");
      const next = typed.has(field.id) && !config.elt.contains(field) && coming.getElementById(field.id);
      if (next) next.closest(".field").replaceWith(box.cloneNode(true));
    }
  };
  // Enter leaves a field as the tabulator does: the change is kept, and the form not sent a second time.
  document.addEventListener("submit", (event) => {
    if (!event.target.matches("form.each") || document.activeElement === event.submitter) return;
    event.preventDefault();
    event.stopImmediatePropagation();
    // What was refused and not changed since is meant all the same: it is asked for once more.
    const field = document.activeElement;
    if (field !== changedNow && event.target.contains(field) && isDirty(field)) field.dispatchEvent(new Event("change", { bubbles: true }));
  }, true);
  let changedNow = null;
  document.addEventListener("change", (event) => {
    changedNow = event.target;
    setTimeout(() => (changedNow = null), 0);
  }, true);
  // A choice is taken when it is meant: not at each arrow key that passes one by, but when the list is left or Enter pressed.
  let browsing = null;
  document.addEventListener("keydown", (event) => {
    if (!event.target.matches("form.each select")) return;
    if (event.key === "Enter" && browsing === event.target) meant();
    else if (event.key.length === 1 || event.key.startsWith("Arrow") || event.key === "Home" || event.key === "End" || event.key.startsWith("Page")) browsing = event.target;
  });
  const meant = () => {
    const choice = browsing;
    browsing = null;
    if (choice && [...choice.options].some((each) => each.selected !== each.defaultSelected)) choice.dispatchEvent(new Event("change", { bubbles: true }));
  };
  document.addEventListener("pointerdown", () => (browsing = null), true);
  document.addEventListener("change", (event) => browsing === event.target && event.stopImmediatePropagation(), true);
  document.addEventListener("focusout", (event) => browsing === event.target && meant(), true);

  const redraw = (address) => htmx.ajax("GET", address, { target: "#work", swap: "outerHTML" });
  const select = (number) => redraw(`${work().dataset.address}?member=${number}`);

  const show = () => {
    const now = work();
    if (!now) return;
    for (const group of now.querySelectorAll(".lathe .member")) {
      group.classList.toggle("selected", group.dataset.member === now.dataset.selected);
    }
    grips();
    const chosen = `${now.dataset.address}?member=${now.dataset.selected}`;
    if (location.pathname === now.dataset.address && `${location.pathname}${location.search}` !== chosen) {
      // Reload, and coming back from another tab, find the member that was chosen.
      history.replaceState(history.state, "", chosen + location.hash);
      inSight();
    }
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

  // ---- handles by the keyboard: one slider over each, so that a screen reader meets them too
  const spell = (mm) => snapped(mm, true);
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
      grip.setAttribute("aria-label", `${key.replaceAll("_", " ")} of member ${number}`);
      grip.setAttribute("aria-valuemax", String(Math.max(1000, 2 * Number(mm))));
      tellGrip(grip);
    }
    for (const grip of [...box.children]) if (!left.has(grip.id)) grip.remove();
    // Where they lie is only seen round the one in focus: measured with every edit, it would have the page laid out twice.
    if (document.activeElement.classList.contains("grip")) placeGrips();
  };
  const tellGrip = (grip) => {
    grip.setAttribute("aria-valuenow", grip.dataset.mm);
    grip.setAttribute("aria-valuetext", `${spell(Number(grip.dataset.mm))} ${work().dataset.units}`);
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
    keepSize(number, key, spell(mm)).finally(() => {
      keeping = false;
      keepStep();
    });
  };
  document.addEventListener("keydown", (event) => {
    const grip = event.target.closest(".grip");
    const way = { ArrowUp: 1, ArrowRight: 1, ArrowDown: -1, ArrowLeft: -1 }[event.key];
    if (!grip || !way || event.ctrlKey || event.altKey || event.metaKey) return;
    event.preventDefault();
    const step = (inches() ? 25.4 / 64 : 0.5) * (event.shiftKey ? 4 : 1);
    const mm = (Math.round(Number(grip.dataset.mm) / step) + way) * step;
    if (mm <= 0) return;
    grip.dataset.mm = String(mm);
    tellGrip(grip);
    const { key, number } = grip.dataset;
    tell(`${key.replaceAll("_", " ")} ${spell(mm)} ${work().dataset.units}`);
    clearTimeout(gripping);
    stepped = { number, key, mm };
    gripping = setTimeout(keepStep, 200);
  });
  const tell = (words) => {
    const said = document.getElementById("said");
    if (said) said.textContent = words;
  };
  const keepSize = (number, key, value) => {
    const values = { member: number, version: work().dataset.version, [key]: value };
    const way = key === "length" ? "/boundary" : "";
    return htmx.ajax("POST", `${work().dataset.address}/member/${number}${way}`, { target: "#work", swap: "outerHTML", values });
  };
  document.addEventListener("turnalike:redrawn", () => {
    const reason = document.querySelector("#member .wrong .mend, #told li");
    if (reason && document.activeElement.classList.contains("grip")) tell(reason.textContent);
  });

  // ---- the run by the keyboard: choose, move, take out
  let follow = false;
  document.addEventListener("keydown", (event) => {
    const link = event.target.closest(".run a, .grip");
    if (!link || event.ctrlKey || event.altKey || event.metaKey) return;
    const chosen = Number(work().dataset.selected);
    if (event.key === "Delete") press("remove");
    else if (link.classList.contains("grip")) return;
    else if (event.key === "ArrowLeft" && event.shiftKey) press("left");
    else if (event.key === "ArrowRight" && event.shiftKey) press("right");
    else if (event.key === "ArrowLeft" && chosen > 1) select(chosen - 1);
    else if (event.key === "ArrowRight" && document.getElementById(`m-${chosen + 1}`)) select(chosen + 1);
    else return;
    event.preventDefault();
    follow = true;
  });
  const press = (id) => {
    const button = document.getElementById(id);
    if (button && !button.disabled) button.click();
  };
  document.addEventListener("turnalike:redrawn", () => {
    if (follow) document.getElementById(`m-${work().dataset.selected}`)?.focus({ preventScroll: true });
    follow = false;
  });

  // ---- larger and smaller
  document.addEventListener("click", (event) => {
    const button = event.target.closest("#larger, #smaller");
    if (!button) return;
    const before = work().dataset.width;
    zoom = Math.max(1, Math.min(8, button.id === "larger" ? zoom * 1.5 : zoom / 1.5));
    if (String(wanted()) !== before) select(work().dataset.selected).then(inSight);
  });

  // ---- a new member where the drawing is touched
  let placing = false;
  const place = (on) => {
    placing = on;
    document.getElementById("drawing").classList.toggle("placing", on);
    document.getElementById("touch").setAttribute("aria-pressed", String(on));
    notice(on ? `Touch the piece where the ${document.getElementById("insert").value} is to stand. Escape leaves it.` : "");
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
    const values = { kind: document.getElementById("insert").value, mm: mm.toFixed(4), version: work().dataset.version };
    place(false);
    htmx.ajax("POST", `${work().dataset.address}/member/${number}/insert-at`, { target: "#work", swap: "outerHTML", values });
  });
  document.addEventListener("keydown", (event) => placing && event.key === "Escape" && place(false));

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
      finger(event, document.getElementById(`m-${number}`).textContent);
    }, 350);
    resting = { x: event.clientX, y: event.clientY, timer };
  };
  const unrest = () => {
    if (resting) clearTimeout(resting.timer);
    resting = null;
  };
  document.addEventListener("touchmove", (event) => (drag || (carried && carried.byTouch)) && event.cancelable && event.preventDefault(), { passive: false });
  document.addEventListener("contextmenu", (event) => carried && carried.byTouch && event.preventDefault());
  document.addEventListener("pointerdown", (event) => {
    const lathe = event.target.closest("#drawing .lathe");
    unrest();
    if (!lathe || drag || placing || event.button !== 0 || !event.isPrimary) return;
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
    const side = !carried.to ? "" : carried.to < carried.number ? "before " : "after ";
    finger(event, over ? side + document.getElementById(`m-${over}`).textContent : "");
  });
  const setDown = (keep) => {
    const { number, to } = carried;
    carried = null;
    if (number) finger({}, "");
    if (!keep || !to) return;
    const values = { to, version: work().dataset.version };
    htmx.ajax("POST", `${work().dataset.address}/member/${number}/move`, { target: "#work", swap: "outerHTML", values });
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

  const fit = () => {
    const now = work();
    if (!now || !room()) return;
    if (Math.abs(wanted() - Number(now.dataset.width)) > 12) select(now.dataset.selected);
  };

  document.addEventListener("click", (event) => {
    const member = event.target.closest(".lathe .member");
    if (!member || placing || member.dataset.member === work().dataset.selected) return;
    select(member.dataset.member).then(() => {
      // Where the fields lie below the screen, they come into sight with the member they belong to.
      const fields = document.getElementById("member");
      if (fields.getBoundingClientRect().top > root.clientHeight - 120) fields.scrollIntoView({ block: "start" });
    });
  });
  // ---- dragging: one size, snapped to a step a turner works in, kept as one edit when it is let go
  const inches = () => work().dataset.units === "in";
  const fraction = (parts, under) => {
    let whole = Math.floor(parts / under);
    let over = parts % under;
    while (over && over % 2 === 0) {
      over /= 2;
      under /= 2;
    }
    return over ? `${whole ? whole + " " : ""}${over}/${under}` : String(whole);
  };
  /** The nearest step to that many millimetres, as it is typed. */
  const snapped = (mm, fine) => {
    if (inches()) {
      const under = fine ? 64 : 16;
      return fraction(Math.max(1, Math.round((mm / 25.4) * under)), under);
    }
    const step = fine ? 0.1 : 0.5;
    return String(Number((Math.max(1, Math.round(mm / step)) * step).toFixed(1)));
  };

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
  /** The value beside the finger, not under it. */
  const finger = (event, words) => {
    let told = document.getElementById("finger");
    if (!told) {
      told = document.createElement("output");
      told.id = "finger";
      told.setAttribute("aria-hidden", "true");
      document.body.append(told);
    }
    told.hidden = !words;
    if (!words) return;
    told.textContent = words;
    const above = event.pointerType === "touch" ? 84 : 48;
    told.style.left = `${Math.max(8, Math.min(root.clientWidth - told.offsetWidth - 8, event.clientX - told.offsetWidth / 2))}px`;
    told.style.top = `${event.clientY > above + 8 ? event.clientY - above : event.clientY + 40}px`;
  };
  const said = (of) => `${of.key} ${of.stopped ? of.good || of.value : of.value} ${work().dataset.units}${of.stopped ? ", as far as it goes" : ""}`;
  const moved = (event) => {
    drag.event = event;
    const dx = event.clientX - drag.x;
    const dy = event.clientY - drag.y;
    const perPx = 1 / (drag.unit * drag.scale);
    const wood = drag.along ? dx * perPx : -2 * dy * perPx;
    drag.value = snapped(drag.mm + wood, event.altKey);
    drag.far = drag.far || Math.hypot(dx, dy) > 4;
    finger(event, said(drag));
    preview();
  };
  /** Drawing, weight and warnings as they would be, one question at a time: what came meanwhile is asked about next. */
  const preview = async () => {
    const of = drag;
    if (!of || !of.far || of.asking || of.asked === of.value) return;
    of.asking = true;
    const value = of.value;
    const query = new URLSearchParams({ key: of.key, value, scale: String(of.scale), w: work().dataset.width });
    const answer = await fetch(`${work().dataset.address}/member/${of.number}/drag?${query}`).catch(() => null);
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
      notice(text);
    }
    finger(of.event, said(of));
    if (of.value !== value) preview();
  };
  /** The parts of the page that follow a finger. */
  const became = (text) => {
    const came = document.createElement("template");
    came.innerHTML = text;
    const changed = [];
    liken(document.querySelector("#drawing .lathe .drawing"), came.content.querySelector(".drawing"), changed);
    standing.delete("drawing");
    for (const id of ["misfits", "figures", "before-turning"]) {
      standing.delete(id);
      liken(document.getElementById(id), came.content.getElementById(id), changed);
    }
    show();
  };
  const let_go = (keep) => {
    const of = drag;
    drag = null;
    finger(of.event, "");
    notice("");
    const value = of.stopped && of.good ? of.good : of.value;
    if (!keep || !of.far || !value) {
      if (of.good) select(work().dataset.selected);
      return;
    }
    keepSize(of.number, of.key, value);
  };
  document.addEventListener("pointerdown", (event) => {
    const lathe = event.target.closest(".lathe");
    if (event.button !== 0 || !lathe || placing) return;
    const handle = nearest(event);
    if (!handle) return;
    event.preventDefault();
    unrest();
    carried = null;
    const told = handle.dataset;
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

  // ---- arrow keys step a size as a drag does
  document.addEventListener("keydown", (event) => {
    const field = event.target.closest("input.figure");
    if (!field || !field.dataset.mm || (event.key !== "ArrowUp" && event.key !== "ArrowDown")) return;
    event.preventDefault();
    const step = inches() ? 25.4 / (event.altKey ? 64 : 16) : event.altKey ? 0.1 : 0.5;
    const mm = Number(field.dataset.mm) + (event.key === "ArrowUp" ? step : -step);
    if (mm <= 0) return;
    field.dataset.mm = String(mm);
    field.value = snapped(mm, true);
    clearTimeout(stepping);
    stepping = setTimeout(() => field.dispatchEvent(new Event("change", { bubbles: true })), 350);
  });
  let stepping = 0;

  // ---- the photograph behind the drawing: whether it is shown is remembered on this machine
  const backed = () => localStorage.getItem("turnalike-behind") !== "no";
  const back = () => {
    root.classList.toggle("unbacked", !backed());
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

  document.addEventListener("htmx:load", show);
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
      await free();
      listening = null;
      htmx.ajax("GET", document.getElementById("set").dataset.address, { target: "#set", swap: "outerHTML" });
    };
    listening.addEventListener("done", end);
  };
  document.addEventListener("htmx:load", listen);
  let waiting = 0;
  window.addEventListener("resize", () => {
    clearTimeout(waiting);
    waiting = setTimeout(() => {
      fit();
      tellRoom();
    }, 200);
  });
  document.addEventListener("DOMContentLoaded", () => {
    show();
    fit();
    tellRoom();
  });

  // ---- coming back to a page that was left open: what others did meanwhile is shown, unless something is half typed here
  window.addEventListener("focus", async () => {
    const now = work();
    if (!now || [...now.querySelectorAll("input[id], textarea[id]")].some(isDirty)) return;
    const answer = await fetch(`${now.dataset.address}/version`).catch(() => null);
    const version = answer && answer.ok ? Number(await answer.text()) : 0;
    if (version > Number(work().dataset.version)) select(work().dataset.selected);
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
