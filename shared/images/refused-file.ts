/** Why a file cannot be shown as a photograph, or played as a recording, as a phrase that can follow "Found": "an empty file (0 bytes)". */
export class RefusedFile extends Error {
  override readonly name = "RefusedFile";
}

export const readFormats = "JPEG, PNG, WebP, AVIF, TIFF or GIF";
