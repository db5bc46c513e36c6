/** The types of JSON Schema in the words of messages, and of the page that tells what a field takes. */
export const typeNames = {
  string: "text",
  integer: "a whole number",
  number: "a number",
  boolean: "true or false",
  array: "a list",
  object: "a mapping of fields",
  null: "nothing",
};
