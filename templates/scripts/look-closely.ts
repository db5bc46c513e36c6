import {
  type Extent,
  greatestScale,
  keptInside,
  movedBy,
  type Point,
  scaledAbout,
  type View,
  wholeExtent,
} from "./closer/sheet-view.ts";
import { followPointers } from "./closer/stage-pointers.ts";

/**
 * A photograph as large as the window and nearer: by wheel, two fingers, keys or buttons. Without this the link
 * below each photograph leads to its largest file.
 */
const dialog = document.querySelector<HTMLDialogElement>("dialog.closer");
const plates = [...document.querySelectorAll<HTMLElement>(".plate")];

const nearerStep = 1.5;
const keyStep = 80;
const tapScale = 2.5;

function openCloser(dialog: HTMLDialogElement, stage: HTMLElement, sheet: HTMLElement): void {
  const place = dialog.querySelector(".closer-place");
  const caption = dialog.querySelector(".closer-caption");
  const numbers = dialog.querySelector<HTMLButtonElement>("[data-does='numbers']");
  let shown = 0;
  let picture: Extent = { width: 1, height: 1 };
  let view: View = { x: 0, y: 0, scale: 1 };
  let opener: HTMLElement | null = null;

  // To a part of a pixel, which clientWidth and clientHeight round away.
  const stageExtent = (): Extent => stage.getBoundingClientRect();
  const middleOfStage = (): Point => {
    const { width, height } = stageExtent();
    return { x: width / 2, y: height / 2 };
  };
  const isMagnified = () => view.scale > 1.001;

  const look = (next: View) => {
    const opening = stageExtent();
    const whole = wholeExtent(picture, opening);
    view = keptInside(next, whole, opening);
    const width = whole.width * view.scale;
    sheet.style.inlineSize = `${width}px`;
    sheet.style.blockSize = `${whole.height * view.scale}px`;
    sheet.style.transform = `translate(${view.x}px, ${view.y}px)`;
    stage.classList.toggle("magnified", isMagnified());
    // The browser fetches a larger file once one is needed.
    for (const source of sheet.querySelectorAll("source")) source.sizes = `${Math.ceil(width)}px`;
  };
  const nearer = (factor: number, at = middleOfStage()) => {
    const whole = wholeExtent(picture, stageExtent());
    look(scaledAbout(view, at, factor, greatestScale(picture, whole)));
  };
  const wholeAgain = () => look({ x: 0, y: 0, scale: 1 });

  const show = (index: number) => {
    shown = (index + plates.length) % plates.length;
    const plate = plates[shown];
    const original = plate?.querySelector("picture");
    const image = original?.querySelector("img");
    if (!plate || !original || !image) return;
    picture = { width: image.width, height: image.height };
    const natural = { width: Number(plate.dataset.width), height: Number(plate.dataset.height) };
    if (natural.width > 0 && natural.height > 0) picture = natural;
    const copy = original.cloneNode(true);
    if (copy instanceof HTMLElement) copy.querySelector("img")?.removeAttribute("loading");
    const marks = [...plate.querySelectorAll(".callouts")].map((each) => each.cloneNode(true));
    sheet.replaceChildren(copy, ...marks);
    if (numbers) numbers.hidden = marks.length === 0;
    if (place) place.textContent = plate.dataset.place ?? "";
    if (caption) caption.textContent = plate.querySelector(".plate-caption")?.textContent ?? "";
    wholeAgain();
  };
  const step = (by: number) => {
    if (plates.length > 1) show(shown + by);
  };

  const does: Readonly<Record<string, () => void>> = {
    previous: () => step(-1),
    next: () => step(1),
    nearer: () => nearer(nearerStep),
    farther: () => nearer(1 / nearerStep),
    whole: wholeAgain,
    close: () => dialog.close(),
    numbers() {
      const hidden = dialog.classList.toggle("without-numbers");
      numbers?.setAttribute("aria-pressed", String(!hidden));
    },
  };
  const arrow = (x: number, y: number) => () => {
    if (isMagnified()) look(movedBy(view, { x: x * keyStep, y: y * keyStep }));
    else if (x !== 0) step(-x);
  };
  const keys: Readonly<Record<string, (() => void) | undefined>> = {
    "+": does.nearer,
    "=": does.nearer,
    "-": does.farther,
    "0": wholeAgain,
    ArrowLeft: arrow(1, 0),
    ArrowRight: arrow(-1, 0),
    ArrowUp: arrow(0, 1),
    ArrowDown: arrow(0, -1),
    PageUp: does.previous,
    PageDown: does.next,
    Home: () => show(0),
    End: () => show(plates.length - 1),
  };

  dialog.addEventListener("keydown", (event) => {
    const act = keys[event.key];
    if (!act || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    act();
  });
  dialog.addEventListener("click", ({ target }) => {
    if (!(target instanceof Element)) return;
    const button = target.closest<HTMLElement>("[data-does]");
    if (button) does[button.dataset.does ?? ""]?.();
    // A number leads to the line of its part, which is behind the closer look.
    if (target.closest("a.callout")) {
      opener = null;
      dialog.close();
    }
  });
  dialog.addEventListener("close", () => {
    sheet.replaceChildren();
    opener?.focus({ preventScroll: true });
  });
  stage.addEventListener(
    "wheel",
    (event) => {
      event.preventDefault();
      const { left, top } = stage.getBoundingClientRect();
      // Lines and pages of a wheel are some pixels each.
      const unit = event.deltaMode === WheelEvent.DOM_DELTA_PIXEL ? 1 : 30;
      const factor = Math.exp((-event.deltaY * unit) / (event.ctrlKey ? 100 : 400));
      nearer(factor, { x: event.clientX - left, y: event.clientY - top });
    },
    { passive: false },
  );
  followPointers(stage, {
    drag: (by) => {
      if (isMagnified()) look(movedBy(view, by));
    },
    pinch: (at, factor) => nearer(factor, at),
    tap(at) {
      if (!isMagnified()) nearer(tapScale, at);
      else look(movedBy(view, { x: middleOfStage().x - at.x, y: middleOfStage().y - at.y }));
    },
    swipe: (by) => {
      if (!isMagnified()) step(by);
    },
  });
  window.addEventListener("resize", () => {
    if (dialog.open) look(view);
  });

  const open = (index: number, from: HTMLElement | null) => {
    opener = from;
    dialog.showModal();
    show(index);
  };
  plates.forEach((plate, index) => {
    const link = plate.querySelector<HTMLElement>(".look-closely");
    link?.setAttribute("aria-haspopup", "dialog");
    link?.addEventListener("click", (event) => {
      if (event.ctrlKey || event.metaKey || event.shiftKey) return;
      event.preventDefault();
      open(index, link);
    });
    plate.querySelector(".plate-picture")?.addEventListener("click", ({ target }) => {
      if (target instanceof Element && !target.closest("a")) open(index, link);
    });
  });
  document.documentElement.classList.add("has-closer");
}

const stage = dialog?.querySelector<HTMLElement>(".closer-stage");
const sheet = dialog?.querySelector<HTMLElement>(".closer-sheet");
if (dialog && stage && sheet) openCloser(dialog, stage, sheet);
