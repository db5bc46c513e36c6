/**
 * Runs before anything is painted: where the address asks for something, what stands in its place is kept back
 * until there is an answer, so that nothing moves. Should none come, all is shown as without a script, and a sentence
 * says so. It imports nothing, since the first line waits for it.
 */
const longestWait = 5000;

if (location.search.length > 1) {
  const page = document.documentElement.classList;
  page.add("asked");
  const giveUp = () => page.contains("answered") || page.add("unanswered");
  setTimeout(giveUp, longestWait);
  // Every script has run by then; one that has not was not there, or could not import what it needs.
  addEventListener("load", () => page.contains("answering") || giveUp());
}
