// Parts of a job's page that have not changed are not sent again: the digests of those that stand here go with each request.
(() => {
  "use strict";
  const page = window.turnalikePage;

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

  const digest = (id) => standing.get(id);
  /** It will be sent whatever it is: what stands there is not what its digest says. */
  const forget = (id) => standing.delete(id);
  const forgetAll = () => standing.clear();

  Object.assign(page, { partsShown, learnParts, digest, forget, forgetAll });
})();
