"use strict";
(() => {
  const own = document.currentScript.dataset.version;
  let known = `${own}.0`;
  let line;
  const say = (text) => {
    if (!line) {
      if (text === "") return;
      line = document.createElement("p");
      line.setAttribute("role", "alert");
      Object.assign(line.style, {
        position: "sticky", top: "0", zIndex: "2", margin: "0", padding: "0.5rem 0.8rem", maxWidth: "none",
        whiteSpace: "pre-line", background: "var(--paper)", border: "3px solid var(--stop)", color: "var(--stop)",
      });
      document.querySelector("main").prepend(line);
    }
    line.hidden = text === "";
    line.textContent = text;
  };
  const later = (millis) => new Promise((done) => setTimeout(done, millis));
  const change = () => new Promise((done) => document.addEventListener("visibilitychange", done, { once: true }));
  // A page that nobody sees asks for nothing: browsers open few connections to one place.
  const ask = async () => {
    const stop = new AbortController();
    change().then(() => stop.abort());
    const answer = await fetch(`/saved${location.pathname}?${known}`, { signal: stop.signal });
    if (!answer.ok) throw new Error(String(answer.status));
    return answer.text();
  };
  const follow = async () => {
    for (;;) {
      if (document.hidden) await change();
      try {
        const [mark, ...note] = (await ask()).split("\n");
        known = mark;
        if (mark.split(".")[0] !== own) {
          location.reload();
          return;
        }
        say(note.length === 0 ? "" : ["This page is as it was before. To be mended first:", ...note].join("\n"));
      } catch (reason) {
        if (reason.name === "AbortError" || document.hidden) continue;
        if (reason.message !== "503") say("The watch doesn't answer; this page is as it was last. It goes on once watch runs again at this address.");
        await later(1000);
      }
    }
  };
  document.addEventListener("DOMContentLoaded", follow);
})();
