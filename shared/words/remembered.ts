const most = 10_000;

/** An answer that takes long to find and is asked for again and again: the last few thousand are kept. */
export function remembered<Asked, Answer extends string | number>(
  say: (asked: Asked) => Answer,
): (asked: Asked) => Answer {
  const said = new Map<Asked, Answer>();
  return (asked) => {
    const known = said.get(asked);
    if (known !== undefined) return known;
    if (said.size >= most) said.clear();
    const answer = say(asked);
    said.set(asked, answer);
    return answer;
  };
}
