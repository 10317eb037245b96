"use strict";
(() => {
  const boxes = [...document.querySelectorAll(".goods input, .lines input")];
  // The words are part of the key: another run's lines are not ticked by an earlier one's.
  const file = document.body.dataset.file;
  const seen = new Map();
  const keys = boxes.map((box) => {
    // Two pastes may take the same amount of the same thing.
    const of = box.closest(".cards > div");
    const words = (of ? of.firstElementChild.textContent : "") + box.closest("li").textContent.trim();
    const count = (seen.get(words) || 0) + 1;
    seen.set(words, count);
    return `strikeoff sheets ${file} ${count} ${words}`;
  });
  const kept = (work) => {
    try {
      return work();
    } catch {
      return null; // Ticks are then forgotten when the page is closed.
    }
  };
  const next = () => {
    for (const line of document.querySelectorAll(".next-up")) line.classList.remove("next-up");
    const first = boxes.find((box) => box.closest(".lines") && !box.checked);
    if (first) first.closest("li").classList.add("next-up");
  };
  boxes.forEach((box, i) => {
    box.checked = kept(() => localStorage.getItem(keys[i])) !== null;
    box.addEventListener("change", () => {
      kept(() =>
        box.checked ? localStorage.setItem(keys[i], "") : localStorage.removeItem(keys[i]),
      );
      next();
    });
  });
  document.getElementById("print").addEventListener("click", () => window.print());
  document.getElementById("clear").addEventListener("click", () => {
    boxes.forEach((box, i) => {
      box.checked = false;
      kept(() => localStorage.removeItem(keys[i]));
    });
    next();
  });
  next();
})();
