export interface RecordingFormat {
  readonly container: "matroska" | "iso" | "wave" | "mpeg" | "flac";
  readonly kind: "video" | "sound";
  readonly type: string;
  readonly extension: string;
}

export const playedFormats = "WebM, MP4, MP3, WAV or FLAC";

const sound = (
  container: RecordingFormat["container"],
  type: string,
  extension: string,
): RecordingFormat => ({
  container,
  kind: "sound",
  type,
  extension,
});

/** So much of a file is enough to tell its format by. */
export const headLength = 4096;

/** The brands of the `ftyp` box that promise sound alone. */
const soundBrands = ["M4A ", "M4B ", "F4A "];

/**
 * By the first bytes, since a name may say anything; null for what is no recording that browsers play. Each of these
 * can be freed of what a camera writes beside the picture.
 */
export function recordingFormat(head: Buffer): RecordingFormat | null {
  const has = (text: string, at = 0) => head.toString("latin1", at, at + text.length) === text;
  if (has("\x1a\x45\xdf\xa3")) {
    return head.includes("webm", 0, "latin1")
      ? { container: "matroska", kind: "video", type: "video/webm", extension: "webm" }
      : null;
  }
  if (has("ftyp", 4)) {
    const brand = head.toString("latin1", 8, 12);
    if (soundBrands.includes(brand)) return sound("iso", "audio/mp4", "m4a");
    return /^(?:isom|iso\d|mp4\d|avc1|M4V |M4VP|dash|qt {2}|MSNV|3gp\d)$/.test(brand)
      ? { container: "iso", kind: "video", type: "video/mp4", extension: "mp4" }
      : null;
  }
  if (has("RIFF") && has("WAVE", 8)) return sound("wave", "audio/wav", "wav");
  if (has("fLaC")) return sound("flac", "audio/flac", "flac");
  // A tag, or the frame header of layer III at once (ISO/IEC 11172-3, 2.4.2.3).
  const frame = head.length >= 2 && head[0] === 0xff && ((head[1] ?? 0) & 0xe6) === 0xe2;
  return has("ID3") || frame ? sound("mpeg", "audio/mpeg", "mp3") : null;
}
