/** As much of Eleventy as is used here; the package ships no types of its own. */
declare module "@11ty/eleventy" {
  import type { EleventyConfig } from "./add-site.ts";

  export default class Eleventy {
    constructor(
      input: string,
      output: string,
      options: { configPath: string; quietMode: boolean; config: (eleventyConfig: EleventyConfig) => void },
    );
    disableLogger(): void;
    write(): Promise<unknown>;
  }
}
