"use strict";
(() => {
  const byId = (id) => document.getElementById(id);
  const cloth = byId("cloth");
  if (!cloth) return;
  const toggle = (id, name, when) => {
    const box = byId(id);
    const show = () => cloth.classList.toggle(name, box.checked === when);
    box.addEventListener("change", show);
    show();
  };
  toggle("show-frames", "with-frames", true);
  toggle("show-marks", "without-marks", false);
  toggle("show-afar", "from-afar", true);

  const stepper = byId("stepper");
  const stages = [...document.querySelectorAll("#stages li")];
  if (!stepper || stages.length === 0) return;
  const prints = [...document.querySelectorAll("#cloth .prints > *")].map((element) => ({
    element,
    placement: element.dataset.p,
    at: Number(element.dataset.a),
    frameSafe: Number(element.dataset.f),
    liftSafe: Number(element.dataset.l),
  }));
  const outlines = new Map(
    [...document.querySelectorAll("#cloth .motif[data-p]")].map((e) => [e.dataset.p, e]),
  );
  const seams = [...document.querySelectorAll("#cloth .seam")];
  const tables = [...document.querySelectorAll("#cloth .table")];
  const slider = byId("step-slider");
  const words = byId("step-words");
  const show = () => {
    const step = Number(slider.value);
    const stage = step === 0 ? null : stages[step - 1];
    const now = stage ? Number(stage.dataset.t) : -Infinity;
    const began = stage ? Number(stage.dataset.s) : Infinity;
    const wetness = new Map();
    const fresh = new Set();
    for (const print of prints) {
      const there = print.at <= now + 0.02;
      print.element.classList.toggle("later", !there);
      if (there) {
        if (print.at > began) fresh.add(print.placement);
        const state = now < print.frameSafe ? 2 : now < print.liftSafe ? 1 : 0;
        wetness.set(print.placement, Math.max(state, wetness.get(print.placement) || 0));
      }
    }
    let wet = 0;
    for (const [placement, outline] of outlines) {
      const state = wetness.get(placement);
      outline.classList.toggle("bare", state === undefined);
      outline.classList.toggle("just", fresh.has(placement));
      outline.classList.toggle("wet", state === 2);
      outline.classList.toggle("frame-safe", state === 1);
      if (state === 2) wet++;
    }
    for (const seam of seams) {
      seam.classList.toggle("sewn", seam.dataset.a !== undefined && Number(seam.dataset.a) <= now + 0.02);
    }
    for (const table of tables) {
      const shows = Number(table.dataset.a) <= now + 0.02 && now < Number(table.dataset.z) - 0.02;
      table.classList.toggle("now", shows);
    }
    const last = step === stages.length;
    words.textContent = stage
      ? `${stage.textContent.trim()}. ${wet === 0 ? "Nothing" : wet === 1 ? "One placement" : wet + " placements"} still wet.`
      : "The bare cloth.";
    slider.setAttribute("aria-valuetext", words.textContent);
    byId("step-back").disabled = byId("step-first").disabled = step === 0;
    byId("step-on").disabled = byId("step-last").disabled = last;
  };
  const go = (to) => {
    slider.value = String(to);
    show();
  };
  slider.addEventListener("input", show);
  byId("step-first").addEventListener("click", () => go(0));
  byId("step-back").addEventListener("click", () => go(Number(slider.value) - 1));
  byId("step-on").addEventListener("click", () => go(Number(slider.value) + 1));
  byId("step-last").addEventListener("click", () => go(stages.length));
  stepper.hidden = false;
  show();
})();
