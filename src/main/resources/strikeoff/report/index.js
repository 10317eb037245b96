"use strict";
(() => {
  const byId = (id) => document.getElementById(id);
  const table = byId("plans");
  const body = table.tBodies[0];
  const rows = [...body.rows].map((element, order) => ({
    element,
    order,
    text: element.cells[0].textContent.toLowerCase(),
    verdict: element.dataset.verdict,
    folder: element.dataset.folder,
    rules: element.dataset.rules.split(" "),
    severities: element.dataset.severities.split(" "),
    keys: {
      name: element.cells[0].textContent.trim().toLowerCase(),
      verdict: Number(element.dataset.order),
      stops: Number(element.cells[2].dataset.n),
      risks: Number(element.cells[3].dataset.n),
      advice: Number(element.cells[4].dataset.n),
      finish: Number(element.dataset.finish),
      points: Number(element.dataset.points),
    },
  }));

  const filters = byId("filters");
  const shown = byId("shown");
  const filter = () => {
    const name = byId("f-name").value.trim().toLowerCase();
    const verdict = byId("f-verdict").value;
    const severity = byId("f-severity").value;
    const rule = byId("f-rule").value;
    const folders = byId("f-folder");
    const folder = folders ? folders.value : "";
    let count = 0;
    for (const row of rows) {
      const fits =
        (name === "" || row.text.includes(name)) &&
        (verdict === "" || row.verdict === verdict) &&
        (folder === "" || row.folder === folder) &&
        (severity === "" || row.severities.includes(severity)) &&
        (rule === "" || row.rules.includes(rule));
      row.element.hidden = !fits;
      if (fits) count++;
    }
    shown.textContent = `${count} of ${rows.length} plans shown.`;
  };
  filters.hidden = false;
  filters.addEventListener("input", filter);
  filters.addEventListener("submit", (event) => event.preventDefault());
  filters.addEventListener("reset", () => setTimeout(filter));

  const heads = [...table.tHead.rows[0].cells].filter((cell) => cell.dataset.sort);
  const sort = (head, down) => {
    const key = head.dataset.sort;
    for (const other of heads) other.removeAttribute("aria-sort");
    head.setAttribute("aria-sort", down ? "descending" : "ascending");
    const sign = down ? -1 : 1;
    rows.sort((a, b) => {
      const x = a.keys[key];
      const y = b.keys[key];
      return (x < y ? -sign : x > y ? sign : 0) || a.order - b.order;
    });
    body.append(...rows.map((row) => row.element));
  };
  for (const head of heads) {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = head.textContent;
    head.replaceChildren(button);
    const numbers = ["stops", "risks", "advice", "points"].includes(head.dataset.sort);
    button.addEventListener("click", () => {
      const before = head.getAttribute("aria-sort");
      sort(head, before === null ? numbers : before === "ascending");
    });
  }
  filter();
})();
