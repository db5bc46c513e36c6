import type { Revision } from "../records/revision.ts";
import type { Redact } from "./masking.ts";
import type { PublishedRevision } from "./published.ts";

export const publishRevisions = (revisions: readonly Revision[], redact: Redact): PublishedRevision[] =>
  revisions.map(({ date, note }) => ({ date: date.text, note: redact(note) }));
