// Parts of a job's page that have not changed are not sent again: the digests of those that stand here go with each request.
(() => {
  "use strict";
  const page = window.turnalikePage;

  const standing = new Map();
  /** It will be sent whatever it is: what stands there is not what its digest says. */
  const forget = (id) => standing.delete(id);
  const partsShown = () => {
    const told = [];
    for (const [id, digest] of standing) {
      const part = document.getElementById(id);
      // One that shows what was refused is sent, so that it can be cleared.
      if (part && !part.querySelector(".wrong")) told.push(`${id}=${digest}`);
    }
    return told.join(" ");
  };
  /** Which of what was left out of an answer is not what stands here: two answers may have crossed each other. Those will be sent. */
  const learnParts = (left) => {
    const told = document.getElementById("parts");
    const now = new Map(told ? told.dataset.told.split(" ").map((each) => each.split("=")) : []);
    const unsound = left.filter((id) => standing.get(id) !== now.get(id));
    standing.clear();
    now.forEach((digest, id) => standing.set(id, digest));
    unsound.forEach(forget);
    return unsound;
  };

  const digest = (id) => standing.get(id);

  Object.assign(page, { partsShown, learnParts, digest, forget });
})();
