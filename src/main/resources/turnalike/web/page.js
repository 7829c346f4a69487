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

  document.addEventListener("htmx:configRequest", (event) => {
    event.detail.headers["X-Turnalike-Token"] = token();
    if (room()) event.detail.parameters["w"] = String(Math.max(620, Math.min(2400, room())));
  });

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
  const isDirty = (field) => field.type !== "hidden" && field.type !== "checkbox" && field.tagName !== "SELECT" && field.value !== field.defaultValue;
  document.addEventListener("htmx:beforeSwap", (event) => {
    const now = work();
    if (!now || event.detail.target.id !== "work") return;
    event.detail.target = now;
    const came = Number((/data-version="(\d+)"/.exec(event.detail.serverResponse) || [])[1] || 0);
    if (came < Number(now.dataset.version)) event.detail.shouldSwap = false;
    typed.clear();
    const sent = event.detail.requestConfig.elt;
    for (const field of now.querySelectorAll("input[id], textarea[id]")) {
      if (isDirty(field) && !sent.contains(field)) typed.set(field.id, field.value);
      else if (isDirty(field) && document.activeElement === field && event.detail.requestConfig.parameters[field.name] !== field.value) typed.set(field.id, field.value);
    }
  });
  document.addEventListener("htmx:afterSwap", () => {
    for (const [id, value] of typed) {
      const field = document.getElementById(id);
      if (field) field.value = value;
    }
    typed.clear();
  });

  const redraw = (address) => htmx.ajax("GET", address, { target: "#work", swap: "outerHTML" });
  const select = (number) => redraw(`${work().dataset.address}?member=${number}`);

  const show = () => {
    const now = work();
    if (!now) return;
    for (const group of now.querySelectorAll(".lathe .member")) {
      group.classList.toggle("selected", group.dataset.member === now.dataset.selected);
    }
  };

  const fit = () => {
    const now = work();
    if (!now || !room()) return;
    const wanted = Math.max(620, Math.min(2400, room()));
    if (Math.abs(wanted - Number(now.dataset.width)) > 12) select(now.dataset.selected);
  };

  document.addEventListener("click", (event) => {
    const member = event.target.closest(".lathe .member");
    if (member && work()) select(member.dataset.member);
  });
  document.addEventListener("htmx:load", show);
  let waiting = 0;
  window.addEventListener("resize", () => {
    clearTimeout(waiting);
    waiting = setTimeout(fit, 200);
  });
  document.addEventListener("DOMContentLoaded", () => {
    show();
    fit();
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
