// A row of a table is kept when it is left or Enter is pressed, and the page follows: chart, likeness and what could be mended come with the answer.
(() => {
  "use strict";
  const { liken, notice } = window.turnalikePage;
  const isField = (element) => element.matches("input[form]:not([type=hidden])");
  const fieldsOf = (form) => [...form.elements].filter((each) => each.tagName === "INPUT" && each.type !== "hidden");
  /** Fields typed into since their form was sent: what stands there is the next entry's, even where it is the same figure again. */
  const typedSince = new Set();
  document.addEventListener("input", (event) => typedSince.add(event.target.id), true);
  let quiet = 0;
  const tell = (words) => {
    notice(words);
    clearTimeout(quiet);
    quiet = setTimeout(() => notice(""), 2500);
  };

  /** Puts the answer's page in the place of this one. What was typed since the form was sent stays. */
  const show = (html, sent) => {
    const came = new DOMParser().parseFromString(html, "text/html").getElementById("main");
    if (!came) return false;
    const now = document.getElementById("main");
    const typed = new Map();
    for (const field of now.querySelectorAll("input[id], textarea[id]")) {
      if (field.type === "file" || field.value === field.defaultValue) continue;
      if (sent.get(field.id) === field.value && !typedSince.has(field.id)) continue;
      typed.set(field.id, field.value);
    }
    liken(now, document.importNode(came, true), []);
    for (const field of now.querySelectorAll("input:not([type=hidden], [type=file]), textarea")) {
      const value = typed.has(field.id) ? typed.get(field.id) : field.defaultValue;
      if (field.value !== value) field.value = value;
    }
    return true;
  };

  const keep = async (form, data, sent) => {
    const piece = data.get("piece");
    const answer = await fetch(form.action, { method: "POST", body: data }).catch(() => null);
    if (!answer) {
      notice("The program does not answer. What you typed is still here; start it and try again.");
      return false;
    }
    const html = await answer.text();
    if (!answer.ok && answer.status !== 422) {
      const told = new DOMParser().parseFromString(html, "text/html").getElementById("main");
      notice(told ? told.textContent.trim().slice(0, 300) : "That could not be done.");
      return false;
    }
    if (!answer.ok && isNext(form) && following.length > 0) {
      for (const field of fieldsOf(form)) {
        sent.set(field.id, field.value);
        typedSince.delete(field.id);
      }
    }
    show(html, sent);
    if (answer.ok) tell(piece && !form.action.endsWith("/remove") ? `Piece ${piece} is kept.` : "Done. ");
    if (!answer.ok) {
      notice(""); // that the piece before was kept is no answer to this one
      document.querySelector("[aria-invalid=true]")?.focus();
      document.querySelector(".ask")?.scrollIntoView({ block: "nearest" });
    }
    return answer.ok;
  };

  // One after the other, so that no answer overtakes another.
  let turn = Promise.resolve();
  const following = []; // entries of the row that is typed next which wait for their turn
  const send = (form) => {
    const data = new URLSearchParams(new FormData(form));
    const sent = new Map(fieldsOf(form).map((field) => [field.id, field.value]));
    sent.forEach((_, id) => typedSince.delete(id));
    const named = fieldsOf(form)[0];
    if (!isNext(form) || !named) { // a row that stands, or what was asked about and is kept as it is
      turn = turn.then(() => keep(form, data, sent));
      return;
    }
    // Who weighs faster than the program answers means the label that comes next, not the one that still stands there.
    const counted = named.value === named.defaultValue;
    const entry = fieldsOf(form).filter((field) => field !== named && field.value.trim()).map((field) => field.value.trim()).join(" ");
    following.push(entry);
    turn = turn.then(async () => {
      if (following.shift() === undefined) return; // one before it is asked about
      const label = counted && document.getElementById(named.id);
      if (label) data.set(named.name, label.defaultValue);
      if ((await keep(form, data, sent)) || following.length === 0) return;
      // What is asked about shows what was sent; what was typed after it is told, since it has no place there.
      notice(`Typed meanwhile and not kept: ${following.splice(0).join(", ")}`);
    });
  };
  /** The form of the row that is typed next names the field it begins with. */
  const isNext = (form) => "next" in form.dataset;
  const firstOf = (form) => (isNext(form) ? document.getElementById(form.dataset.next) : null);
  const isDirty = (form) => fieldsOf(form).some((field) => field.value !== field.defaultValue);

  document.addEventListener("submit", (event) => {
    if (!event.target.matches("[data-part]")) return;
    event.preventDefault();
    send(event.target);
    const first = firstOf(event.target);
    if (first) first.focus();
  });

  document.addEventListener("change", (event) => {
    const field = event.target;
    if (!isField(field) || !field.form || isNext(field.form)) return;
    send(field.form);
  });

  /** Enter goes to the same column of the next row; in the row of the next piece it keeps it and begins another. */
  document.addEventListener("keydown", (event) => {
    const field = event.target;
    if (event.key !== "Enter" || !field.form || !isField(field)) return;
    event.preventDefault();
    if (isNext(field.form)) {
      const named = fieldsOf(field.form)[0];
      if (fieldsOf(field.form).some((each) => each !== named && each.value.trim())) field.form.requestSubmit();
      const first = firstOf(field.form);
      first.focus();
      first.select();
      return;
    }
    const row = field.closest("tr").nextElementSibling;
    const below = row && row.querySelector(`input[name="${CSS.escape(field.name)}"]`);
    if (below) {
      below.focus();
      below.select();
    } else if (isDirty(field.form)) {
      field.blur();
    }
  });
})();
