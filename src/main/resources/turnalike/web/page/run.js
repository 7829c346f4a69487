// The run: a member chosen in the drawing or by the keyboard, moved, taken out.
(() => {
  "use strict";
  const page = window.turnalikePage;

  // From a key on until the focus goes elsewhere: an answer that only brings settings may come before the one that was asked for.
  let follow = false;
  document.addEventListener("keydown", (event) => {
    const link = event.target.closest(".run a, .grip");
    if (!link || event.ctrlKey || event.altKey || event.metaKey) return;
    const chosen = Number(page.work().dataset.selected);
    if (event.key === "Delete") press("remove");
    else if (link.classList.contains("grip")) return;
    else if (event.key === "ArrowLeft" && event.shiftKey) press("left");
    else if (event.key === "ArrowRight" && event.shiftKey) press("right");
    else if (event.key === "ArrowLeft" && chosen > 1) page.select(chosen - 1);
    else if (event.key === "ArrowRight" && document.getElementById(`m-${chosen + 1}`)) page.select(chosen + 1);
    else return;
    event.preventDefault();
    follow = true;
  });
  document.addEventListener("click", (event) => {
    const link = event.target.closest(".run a");
    if (!link || event.ctrlKey || event.metaKey || event.shiftKey) return;
    event.preventDefault();
    page.select(link.id.slice("m-".length));
  });
  const press = (id) => {
    const button = document.getElementById(id);
    if (button && !button.disabled) button.click();
  };
  document.addEventListener("turnalike:redrawn", () => {
    if (follow) document.getElementById(`m-${page.work().dataset.selected}`)?.focus({ preventScroll: true });
  });
  document.addEventListener("focusin", (event) => {
    if (!event.target.closest(".run a")) follow = false;
  });
  document.addEventListener("pointerdown", () => { follow = false; });

  /** The member that lies there, also below a handle. */
  const touch = (x, y) => {
    const parts = document.elementsFromPoint(x, y).map((each) => each.closest(".lathe .member"));
    choose(parts.find((each) => each));
  };
  document.addEventListener("click", (event) => choose(event.target.closest(".lathe .member")));
  const choose = (member) => {
    if (!member || page.isPlacing() || member.dataset.member === page.work().dataset.selected) return;
    page.select(member.dataset.member).then(() => {
      // Where the fields lie below the screen, they come into sight with the member they belong to.
      const fields = document.getElementById("member");
      if (fields.getBoundingClientRect().top > page.root.clientHeight - 120) fields.scrollIntoView({ block: "start" });
    });
  };

  Object.assign(page, { touch });
})();
