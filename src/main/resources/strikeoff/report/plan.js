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

  const stepper = byId("stepper");
  const stages = [...document.querySelectorAll("#stages li")];
  if (!stepper || stages.length === 0) return;
  const prints = [...document.querySelectorAll("#cloth .prints use")].map((element) => ({
    element,
    placement: element.dataset.p,
    at: Number(element.dataset.a),
    frameSafe: Number(element.dataset.f),
    liftSafe: Number(element.dataset.l),
  }));
  const outlines = new Map(
    [...document.querySelectorAll("#cloth .motif")].map((e) => [e.dataset.p, e]),
  );
  const slider = byId("step-slider");
  const words = byId("step-words");
  const show = () => {
    const step = Number(slider.value);
    const stage = step === 0 ? null : stages[step - 1];
    const now = stage ? Number(stage.dataset.t) : -Infinity;
    const wetness = new Map();
    for (const print of prints) {
      const there = print.at <= now + 0.02;
      print.element.classList.toggle("later", !there);
      if (there) {
        const state = now < print.frameSafe ? 2 : now < print.liftSafe ? 1 : 0;
        wetness.set(print.placement, Math.max(state, wetness.get(print.placement) || 0));
      }
    }
    let wet = 0;
    for (const [placement, outline] of outlines) {
      const state = wetness.get(placement);
      outline.classList.toggle("wet", state === 2);
      outline.classList.toggle("frame-safe", state === 1);
      if (state === 2) wet++;
    }
    const last = step === stages.length;
    words.textContent = stage
      ? `${step} of ${stages.length}: ${stage.textContent.trim()}. ${wet === 0 ? "Nothing" : wet === 1 ? "One placement" : wet + " placements"} still wet.`
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
