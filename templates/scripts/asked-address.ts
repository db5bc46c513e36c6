/**
 * Runs before anything is painted: where the address asks for something, what stands in its place is kept back
 * until there is an answer, so that nothing moves. Should none come, all is shown as without a script.
 */
const longestWait = 5000;

if (location.search.length > 1) {
  const page = document.documentElement.classList;
  page.add("asked");
  setTimeout(() => page.add("answered"), longestWait);
}
