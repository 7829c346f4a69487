// Asking and answering: what goes with each request, and the newest state of the job put in place around what is being typed.
(() => {
  "use strict";
  const page = window.turnalikePage;

  let turn = 0;
  let shown = 0;
  document.addEventListener("htmx:configRequest", (event) => {
    event.detail.turn = ++turn;
    event.detail.headers["X-Turnalike-Token"] = page.token();
    const left = event.detail.triggeringEvent;
    // Which field was left: it is kept by itself, whatever still stands refused beside it.
    if (event.detail.elt.matches("form.each") && left && left.type === "change" && left.target.name) event.detail.parameters["field"] = left.target.name;
    if (page.room()) event.detail.parameters["w"] = String(page.wanted());
    const now = page.work();
    if (!now) return;
    event.detail.headers["X-Turnalike-Parts"] = page.partsShown();
    if (event.detail.verb === "get") return;
    for (const [name, value] of [["version", now.dataset.version], ["member", now.dataset.selected]]) {
      if (event.detail.parameters[name] === undefined) event.detail.parameters[name] = value;
    }
  });

  /** What every form of the page says is said once, from the page itself: so a form stays as it is from one state to the next. */
  const thinForms = () => {
    if (!window.htmx || !page.work()) return;
    for (const form of page.work().querySelectorAll("form[hx-post]")) {
      for (const name of ["token", "version", "member"]) form.querySelector(`input[type=hidden][name=${name}]`)?.remove();
    }
  };
  document.addEventListener("DOMContentLoaded", thinForms);

  // Answers may cross each other and what is being typed: the newest state of the job stays, and so does whatever was typed meanwhile.
  const typed = new Map();
  const keepTyped = (now, config) => {
    typed.clear();
    for (const field of now.querySelectorAll("input[id], textarea[id]")) {
      const sent = config.elt.contains(field) && config.parameters[field.name] === field.value;
      if (page.isDirty(field) && !sent) typed.set(field.id, field.value);
    }
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
      else if (page.isDirty(field) && !typed.has(field.id)) field.value = field.defaultValue;
    }
    // What is to be put in next is the person's own choice and tells nothing of the job.
    for (const choice of fresh.querySelectorAll("select:not([data-own]) option")) {
      if (choice.selected !== choice.defaultSelected) choice.selected = choice.defaultSelected;
    }
  };
  /** What a longer search found comes with how it was found, which stands elsewhere on the page; gives the settings alone. */
  const withoutWorkings = (text) => {
    const answer = document.createElement("template");
    answer.innerHTML = text;
    const coming = answer.content.getElementById("found");
    coming.remove();
    page.liken(document.getElementById("found"), coming, []);
    page.forget("found");
    page.forget("settings");
    return answer.innerHTML;
  };
  document.addEventListener("htmx:beforeSwap", (event) => {
    const now = page.work();
    const detail = event.detail;
    if (!now || !detail.shouldSwap || (detail.target.id !== "work" && detail.target.id !== "settings")) return;
    const text = detail.serverResponse;
    const came = Number((/data-version="(\d+)"/.exec(text) || [])[1] || 0);
    const here = Number(now.dataset.version);
    if (detail.target.id === "settings") {
      detail.shouldSwap = came >= here;
      if (detail.shouldSwap) detail.serverResponse = withoutWorkings(text);
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
    if (detail.requestConfig.verb === "get" && came === here) stayKept(now, answer.content);
    const left = [...answer.content.querySelectorAll("div[data-same]")].map((part) => part.id);
    // Of a drawing, the groups that are as they were.
    const groups = answer.content.querySelector("#drawing [data-same]");
    const base = detail.requestConfig.headers["X-Turnalike-Parts"] || "";
    const changed = [];
    const drawn = page.digest("drawing");
    page.liken(now, answer.content.firstElementChild, changed);
    const unsound = page.learnParts(left);
    if (groups && drawn !== (/(?:^| )drawing=(\S+)/.exec(base) || [])[1]) {
      page.forget("drawing");
      unsound.push("drawing");
    }
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
    // What is not what it should be is asked for, and nothing else: where the hand and the eye are, all stays.
    if (unsound.length > 0) page.select(now.dataset.selected);
    document.dispatchEvent(new CustomEvent("turnalike:redrawn"));
  });

  /** What was refused stays, with its reason, until it is mended or left out there; only the answer to its own form says anew what is wrong. */
  const stayRefused = (now, coming, config) => {
    const form = config.elt.matches("form") ? config.elt : null; // what the page asks by itself stands in none
    for (const box of now.querySelectorAll(".field.wrong")) {
      const field = box.querySelector("[id][name]");
      const next = typed.has(field.id) && !(form && form.contains(field)) && coming.getElementById(field.id);
      if (next) next.closest(".field").replaceWith(box.cloneNode(true));
    }
  };

  /** Asked for once more at the same version, a page does not take back what it just said was kept. */
  const stayKept = (now, coming) => {
    const next = coming.getElementById("work");
    if (!next || next.dataset.selected !== now.dataset.selected) return;
    const said = coming.getElementById("said");
    if (said && !said.textContent) said.textContent = document.getElementById("said").textContent;
    for (const mark of now.querySelectorAll("label[for] > .kept")) {
      const label = coming.querySelector(`label[for="${mark.parentElement.htmlFor}"]`);
      if (label && !label.querySelector(".kept")) label.append(" ", mark.cloneNode(true));
    }
  };

  const show = () => {
    const now = page.work();
    if (!now) return;
    for (const group of now.querySelectorAll(".lathe .member")) {
      group.classList.toggle("selected", group.dataset.member === now.dataset.selected);
    }
    page.grips();
    const chosen = `${now.dataset.address}?member=${now.dataset.selected}`;
    if (location.pathname === now.dataset.address && `${location.pathname}${location.search}` !== chosen) {
      // Reload, and coming back from another tab, find the member that was chosen.
      history.replaceState(history.state, "", chosen + location.hash);
      page.inSight();
    }
  };
  document.addEventListener("htmx:load", show);

  Object.assign(page, { show });
})();
