// The rooms of shared/ in the order in which data flow: a later room may import an earlier one, never back.
const rooms = [
  "lists",
  "diagnostics",
  "dates",
  "terms",
  "statistics",
  "source",
  "validation",
  "records",
  "assessments",
  "words",
  "prose",
  "publication",
  "plots",
  "images",
  "pages",
  "site",
  "commands",
];
const touchFiles = ["source", "images", "site", "commands"];

const inRoom = (...names) => `^shared/(${names.join("|")})/`;

module.exports = {
  forbidden: [
    {
      name: "no-circle",
      severity: "error",
      from: {},
      to: { circular: true, viaOnly: { dependencyTypesNot: ["type-only"] } },
    },
    ...rooms.slice(0, -1).map((room, at) => ({
      name: `${room}-looks-back`,
      severity: "error",
      comment: `shared/${room} comes before the rooms that it imports`,
      from: { path: inRoom(room) },
      to: { path: inRoom(...rooms.slice(at + 1)) },
    })),
    {
      name: "computation-is-pure",
      severity: "error",
      comment: `only ${touchFiles.join(", ")} touch files, processes or the network`,
      from: { path: "^(shared|templates)/", pathNot: inRoom(...touchFiles) },
      to: { dependencyTypes: ["core"] },
    },
    {
      name: "the-one-door",
      severity: "error",
      comment: "what is shown comes from shared/publication: no page, plot or template sees a record",
      from: { path: ["^templates/", inRoom("plots", "pages")] },
      to: { path: inRoom("source", "validation", "records", "assessments") },
    },
    {
      name: "statistics-alone",
      severity: "error",
      comment: "numbers in, numbers out: nothing but quantiles from outside",
      from: { path: inRoom("statistics") },
      to: {
        path: ["^node_modules/", "^shared/"],
        pathNot: ["^shared/statistics/", "^node_modules/@stdlib/"],
      },
    },
    {
      name: "templates-are-printed-by-site",
      severity: "error",
      from: { path: "^shared/", pathNot: inRoom("site") },
      to: { path: "^templates/" },
    },
  ],
  options: {
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.json" },
    doNotFollow: { path: "node_modules" },
    enhancedResolveOptions: { extensions: [".ts", ".js"] },
  },
};
