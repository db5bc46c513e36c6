import { pageLayout } from "./layouts/page.ts";
import { articleTemplate } from "./pages/article.ts";
import { articlesTemplate } from "./pages/articles.ts";
import { cardTemplate } from "./pages/card.ts";
import { catalogueTemplate } from "./pages/catalogue.ts";
import { comparisonTemplate } from "./pages/comparison.ts";
import { comparisonsTemplate } from "./pages/comparisons.ts";
import { familiesTemplate } from "./pages/families.ts";
import { familyTemplate } from "./pages/family.ts";
import { fieldsTemplate } from "./pages/fields.ts";
import { homeTemplate } from "./pages/home.ts";
import { itemTemplate } from "./pages/item.ts";
import { methodsTemplate } from "./pages/methods.ts";
import { missingTemplate } from "./pages/missing.ts";
import { sightingsTemplate } from "./pages/sightings.ts";
import { sightingsIndexTemplate } from "./pages/sightings-index.ts";
import { sourcesTemplate } from "./pages/sources.ts";
import { variantTemplate } from "./pages/variant.ts";
import { wantsTemplate } from "./pages/wants.ts";
import { articleBlock } from "./parts/article-block.ts";
import { articleList } from "./parts/article-list.ts";
import { beside } from "./parts/beside.ts";
import { bibliography } from "./parts/bibliography.ts";
import { cautions } from "./parts/cautions.ts";
import { chapter } from "./parts/chapter.ts";
import { cite } from "./parts/cite.ts";
import { closerLook } from "./parts/closer-look.ts";
import { colophon } from "./parts/colophon.ts";
import { comparison } from "./parts/comparison.ts";
import { completeness } from "./parts/completeness.ts";
import { completing } from "./parts/completing.ts";
import { confidential } from "./parts/confidential.ts";
import { custody } from "./parts/custody.ts";
import { dating } from "./parts/dating.ts";
import { drawing } from "./parts/drawing.ts";
import { entries, entriesHead, entryRow } from "./parts/entries.ts";
import { familyKey } from "./parts/family-key.ts";
import { figure } from "./parts/figure.ts";
import { figures } from "./parts/figures.ts";
import { finder } from "./parts/finder.ts";
import { findings } from "./parts/findings.ts";
import { found } from "./parts/found.ts";
import { issuedTable } from "./parts/issued-table.ts";
import { itemEvidence } from "./parts/item-evidence.ts";
import { itemOpening } from "./parts/item-opening.ts";
import { itemTable } from "./parts/item-table.ts";
import { labels } from "./parts/labels.ts";
import { links } from "./parts/links.ts";
import { logo } from "./parts/logo.ts";
import { method } from "./parts/method.ts";
import { nearest } from "./parts/nearest.ts";
import { noAnswer } from "./parts/no-answer.ts";
import { notes } from "./parts/notes.ts";
import { objectId } from "./parts/object-id.ts";
import { opening } from "./parts/opening.ts";
import { pageHead } from "./parts/page-head.ts";
import { pager } from "./parts/pager.ts";
import { partRow, partsTable, rateCells } from "./parts/parts-table.ts";
import { photographs } from "./parts/photographs.ts";
import { picture } from "./parts/picture.ts";
import { previewHead } from "./parts/preview-head.ts";
import { reallocation } from "./parts/reallocation.ts";
import { recording } from "./parts/recording.ts";
import { runningHead } from "./parts/running-head.ts";
import { serialTable } from "./parts/serial-table.ts";
import { ticked } from "./parts/ticked.ts";
import { trail } from "./parts/trail.ts";

/**
 * Every template by its name, which is also the path of the file that stands in for it in a user's own
 * `templates/` folder. They call one another through this list only, so that each can be replaced alone.
 */
export const templates = {
  "layouts/page": pageLayout,
  "pages/fields": fieldsTemplate,
  "pages/home": homeTemplate,
  "pages/catalogue": catalogueTemplate,
  "pages/item": itemTemplate,
  "pages/card": cardTemplate,
  "pages/comparisons": comparisonsTemplate,
  "pages/comparison": comparisonTemplate,
  "pages/families": familiesTemplate,
  "pages/family": familyTemplate,
  "pages/variant": variantTemplate,
  "pages/articles": articlesTemplate,
  "pages/article": articleTemplate,
  "pages/sources": sourcesTemplate,
  "pages/sightings-index": sightingsIndexTemplate,
  "pages/sightings": sightingsTemplate,
  "pages/wants": wantsTemplate,
  "pages/methods": methodsTemplate,
  "pages/missing": missingTemplate,
  "parts/article-block": articleBlock,
  "parts/article-list": articleList,
  "parts/bibliography": bibliography,
  "parts/beside": beside,
  "parts/cautions": cautions,
  "parts/chapter": chapter,
  "parts/cite": cite,
  "parts/colophon": colophon,
  "parts/closer-look": closerLook,
  "parts/comparison": comparison,
  "parts/completeness": completeness,
  "parts/completing": completing,
  "parts/confidential": confidential,
  "parts/object-id": objectId,
  "parts/custody": custody,
  "parts/dating": dating,
  "parts/drawing": drawing,
  "parts/entries": entries,
  "parts/entries-head": entriesHead,
  "parts/entry-row": entryRow,
  "parts/family-key": familyKey,
  "parts/figure": figure,
  "parts/figures": figures,
  "parts/finder": finder,
  "parts/findings": findings,
  "parts/found": found,
  "parts/issued-table": issuedTable,
  "parts/item-evidence": itemEvidence,
  "parts/item-opening": itemOpening,
  "parts/item-table": itemTable,
  "parts/labels": labels,
  "parts/links": links,
  "parts/logo": logo,
  "parts/method": method,
  "parts/nearest": nearest,
  "parts/no-answer": noAnswer,
  "parts/notes": notes,
  "parts/opening": opening,
  "parts/page-head": pageHead,
  "parts/pager": pager,
  "parts/part-row": partRow,
  "parts/parts-table": partsTable,
  "parts/photographs": photographs,
  "parts/picture": picture,
  "parts/rate-cells": rateCells,
  "parts/preview-head": previewHead,
  "parts/reallocation": reallocation,
  "parts/recording": recording,
  "parts/running-head": runningHead,
  "parts/serial-table": serialTable,
  "parts/ticked": ticked,
  "parts/trail": trail,
};

export type Templates = typeof templates;
