import { accessSync, constants, statSync } from "node:fs";
import path from "node:path";

type Environment = Readonly<Record<string, string | undefined>>;

/** The names under which browsers that print without a window are installed. */
export const browserNames = [
  "chromium",
  "chromium-browser",
  "google-chrome",
  "google-chrome-stable",
  "chrome",
  "microsoft-edge",
  "msedge",
] as const;

/** Where they stand on systems that put them on no PATH. */
const usualPlaces = ({ PROGRAMFILES, LOCALAPPDATA }: Environment): string[] => [
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
  ...[PROGRAMFILES, `${PROGRAMFILES} (x86)`, LOCALAPPDATA].flatMap((folder) =>
    folder === undefined
      ? []
      : [
          path.join(folder, "Google/Chrome/Application/chrome.exe"),
          path.join(folder, "Microsoft/Edge/Application/msedge.exe"),
        ],
  ),
];

function runs(file: string): boolean {
  try {
    accessSync(file, constants.X_OK);
    return statSync(file).isFile();
  } catch {
    return false;
  }
}

/** A browser of the machine's own: the one that CHROME_PATH names, else the first by its usual name; or none. */
export function installedBrowser(environment: Environment): string | undefined {
  const { CHROME_PATH, PATH = "" } = environment;
  if (CHROME_PATH) return runs(CHROME_PATH) ? CHROME_PATH : undefined;
  const onPath = browserNames.flatMap((name) =>
    PATH.split(path.delimiter)
      .filter((folder) => folder !== "")
      .map((folder) => path.join(folder, name)),
  );
  return [...onPath, ...usualPlaces(environment)].find(runs);
}
