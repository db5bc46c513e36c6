/** Why a file cannot be shown as a photograph, or played as a recording, as a phrase that can follow "Found": "an empty file (0 bytes)". */
export class RefusedFile extends Error {
  override readonly name = "RefusedFile";
  /** What to do about it, as a sentence. */
  readonly remedy: string | undefined;

  constructor(message: string, remedy?: string) {
    super(message);
    this.remedy = remedy;
  }
}

export const readFormats = "JPEG, PNG, WebP, AVIF, TIFF or GIF";
