/** What a register says in the collection's language, or in that of its script and region; undefined where it has neither. */
export function inLanguage<Text>(
  translated: Readonly<Record<string, Text>>,
  language: string,
): Text | undefined {
  const tag = [language, language.split("-")[0]?.toLowerCase() ?? ""].find((each) =>
    Object.hasOwn(translated, each),
  );
  return tag === undefined ? undefined : translated[tag];
}
