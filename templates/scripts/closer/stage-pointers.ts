import type { Point } from "./sheet-view.ts";

export interface StageGestures {
  readonly drag: (by: Point) => void;
  readonly pinch: (at: Point, factor: number) => void;
  readonly tap: (at: Point) => void;
  /** A finger drawn across: 1 to the next picture, -1 to the one before. */
  readonly swipe: (step: 1 | -1) => void;
}

/** A finger does not hold still. */
const stillness = 8;
const swipeLength = 60;

const middle = (one: Point, other: Point): Point => ({ x: (one.x + other.x) / 2, y: (one.y + other.y) / 2 });
const apart = (one: Point, other: Point): number => Math.hypot(one.x - other.x, one.y - other.y);

/** One pointer drags, taps or swipes; two pinch. Links on the stage keep their clicks. */
export function followPointers(stage: HTMLElement, gestures: StageGestures): void {
  const down = new Map<number, Point>();
  let began: Point | null = null;
  let travelled = 0;

  const placeOf = ({ clientX, clientY }: MouseEvent): Point => {
    const { left, top } = stage.getBoundingClientRect();
    return { x: clientX - left, y: clientY - top };
  };

  // A picture is not to be carried off: that would end the gesture.
  stage.addEventListener("dragstart", (event) => event.preventDefault());
  stage.addEventListener("pointerdown", (event) => {
    if (event.button !== 0 || (event.target instanceof Element && event.target.closest("a"))) return;
    const place = placeOf(event);
    down.set(event.pointerId, place);
    stage.setPointerCapture(event.pointerId);
    if (down.size === 1) {
      began = place;
      travelled = 0;
    } else began = null;
  });

  stage.addEventListener("pointermove", (event) => {
    const before = down.get(event.pointerId);
    if (!before) return;
    const place = placeOf(event);
    travelled += apart(before, place);
    const other = [...down].find(([id]) => id !== event.pointerId)?.[1];
    down.set(event.pointerId, place);
    if (!other) {
      if (travelled > stillness) stage.classList.add("dragging");
      gestures.drag({ x: place.x - before.x, y: place.y - before.y });
      return;
    }
    const [was, is] = [middle(before, other), middle(place, other)];
    gestures.drag({ x: is.x - was.x, y: is.y - was.y });
    const distance = apart(before, other);
    if (distance > 0) gestures.pinch(is, apart(place, other) / distance);
  });

  const lift = (event: PointerEvent) => {
    if (!down.delete(event.pointerId) || down.size > 0) return;
    stage.classList.remove("dragging");
    const place = placeOf(event);
    if (!began || event.type === "pointercancel") return;
    const [across, along] = [place.x - began.x, place.y - began.y];
    if (travelled <= stillness) gestures.tap(place);
    else if (
      event.pointerType !== "mouse" &&
      Math.abs(across) > swipeLength &&
      Math.abs(across) > 2 * Math.abs(along)
    )
      gestures.swipe(across < 0 ? 1 : -1);
  };
  stage.addEventListener("pointerup", lift);
  stage.addEventListener("pointercancel", lift);
}
