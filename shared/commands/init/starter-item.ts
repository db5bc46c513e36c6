/** The worked example: one item, every kind of line in it explained. */
export const starterItem = `---
## A worked example, invented like everything that this collection begins with.
## Copy what you need into items of your own: fittedcase new item ID --variant V
title: Grain Case no. 27, the quayside case
## What it is held to be. The build tests that against the features and the serial.
variant: grain-case-first
## Its own number. The site shows it as collection.yaml says: masked, as things stand. A log is published as it is: its
## rows therefore know this case by the name that follows, and not by its number.
serial: G94
example: quayside-case
## The set's number, which the parts should bear.
set: "27"
## Dates are EDTF: 2025-05-03, 2025-05, 2025, 1984~ (about), 1984? (uncertain), 1931/1938 (from, to).
examined: 2025-05-03
status: collection

## What you saw of the features that tell the variants apart. Leave out what you did not look at.
features:
  lid-label: paper
  ## The tip of the probe was not looked at, so it is not listed here.

## What you found, part by part.
parts:
  ## With the marks that were read on it, and its condition:
  case: { state: present, marks: ["27"], condition: sound }
  ## One word is enough:
  probe: present
  ## Four were issued: three are here, and the fourth is known to be gone. Without "rest" it would be unexamined.
  sieve: { state: present, quantity: 3, rest: absent, marks: ["27"] }
  lens: absent
  ## It bears another set's number: there, but not established to be right. Write what you read, not what should be there.
  balance: { state: unverified, marks: ["31"], condition: fine, note: The number of another set. }
  ## Several units, each with a line of its own:
  weights:
    - { state: present, quantity: 5 }
    - { state: substitute, model: brass-blank }
  table: present
  ## The spirit lamp was not examined: no line.

extras:
  - { name: Brass scoop, note: Not listed by the Handbook. }
labels:
  - { where: lid, kind: label, text: ["TARN & HOBBELIN", "WENDLE FERRY"] }

## Through whose hands it went. Fields named under "private" are never published.
provenance:
  - { date: 1913~/1940, event: in service, holder: Corn Office of the Wendle Marches, evidence: register, source: corn-register }
  - { date: 2011-10-22/.., event: acquired, from: A. Fennick, evidence: receipt, source: quay-sales, private: [from] }

## A photograph lies beside this file; alt describes it for those who cannot see it. Callouts point parts out:
## at is how far from the left and how far from the top of the upright picture, as shares of its width and height.
# photos:
#   - { file: open-case.jpg, alt: The open case from above., callouts: [{ part: balance, at: [0.3, 0.5] }] }

## Never published, not even masked:
storage: Cupboard 2
paid: { amount: 140, currency: XTS }
---

The description stands below the second line of hyphens, in Markdown. This one is invented: a case that lay in the
quay office until the quay was given up.
`;
