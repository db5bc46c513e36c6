/** Text in quotes and addresses, which stay as they are. */
export const kept = `"(?:[^"\\\\]|\\\\[\\s\\S])*"|'(?:[^'\\\\]|\\\\[\\s\\S])*'|url\\([^"')]*\\)`;
const comments = new RegExp(`${kept}|/\\*[\\s\\S]*?\\*/`, "g");
const spaces = new RegExp(`(${kept})|\\s*([{};,])\\s*|(?<=[\\w-]):\\s+|\\s+`, "g");

/**
 * A style sheet without its comments and without the white space that is for its writers only. A comment stands
 * for nothing, not for a space (CSS Syntax Level 3, 4.3.2), so one that alone parts two words stays, empty.
 */
export function shortStyle(text: string): string {
  const bare = text.replace(comments, (piece, at: number) => {
    if (!piece.startsWith("/*")) return piece;
    const parts = /[\w-]/.test(text[at - 1] ?? "") && /[\w-]/.test(text[at + piece.length] ?? "");
    return parts ? "/**/" : "";
  });
  return bare
    .replace(spaces, (piece, same: string | undefined, mark: string | undefined) => {
      if (same !== undefined) return same;
      if (mark !== undefined) return mark;
      return piece.startsWith(":") ? ":" : " ";
    })
    .trim();
}
