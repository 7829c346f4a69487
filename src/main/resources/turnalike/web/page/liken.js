// Putting an answer in place: it is redrawn with every edit, so what has not changed is left standing and needs no new layout.
(() => {
  "use strict";
  const page = window.turnalikePage;

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

  Object.assign(page, { liken });
})();
