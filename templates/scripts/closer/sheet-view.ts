/** How a picture lies behind the opening through which it is seen; all lengths in CSS pixels. */
export interface Extent {
  readonly width: number;
  readonly height: number;
}

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface View {
  /** Of the sheet's upper left corner. */
  readonly x: number;
  readonly y: number;
  /** How many times as large as when the whole of it is seen. */
  readonly scale: number;
}

/** As large as the whole of it is seen at once, and never larger than it is. */
export function wholeExtent(picture: Extent, stage: Extent): Extent {
  const share = Math.min(stage.width / picture.width, stage.height / picture.height, 1);
  return { width: picture.width * share, height: picture.height * share };
}

/** At the greatest, one point of the picture takes two by two; a small picture can still be brought nearer. */
export const greatestScale = (picture: Extent, whole: Extent): number =>
  Math.max(3, (2 * picture.width) / whole.width);

/** Nearer or farther about a point of the stage: what lies under that point stays there. */
export function scaledAbout(view: View, at: Point, factor: number, greatest: number): View {
  const scale = Math.min(Math.max(view.scale * factor, 1), greatest);
  const change = scale / view.scale;
  return { x: at.x - (at.x - view.x) * change, y: at.y - (at.y - view.y) * change, scale };
}

export const movedBy = (view: View, by: Point): View => ({ ...view, x: view.x + by.x, y: view.y + by.y });

/** No gap at an edge that the sheet could fill; in the middle where it cannot. */
export function keptInside(view: View, whole: Extent, stage: Extent): View {
  const along = (at: number, sheet: number, opening: number) =>
    sheet <= opening ? (opening - sheet) / 2 : Math.min(Math.max(at, opening - sheet), 0);
  return {
    x: along(view.x, whole.width * view.scale, stage.width),
    y: along(view.y, whole.height * view.scale, stage.height),
    scale: view.scale,
  };
}
