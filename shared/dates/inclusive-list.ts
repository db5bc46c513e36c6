/**
 * The dates of an inclusive list, each as EDTF: its single members, and its runs as intervals. Any other date stands
 * for itself.
 *
 * Source  Library of Congress, EDTF (4 February 2019), "Set representation"
 * Checks  inclusiveList("{1930,1980}") => ["1930", "1980"]
 *         inclusiveList("{1667,1670..1672}") => ["1667", "1670/1672"]
 *         inclusiveList("{..1930,1980..}") => ["../1930", "1980/.."]
 *         inclusiveList("1930/1980") => ["1930/1980"]
 */
export function inclusiveList(text: string): readonly string[] {
  if (!text.startsWith("{")) return [text];
  const members = text.slice(1, -1).split(",");
  // Dots between two dates are an interval of both; at either end nothing bounds it.
  return members.map((member) =>
    member
      .split("..")
      .map((end) => end || "..")
      .join("/"),
  );
}
