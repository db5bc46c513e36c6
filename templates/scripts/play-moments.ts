/**
 * A moment's link moves the player on the same page to its second; without this it leads to the file from that
 * second on. The moment that is played is marked in the list.
 */
const player = document.querySelector<HTMLMediaElement>(".recording video, .recording audio");

function follow(player: HTMLMediaElement): void {
  const moments = [...document.querySelectorAll<HTMLElement>("a.moment[data-seconds]")];

  for (const moment of moments) {
    moment.addEventListener("click", (event) => {
      if (event.ctrlKey || event.metaKey || event.shiftKey) return;
      event.preventDefault();
      const seconds = Number(moment.dataset.seconds);
      player.currentTime = seconds;
      // At once, as every link within a page: a slow way there ends where a photograph comes in meanwhile.
      player.scrollIntoView({ block: "nearest" });
      player.focus({ preventScroll: true });
      // A browser may refuse to start what nobody is looking at; the place is found all the same.
      player.play().catch(() => {});
    });
  }

  const lines = moments.flatMap((moment) => {
    const line = moment.closest<HTMLElement>(".moments li");
    return line ? [{ line, seconds: Number(moment.dataset.seconds) }] : [];
  });
  player.addEventListener("timeupdate", () => {
    const begun = lines.filter(({ seconds }) => seconds <= player.currentTime + 0.05);
    const now = begun.at(-1)?.seconds;
    for (const { line, seconds } of lines) {
      const isNow = seconds === now;
      line.classList.toggle("current", isNow);
      if (isNow) line.setAttribute("aria-current", "true");
      else line.removeAttribute("aria-current");
    }
  });
}

if (player) follow(player);
