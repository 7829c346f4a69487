// Keeping fields: one by one, when each is left.
(() => {
  "use strict";
  const page = window.turnalikePage;

  // Enter leaves a field as the tabulator does: the change is kept, and the form not sent a second time.
  document.addEventListener("submit", (event) => {
    if (!event.target.matches("form.each") || document.activeElement === event.submitter) return;
    event.preventDefault();
    event.stopImmediatePropagation();
    // What was refused and not changed since is meant all the same: it is asked for once more.
    const field = document.activeElement;
    if (field !== changedNow && event.target.contains(field) && page.isDirty(field)) field.dispatchEvent(new Event("change", { bubbles: true }));
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
})();
