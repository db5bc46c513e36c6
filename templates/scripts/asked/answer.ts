const page = document.documentElement.classList;

/** Who is to answer is there. */
export const answering = (): void => page.add("answering");

/** What the address asks for is there, or it asks for nothing. */
export function answered(): void {
  page.add("answered");
  page.remove("unanswered");
}

/** It cannot be had: what stands without a script is shown, with a sentence that says so. */
export function unanswered(): void {
  page.add("unanswered");
  page.remove("answered");
}
