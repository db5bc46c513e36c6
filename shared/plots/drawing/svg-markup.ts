export type Attributes = Readonly<Record<string, string | number | undefined>>;

const escaping = /[&<>"]/;

export const escapeXml = (text: string): string =>
  !escaping.test(text) ? text : text.replace(/[&<>"]/g, (letter) => `&#${letter.charCodeAt(0)};`);

/** A coordinate to a tenth of a unit, which no printer or screen can tell from more. */
export const coordinate = (value: number): string => {
  const rounded = Math.round(value * 10) / 10;
  return Object.is(rounded, -0) ? "0" : String(rounded);
};

/** An element of SVG or HTML; content is markup already, attribute values are escaped here. */
export function element(name: string, attributes: Attributes, ...content: readonly string[]): string {
  // A plan has some hundred elements, and a catalogue some thousand plans: no lists are made on the way.
  let open = `<${name}`;
  for (const key in attributes) {
    const value = attributes[key];
    if (value === undefined) continue;
    open += ` ${key}="${typeof value === "number" ? coordinate(value) : escapeXml(value)}"`;
  }
  return content.length === 0 ? `${open}/>` : `${open}>${content.join("")}</${name}>`;
}
