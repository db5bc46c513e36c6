/** A field above the list of outfits that leaves only the entries with all the words typed. */
const fold = (text: string): string => text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();

function addFilter(catalogue: HTMLElement): void {
  const rows = [...catalogue.querySelectorAll<HTMLTableRowElement>("tr.entry")];
  if (rows.length < 2) return;
  // The words of an entry are those of its row and of the variant under which it stands.
  const entries = rows.map((row) => ({
    row,
    words: fold(
      `${row.textContent ?? ""} ${row.closest("tbody")?.querySelector(".group")?.textContent ?? ""}`,
    ),
  }));

  const form = document.createElement("form");
  form.className = "catalogue-filter";
  form.setAttribute("role", "search");
  const label = document.createElement("label");
  label.htmlFor = "catalogue-filter";
  label.textContent = catalogue.dataset.filter ?? "";
  const field = document.createElement("input");
  field.type = "search";
  field.id = "catalogue-filter";
  field.autocomplete = "off";
  const told = document.createElement("output");
  told.htmlFor.add(field.id);
  form.append(label, field, told);
  catalogue.prepend(form);

  const apply = () => {
    const wanted = fold(field.value).split(/\s+/).filter(Boolean);
    let left = 0;
    for (const { row, words } of entries) {
      row.hidden = !wanted.every((word) => words.includes(word));
      if (!row.hidden) left++;
    }
    for (const body of catalogue.querySelectorAll("tbody")) {
      body.hidden = !body.querySelector("tr.entry:not([hidden])");
    }
    told.value =
      left === 0 ? (catalogue.dataset.none ?? "") : wanted.length > 0 ? `${left} / ${entries.length}` : "";
  };
  let waiting = 0;
  field.addEventListener("input", () => {
    cancelAnimationFrame(waiting);
    waiting = requestAnimationFrame(apply);
  });
  form.addEventListener("submit", (event) => event.preventDefault());
}

for (const catalogue of document.querySelectorAll<HTMLElement>(".catalogue")) addFilter(catalogue);
