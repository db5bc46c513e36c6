import { v, n } from './shapes.mjs';

const sub = (a, b) => a.map((x, i) => x - b[i]);
const dot = (a, b) => a.reduce((s, x, i) => s + x * b[i], 0);
const cross = (a, b) => [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
const unit = (a) => a.map((x) => x / Math.hypot(...a));
const rad = Math.PI / 180;

/** A camera that looks at a point from `distance`, `tilt` degrees off the vertical, turned by `turn` about it. */
export function cameraAt({ look, distance, tilt, turn = 0, width, aspect = 4 / 3 }) {
  const location = [
    look[0] - distance * Math.sin(tilt * rad) * Math.sin(turn * rad),
    look[1] + distance * Math.cos(tilt * rad),
    look[2] - distance * Math.sin(tilt * rad) * Math.cos(turn * rad),
  ];
  const half = width / 2 / distance;
  const forward = unit(sub(look, location));
  const sky = tilt < 1 ? [0, 0, 1] : [0, 1, 0];
  const right = unit(cross(sky, forward));
  const up = cross(forward, right);
  return {
    text: `camera { perspective location ${v(...location)} up y right ${n(aspect)}*x sky ${v(...sky)} angle ${n((2 * Math.atan(half)) / rad)} look_at ${v(...look)} }`,
    /** Where a point of the scene falls in the picture, each from 0 to 1, from the left and from the top. */
    project(point) {
      const d = sub(point, location);
      const depth = dot(d, forward);
      return [0.5 + dot(d, right) / depth / half / 2, 0.5 - (dot(d, up) / depth / half / 2) * aspect];
    },
  };
}
