import {
  type SymbolType,
  symbol,
  symbolCircle,
  symbolDiamond2,
  symbolPlus,
  symbolSquare,
  symbolTimes,
  symbolTriangle,
} from "d3-shape";
import type { Marker } from "../sheets/plan.ts";

const SHAPES: Readonly<Record<Exclude<Marker, "none">, SymbolType>> = {
  circle: symbolCircle,
  square: symbolSquare,
  diamond: symbolDiamond2,
  triangle: symbolTriangle,
  x: symbolTimes,
  plus: symbolPlus,
};

/** Markers drawn by strokes alone. */
export function isStroked(marker: Marker): boolean {
  return marker === "x" || marker === "plus";
}

/** Path of a marker about the origin, `size` pixels across or near it: shapes of a size cover the same area. */
export function markerPath(marker: Marker, size: number): string {
  return marker === "none" ? "" : (symbol(SHAPES[marker], (Math.PI / 4) * size ** 2)() ?? "");
}
