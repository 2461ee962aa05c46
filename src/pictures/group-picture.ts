import { extent } from "d3-array";
import { label, rulesAcross, rulesUp } from "./axes.ts";
import { dash } from "./dash.ts";
import { type Frame, picture } from "./frame.ts";
import { linear } from "./linear.ts";
import { lookColor } from "./look.ts";
import { type Mark, mark } from "./mark.ts";
import { markerShape } from "./marker-shape.ts";
import { pathThrough } from "./path-through.ts";
import { round } from "./round.ts";

/** One build's shots as they lie on the ground. */
export interface Group {
  readonly name: string;
  /** The build's place, counted from 0: gives colour and marker. */
  readonly place: number;
  readonly shots: readonly GroundPoint[];
  /** Shots that are not counted; drawn faint. */
  readonly left: readonly GroundPoint[];
  /** The outline in which 95 of 100 further shots are expected, where there are enough shots for one. */
  readonly outline?: readonly GroundPoint[];
}

/** Where a ball came to ground, as seen from above. */
export interface GroundPoint {
  /** Right of the target is positive. */
  readonly offline: number;
  readonly carry: number;
}

const EDGE = { left: 34, right: 10, top: 18, bottom: 32 };
const NARROWEST = 10;

/**
 * Where the shots came down, seen from above with the target straight ahead at the top. A yard is as long across as
 * it is ahead, so a group has its true shape.
 */
export function groupPicture(frame: Frame, groups: readonly Group[], unit: string, text: string): Mark {
  const all = groups.flatMap((group) => [...group.shots, ...group.left, ...(group.outline ?? [])]);
  const [near = 0, far = 1] = extent(all, (point) => point.carry) as [number?, number?];
  const side = Math.max(NARROWEST / 2, ...all.map((point) => Math.abs(point.offline))) * 1.08;
  const depth = Math.max(NARROWEST, (far - near) * 1.12);
  const across = frame.width - EDGE.left - EDGE.right;
  const ahead = Math.min(across * 1.25, Math.max(120, (across * depth) / (2 * side)));
  // The side that would be stretched gets more ground instead.
  const perPixel = Math.max((2 * side) / across, depth / ahead);
  const middle = (near + far) / 2;
  const bottom = EDGE.top + ahead;
  const x = linear([-perPixel * (across / 2), perPixel * (across / 2)], [EDGE.left, EDGE.left + across]);
  const y = linear([middle - (perPixel * ahead) / 2, middle + (perPixel * ahead) / 2], [bottom, EDGE.top]);
  const marks = [
    ...rulesAcross(frame, y, EDGE.left, EDGE.left + across),
    ...rulesUp(frame, x, EDGE.top, bottom),
    mark("line", {
      x1: round(x(0)),
      x2: round(x(0)),
      y1: EDGE.top - 6,
      y2: bottom,
      stroke: frame.look.ink,
      "stroke-width": 1.2,
    }),
    label(frame, round(x(0)), 10, "target"),
    label(frame, EDGE.left, 10, `carry, ${unit}`, "start"),
    label(frame, round(x(0)), bottom + 27, `\u2190 left, ${unit}, right \u2192`),
    ...groups.flatMap((group) => groupMarks(frame, group, x, y)),
  ];
  return picture(frame, bottom + EDGE.bottom, "Where the shots came down, seen from above", text, marks);
}

type Across = (value: number) => number;

function groupMarks(frame: Frame, group: Group, x: Across, y: Across): Mark[] {
  const { look } = frame;
  const at = (point: GroundPoint, faint: boolean) =>
    markerShape(look, group.place, x(point.offline), y(point.carry), 8, faint);
  const outline = group.outline?.length
    ? [
        mark("path", {
          d: `${pathThrough(group.outline.map((point) => [x(point.offline), y(point.carry)]))}Z`,
          fill: lookColor(look, group.place),
          "fill-opacity": 0.07,
          stroke: lookColor(look, group.place),
          "stroke-width": 1.4,
          "stroke-dasharray": dash(group.place),
        }),
      ]
    : [];
  return [
    ...outline,
    ...group.left.map((point) => at(point, true)),
    ...group.shots.map((point) => at(point, false)),
  ];
}
