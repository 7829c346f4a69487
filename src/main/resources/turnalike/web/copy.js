// Copying an original: what is too large is said before it is sent, the page goes on while it is traced, and ends are pointed at by hand.
(() => {
  "use strict";
  const notice = (words) => {
    document.getElementById("notice").textContent = words;
  };

  // ---- the form
  const form = document.getElementById("original");
  if (form && form.dataset.most) {
    const files = [...form.querySelectorAll("input[type=file]")];
    // Of the two ways to choose a file the last one counts.
    for (const field of files) {
      field.addEventListener("change", () => {
        if (field.files.length) for (const other of files) if (other !== field) other.value = "";
      });
    }
    form.addEventListener("submit", (event) => {
      const most = Number(form.dataset.most);
      const large = files.some((field) => [...field.files].some((file) => file.size > most - 65536));
      if (large) {
        event.preventDefault();
        notice("That file is larger than 32 megabytes: make the picture smaller, or save it as JPEG.");
        return;
      }
      const button = document.getElementById("trace");
      notice("Sending …");
      setTimeout(() => {
        button.disabled = true;
      });
    });
    addEventListener("pageshow", () => {
      document.getElementById("trace").disabled = false;
      notice("");
    });
    // A file dropped anywhere on the form is the file chosen.
    form.addEventListener("dragover", (event) => event.preventDefault());
    form.addEventListener("drop", (event) => {
      if (!event.dataTransfer.files.length) return;
      event.preventDefault();
      const chosen = document.getElementById("file");
      chosen.files = event.dataTransfer.files;
      chosen.dispatchEvent(new Event("change"));
      chosen.focus();
    });
  }

  // ---- while it is traced
  const traced = () => document.getElementById("traced");
  const look = async () => {
    const now = traced();
    if (!now || now.dataset.running !== "yes") return;
    const answer = await fetch(now.dataset.address, { headers: { "HX-Request": "true" } }).catch(() => null);
    const text = answer ? await answer.text() : "";
    if (!answer || !text.includes('id="traced"')) {
      notice(answer ? "This original is not remembered any more: choose it again." : "The program does not answer.");
      if (!answer) setTimeout(look, 2000);
      return;
    }
    const came = document.createElement("template");
    came.innerHTML = text;
    const next = came.content.querySelector("#traced");
    if (next.dataset.running === "yes") {
      document.getElementById("progress").textContent = next.querySelector("#progress").textContent;
      setTimeout(look, 600);
    } else {
      now.replaceWith(next);
      handles();
    }
  };

  // ---- the two ends
  const handles = () => {
    const overlay = document.getElementById("overlay");
    if (!overlay) return;
    const picture = overlay.querySelector("svg");
    const width = Number(overlay.dataset.width);
    const height = Number(overlay.dataset.height);
    // The picture may stand narrower than its frame: only its own matrix knows where.
    const box = picture.viewBox.baseVal;
    const perPixel = () => (picture.getScreenCTM().a * box.width) / width;
    const field = (end, way) => document.getElementById(`${end}_${way}`);
    const value = (end, way) => Number(field(end, way).value.replace(",", "."));
    const made = {};
    const place = () => {
      const frame = overlay.getBoundingClientRect();
      const at = picture.getScreenCTM();
      for (const end of ["start", "end"]) {
        made[end].style.left = `${at.e - frame.left - overlay.clientLeft + value(end, "x") * perPixel()}px`;
        made[end].style.top = `${at.f - frame.top - overlay.clientTop + value(end, "y") * perPixel()}px`;
      }
    };
    const set = (end, x, y) => {
      // What a moved end is good for stands folded under the picture where something was found.
      document.getElementById("wrong").open = true;
      field(end, "x").value = window.turnalikePage.figure(Math.max(0, Math.min(width, x)).toFixed(1));
      field(end, "y").value = window.turnalikePage.figure(Math.max(0, Math.min(height, y)).toFixed(1));
      place();
    };
    for (const end of ["start", "end"]) {
      const handle = document.createElement("button");
      handle.type = "button";
      handle.className = "endhandle";
      handle.textContent = end === "start" ? "S" : "E";
      handle.setAttribute("aria-label", end === "start" ? "Start end: arrow keys move it by a pixel, with Shift by ten" : "Far end: arrow keys move it by a pixel, with Shift by ten");
      overlay.append(handle);
      made[end] = handle;
      let held = null;
      handle.addEventListener("pointerdown", (event) => {
        if (event.button !== 0) return;
        handle.setPointerCapture(event.pointerId);
        held = { x: event.clientX, y: event.clientY, fromX: value(end, "x"), fromY: value(end, "y") };
      });
      handle.addEventListener("pointermove", (event) => {
        if (held) set(end, held.fromX + (event.clientX - held.x) / perPixel(), held.fromY + (event.clientY - held.y) / perPixel());
      });
      const drop = () => {
        held = null;
      };
      handle.addEventListener("pointerup", drop);
      handle.addEventListener("pointercancel", drop);
      handle.addEventListener("keydown", (event) => {
        const step = event.shiftKey ? 10 : 1;
        const way = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[event.key];
        if (!way) return;
        event.preventDefault();
        set(end, value(end, "x") + step * way[0], value(end, "y") + step * way[1]);
      });
      for (const way of ["x", "y"]) field(end, way).addEventListener("input", place);
    }
    place();
    addEventListener("resize", place);
  };
  handles();
  setTimeout(look, 300);
})();
