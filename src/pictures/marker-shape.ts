import {
  type SymbolType,
  symbol,
  symbolCircle,
  symbolDiamond,
  symbolPlus,
  symbolSquare,
  symbolTimes,
  symbolTriangle,
} from "d3-shape";
import { buildMarker } from "../sheets/palette.ts";
import { type Look, lookColor } from "./look.ts";
import { type Mark, mark } from "./mark.ts";

const SHAPES: Readonly<Record<ReturnType<typeof buildMarker>, SymbolType>> = {
  circle: symbolCircle,
  square: symbolSquare,
  diamond: symbolDiamond,
  triangle: symbolTriangle,
  x: symbolTimes,
  plus: symbolPlus,
};

/** The marker of the build at `place`, about `size` pixels across, shape and colour both its own. */
export function markerShape(
  look: Look,
  place: number,
  x: number,
  y: number,
  size: number,
  faint = false,
): Mark {
  const marker = buildMarker(place);
  const open = marker === "x" || marker === "plus";
  const color = lookColor(look, place);
  return mark("path", {
    d: symbol(SHAPES[marker], size * size * (open ? 0.6 : 0.7))() ?? "",
    transform: `translate(${round(x)},${round(y)})`,
    fill: open ? "none" : color,
    stroke: open ? color : look.surface,
    "stroke-width": open ? 1.8 : 0.8,
    ...(faint ? { opacity: 0.35 } : {}),
  });
}

/** A tenth of a pixel is finer than a screen shows. */
export function round(value: number): number {
  return Math.round(value * 10) / 10;
}
