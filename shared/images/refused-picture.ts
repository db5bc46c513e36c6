/** Why a file cannot be shown as a photograph, as a phrase that can follow "Found": "an empty file (0 bytes)". */
export class RefusedPicture extends Error {
  override readonly name = "RefusedPicture";
}

export const readFormats = "JPEG, PNG, WebP, AVIF, TIFF or GIF";
