import {
  annotationsIn,
  everyObject,
  everywhere,
  type Found,
  fault,
  has,
  hasNoEntry,
  isLanguage,
  isObject,
  isUri,
  languageMapFaults,
  listed,
  objects,
  onCanvases,
  targetOf,
} from "./iiif-reading.ts";

export interface Rule {
  readonly section: string;
  readonly must: string;
  /** What is wrong; nothing where the rule is kept. */
  readonly faults: (manifest: unknown) => readonly string[];
}

const ofSpecification = [
  "Manifest",
  "Canvas",
  "Range",
  "AnnotationPage",
  "Annotation",
  "AnnotationCollection",
];
const ofContent = ["Image", "Text", "Dataset", "Sound", "Video", "Model"];
const isOne = ({ value }: Found, types: readonly string[]) => types.includes(String(value.type));

const creativeCommons =
  /^http:\/\/creativecommons\.org\/(licenses|publicdomain)\/[a-z+-]+\/\d\.\d\/([a-z]{2,3}\/)?$/;
const rightsStatements = /^http:\/\/rightsstatements\.org\/vocab\/[A-Za-z-]+\/1\.0\/$/;
const dateTimeWithZone = /^-?\d{4,}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}(\.\d+)?(Z|[+-]\d{2}:\d{2})$/;

const several = {
  ofResources: "items annotations structures thumbnail provider homepage logo rendering seeAlso partOf".split(
    " ",
  ),
  ofOthers: "metadata behavior service services".split(" "),
};

const said = (value: unknown) => JSON.stringify(value);
const isCount = (value: unknown) => Number.isInteger(value) && Number(value) > 0;

/**
 * What IIIF Presentation API 3.0 (2020-06-03) says that a publisher MUST or MUST NOT, as far as it concerns the
 * resources that a catalogue of photographs has, each under the section in which it stands. Written from the text
 * of the specification; it shares nothing with what writes the manifests.
 */
export const rules: readonly Rule[] = [
  {
    section: "3.1 label",
    must: "a Manifest MUST have the label property with at least one entry",
    faults: (it) => fault(!isObject(it) || hasNoEntry(it.label), "no label"),
  },
  {
    section: "3.1 label, summary; 4.4",
    must: "the value MUST be an object, its keys language codes or none, its values arrays of strings",
    faults: everywhere(({ value, key }) =>
      ["label", "summary"].flatMap((name) =>
        // A language map may itself have a key that looks like a property.
        has(value, name) && !["label", "summary", "value"].includes(key)
          ? languageMapFaults(value[name])
          : [],
      ),
    ),
  },
  {
    section: "3.1 metadata, requiredStatement",
    must: "each entry MUST have both label and value, objects by language",
    faults: everywhere(({ value }) =>
      [
        ...listed(value.metadata),
        ...(has(value, "requiredStatement") ? [value.requiredStatement] : []),
      ].flatMap((entry) =>
        isObject(entry)
          ? [...languageMapFaults(entry.label), ...languageMapFaults(entry.value)]
          : ["an entry that is no object"],
      ),
    ),
  },
  {
    section: "3.1 rights",
    must: "the value MUST be a string, a URI that Creative Commons or RightsStatements.org defines",
    faults: everywhere(({ value: { rights } }) =>
      fault(
        rights !== undefined &&
          !(typeof rights === "string" && (creativeCommons.test(rights) || rightsStatements.test(rights))),
        `rights: ${said(rights)}`,
      ),
    ),
  },
  {
    section: "3.1 provider",
    must: "each MUST be an Agent with an id that is a URI, and a label",
    faults: everywhere(({ value }) =>
      listed(value.provider).flatMap((agent) =>
        fault(
          !isObject(agent) || agent.type !== "Agent" || !isUri(agent.id) || hasNoEntry(agent.label),
          "a provider that is no Agent",
        ),
      ),
    ),
  },
  {
    section: "3.1 thumbnail; 3.3.1 seeAlso; 3.3.2 partOf",
    must: "each MUST be an object with id and type",
    faults: everywhere(({ value }) =>
      ["thumbnail", "seeAlso", "partOf"].flatMap((name) =>
        listed(value[name]).flatMap((each) =>
          fault(
            !isObject(each) || !isUri(each.id) || typeof each.type !== "string",
            `${name} without id or type`,
          ),
        ),
      ),
    ),
  },
  {
    section: "3.1 navDate",
    must: "the value MUST be an XSD dateTime with a time zone, and stand on a Manifest, Canvas or Range only",
    faults: everywhere((found) =>
      fault(
        has(found.value, "navDate") &&
          !(
            dateTimeWithZone.test(String(found.value.navDate)) &&
            isOne(found, ["Manifest", "Canvas", "Range"])
          ),
        `navDate: ${said(found.value.navDate)}`,
      ),
    ),
  },
  {
    section: "3.2 id",
    must: "all resource types MUST have the id property, an HTTP(S) URI",
    faults: everywhere((found) =>
      fault(
        isOne(found, [...ofSpecification, ...ofContent]) && !isUri(found.value.id),
        `id: ${said(found.value.id)}`,
      ),
    ),
  },
  {
    section: "3.2 id",
    must: "the URI identifies the resource: no two that are described here have the same",
    faults: (it) => {
      const ids = [...everyObject(it)]
        .filter((found) => isOne(found, ofSpecification))
        .map(({ value }) => value.id);
      return fault(new Set(ids).size !== ids.length, "an id twice");
    },
  },
  {
    section: "3.2 type; 4.1",
    must: "all resource types MUST have the type property, a string, written as in the specification",
    faults: (it) => [
      ...fault(!isObject(it) || it.type !== "Manifest", "the top is no Manifest"),
      ...everywhere(({ value, key }) =>
        fault([...several.ofResources, "body"].includes(key) && typeof value.type !== "string", "no type"),
      )(it),
    ],
  },
  {
    section: "3.2 format",
    must: "the value MUST be a string, and other resources than content MUST NOT have it",
    faults: everywhere((found) =>
      fault(
        has(found.value, "format") &&
          (typeof found.value.format !== "string" || isOne(found, ofSpecification)),
        `format: ${said(found.value.format)}`,
      ),
    ),
  },
  {
    section: "3.2 language",
    must: "of an external resource the value MUST be an array of language codes",
    faults: everywhere((found) =>
      fault(
        isOne(found, ofContent) &&
          has(found.value, "language") &&
          !(
            Array.isArray(found.value.language) &&
            found.value.language.every((tag) => isLanguage(String(tag)))
          ),
        `language: ${said(found.value.language)}`,
      ),
    ),
  },
  {
    section: "3.2 height, width",
    must: "the values MUST be positive integers, both or neither on a Canvas, and MUST NOT stand on others",
    faults: everywhere((found) => {
      const { height, width, type } = found.value;
      const sized = height !== undefined || width !== undefined;
      return [
        ...fault(height !== undefined && !isCount(height), `height: ${said(height)}`),
        ...fault(width !== undefined && !isCount(width), `width: ${said(width)}`),
        ...fault(sized && isOne(found, ofSpecification) && type !== "Canvas", "a size on no Canvas"),
        ...fault(
          type === "Canvas" && (height === undefined) !== (width === undefined),
          "height or width alone",
        ),
      ];
    }),
  },
  {
    section: "3.2 duration",
    must: "the value MUST be a positive number",
    faults: everywhere(({ value: { duration } }) =>
      fault(
        duration !== undefined && !(typeof duration === "number" && duration > 0),
        `duration: ${said(duration)}`,
      ),
    ),
  },
  {
    section: "3.3.1 homepage, rendering",
    must: "each MUST have id, type and label",
    faults: everywhere(({ value }) =>
      ["homepage", "rendering"].flatMap((name) =>
        listed(value[name]).flatMap((each) =>
          fault(
            !isObject(each) || !isUri(each.id) || typeof each.type !== "string" || hasNoEntry(each.label),
            `${name} without id, type or label`,
          ),
        ),
      ),
    ),
  },
  {
    section: "3.4 items; 5.2",
    must: "a Manifest MUST have items with at least one item, each a Canvas",
    faults: (it) => {
      const items = isObject(it) ? listed(it.items) : [];
      return fault(
        items.length === 0 || items.some((each) => !isObject(each) || each.type !== "Canvas"),
        "items that are no Canvases",
      );
    },
  },
  {
    section: "3.4 items, annotations; 5.5",
    must: "each item of a Canvas MUST be an Annotation Page, and each item of a page an Annotation",
    faults: onCanvases((canvas) =>
      [...listed(canvas.items), ...listed(canvas.annotations)].flatMap((page) =>
        isObject(page) && page.type === "AnnotationPage"
          ? listed(page.items).flatMap((each) =>
              fault(!isObject(each) || each.type !== "Annotation", "no Annotation"),
            )
          : ["no Annotation Page"],
      ),
    ),
  },
  {
    section: "3.4 items",
    must: "other types of resource MUST NOT have the items property",
    faults: everywhere((found) =>
      fault(
        has(found.value, "items") &&
          !isOne(found, ["Manifest", "Canvas", "AnnotationPage", "Range", "Choice"]),
        "items where none may be",
      ),
    ),
  },
  {
    section: "3.4 annotations",
    must: "their motivation MUST NOT be painting, and their target MUST include the resource",
    faults: onCanvases((canvas) =>
      annotationsIn(canvas.annotations).flatMap((annotation) => [
        ...fault([annotation.motivation].flat().includes("painting"), "painting among the annotations"),
        ...fault(targetOf(annotation).source !== canvas.id, "an annotation of something else"),
      ]),
    ),
  },
  {
    section: "4.3",
    must: "properties that can have multiple values MUST always be arrays",
    faults: everywhere(({ value, key }) =>
      [...several.ofResources, ...several.ofOthers].flatMap((name) =>
        fault(
          has(value, name) && !["label", "summary", "value"].includes(key) && !Array.isArray(value[name]),
          `${name} is no array`,
        ),
      ),
    ),
  },
  {
    section: "4.5",
    must: "markup MUST NOT be used in label; a text that begins with < and ends with > is read as markup",
    faults: everywhere(({ value, key }) =>
      ["label", "summary", "value"].includes(key)
        ? Object.values(value)
            .flatMap(listed)
            .flatMap((text) => fault(/^<.*>$/s.test(String(text)), `read as markup: ${String(text)}`))
        : [],
    ),
  },
  {
    section: "4.6",
    must: "the top MUST have the context of version 3, once, the last of several; what is below MUST NOT have one",
    faults: (it) => {
      const uri = "http://iiif.io/api/presentation/3/context.json";
      const context = isObject(it) ? it["@context"] : undefined;
      const below = [...everyObject(it)].slice(1).filter(({ value }) => has(value, "@context"));
      return [
        ...fault(context !== uri && !(Array.isArray(context) && context.at(-1) === uri), "the context"),
        ...fault(below.length > 0, "a context below the top"),
      ];
    },
  },
  {
    section: "4.6",
    must: "the representation MUST NOT include @graph at the top",
    faults: (it) => fault(isObject(it) && has(it, "@graph"), "@graph"),
  },
  {
    section: "4.8",
    must: "the only key that begins with @ is @context",
    faults: everywhere(({ value }) =>
      Object.keys(value).flatMap((key) => fault(key.startsWith("@") && key !== "@context", key)),
    ),
  },
  {
    section: "5.3",
    must: "a Canvas MUST have an HTTP(S) URI, which MUST NOT contain a fragment",
    faults: onCanvases(({ id }) => fault(!isUri(id) || id.includes("#"), `a Canvas called ${said(id)}`)),
  },
  {
    section: "5.3",
    must: "a Canvas MUST have height and width, a duration, or both",
    faults: onCanvases(({ height, width, duration }) =>
      fault(
        (height === undefined || width === undefined) && duration === undefined,
        "a Canvas without an extent",
      ),
    ),
  },
  {
    section: "5.3",
    must: "annotations that are not painting MUST NOT be in the pages of items",
    faults: onCanvases((canvas) =>
      annotationsIn(canvas.items).flatMap(({ motivation }) =>
        fault(![motivation].flat().includes("painting"), "no painting in items"),
      ),
    ),
  },
  {
    section: "5.3",
    must: "content MUST NOT be associated with space outside the Canvas",
    faults: onCanvases((canvas) =>
      annotationsIn(canvas.items, canvas.annotations).flatMap((annotation) =>
        targetOf(annotation).points.flatMap(([x, y]) =>
          fault(
            !(x >= 0 && y >= 0 && x <= Number(canvas.width) && y <= Number(canvas.height)),
            `a place outside the Canvas: ${x}, ${y}`,
          ),
        ),
      ),
    ),
  },
  {
    section: "5.3",
    must: "what has a dimension that the Canvas lacks MUST NOT be painted on it",
    faults: onCanvases((canvas) =>
      annotationsIn(canvas.items)
        .flatMap(({ body }) => objects([body].flat()))
        .flatMap((body) =>
          fault(has(body, "duration") && !has(canvas, "duration"), "a recording on a still"),
        ),
    ),
  },
  {
    section: "5.6",
    must: "an Annotation MUST have its own HTTP(S) URI, and the URI of the Canvas MUST be repeated in its target",
    faults: onCanvases((canvas) =>
      annotationsIn(canvas.items, canvas.annotations).flatMap((annotation) => [
        ...fault(!isUri(annotation.id), "an Annotation without a URI"),
        ...fault(targetOf(annotation).source !== canvas.id, "a target that is not the Canvas"),
      ]),
    ),
  },
  {
    section: "5.6",
    must: "the value of a Textual Body is a string, not an object by language",
    faults: everywhere(({ value }) =>
      fault(value.type === "TextualBody" && typeof value.value !== "string", "a body that is no string"),
    ),
  },
  {
    section: "5.7",
    must: "a content resource MUST have an id, where it can be obtained, and a type, for an image Image",
    faults: onCanvases((canvas) =>
      annotationsIn(canvas.items)
        .flatMap(({ body }) => [body].flat())
        .flatMap((body) =>
          fault(
            !isObject(body) ||
              !isUri(body.id) ||
              (String(body.format).startsWith("image/") && body.type !== "Image"),
            "a body that is no content resource",
          ),
        ),
    ),
  },
  {
    section: "6.1",
    must: "special characters in URIs MUST be encoded",
    faults: everywhere(({ value: { id } }) =>
      fault(typeof id === "string" && /[^\x21-\x7e]|["<>\\^`{|}]/.test(id), `id: ${said(id)}`),
    ),
  },
];

export const faultsOf = (manifest: unknown): readonly string[] =>
  rules.flatMap(({ section, faults }) => faults(manifest).map((what) => `${section}: ${what}`));
