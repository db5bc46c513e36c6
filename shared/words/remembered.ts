const most = 10_000;

/** A wording that takes long to find and is asked for again and again: the last few thousand are kept. */
export function remembered<Asked>(say: (asked: Asked) => string): (asked: Asked) => string {
  const said = new Map<Asked, string>();
  return (asked) => {
    const known = said.get(asked);
    if (known !== undefined) return known;
    if (said.size >= most) said.clear();
    const words = say(asked);
    said.set(asked, words);
    return words;
  };
}
