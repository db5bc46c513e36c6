import { item, smallCollection, writeCollection } from "./collection.ts";

/** An invented outfit to go through at a bench: groups in an order, several units, a part that can hurt. */
export const unpackingFile = `---
title: A chest   # as on its label
variant: chest-a
parts:
  # The lid first.
  key: present   # brass
  jet: { state: present, quantity: 1, marks: ['7'] } # of two

---
The text, with parts: of its own.
`;

export const unpackingFolder = (): string =>
  writeCollection(
    smallCollection(
      `parts:
  jet: { name: Jet, group: tray, quantity: 2, marks: ["{set}"] }
  lamp: { name: Spirit lamp, group: tray, standing: consumable, hazards: [flammable], look: Smell the cap. }
  key: { name: Key, group: lid, standing: core, look: "Below the <lid>." }
  strap: { name: Strap, standing: optional }
`,
      {
        "schemas/reference/chest/family.yaml":
          "name: Chests\ngroups: { lid: The lid, tray: The tray }\nfeatures: { lock: { name: Lock, values: [iron, brass], look: On the front. } }\n",
        "content/items/one/index.md": unpackingFile,
        "content/items/two/index.md": item("examined: 2026-03-14"),
      },
    ),
  );
