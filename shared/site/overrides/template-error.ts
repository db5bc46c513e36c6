/** A template of the user's own does not do: theirs to mend, and no fault of the program. */
export class TemplateError extends Error {
  constructor(file: string, problem: unknown) {
    const said = problem instanceof Error ? `${problem.name}: ${problem.message}.` : String(problem);
    super(`${placeIn(file, problem)}: ${said}`);
  }
}

/** With its line, where the engine names one. */
function placeIn(file: string, problem: unknown): string {
  const stack = problem instanceof Error ? (problem.stack ?? "") : "";
  const found = stack.split("\n").find((line) => line.includes(`/${file}?`)) ?? "";
  const line = /\.js\?[^:\s]*:(\d+)/.exec(found)?.[1];
  return line === undefined ? file : `${file}:${line}`;
}
