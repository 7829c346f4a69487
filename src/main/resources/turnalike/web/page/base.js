// What every part of a job's page uses: the page itself, words to the person, and what waits while something is at hand.
(() => {
  "use strict";
  const page = (window.turnalikePage = {});

  const root = document.documentElement;
  root.classList.add("scripted");

  const work = () => document.getElementById("work");
  const token = () => document.querySelector("meta[name=token]").content;

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

  // ---- while something is carried or on its way to be kept, what arrives from elsewhere waits: it would be pulled from under the hand
  const atHand = (is) => root.classList.toggle("at-hand", is);
  const free = async () => {
    while (root.classList.contains("at-hand")) await new Promise((later) => setTimeout(later, 50));
  };

  const isDirty = (field) => field.type !== "hidden" && field.type !== "checkbox" && field.tagName !== "SELECT" && field.value !== (field.dataset.held ?? field.defaultValue);
  // One after another: of those that wait htmx keeps the last alone, and would drop an edit for the look that comes after it.
  let before = Promise.resolve();
  const inTurn = (ask) => {
    const turn = before.then(ask);
    // An answer that never comes holds up no other for ever.
    before = Promise.race([turn.catch(() => null), new Promise((done) => setTimeout(done, 30000))]);
    return turn;
  };
  /** Sends an edit of the job that is shown, as it stands there; the page is redrawn with the answer. */
  const send = (address, values) => {
    const now = work().dataset;
    const edit = { target: "#work", swap: "outerHTML", values: { version: now.version, ...values } };
    return inTurn(() => htmx.ajax("POST", now.address + address, edit));
  };
  let looks = 0;
  /** Shows the job with that member chosen; of the looks that wait the last alone is taken. */
  const select = (number) => {
    const look = ++looks;
    return inTurn(() => look === looks && htmx.ajax("GET", `${work().dataset.address}?member=${number}`, { target: "#work", swap: "outerHTML" }));
  };
  /** Shows what others did up to that version, unless the answer to an edit of one's own has shown it by then, and maybe chosen another member. */
  const catchUp = (version) => inTurn(() => version > Number(work().dataset.version) && htmx.ajax("GET", `${work().dataset.address}?member=${work().dataset.selected}`, { target: "#work", swap: "outerHTML" }));
  const point = new Intl.NumberFormat(root.lang).format(0.5).charAt(1);
  /** A figure with the decimal sign of the page's language. */
  const figure = (text) => text.replace(".", point);
  /** Says it to a screen reader. */
  const tell = (words) => {
    const said = document.getElementById("said");
    if (said) said.textContent = words;
  };

  Object.assign(page, { root, work, token, notice, atHand, free, isDirty, send, select, catchUp, figure, tell });
})();
