import type { Look } from "./look.ts";
import { type Mark, mark } from "./mark.ts";
import { markerShape } from "./marker-shape.ts";

/** A build's marker alone, to stand beside its name. It says nothing to those who do not see it: the name does. */
export function markerSign(look: Look, place: number, size = 14): Mark {
  return mark(
    "svg",
    { viewBox: `0 0 ${size} ${size}`, width: size, height: size, "aria-hidden": "true" },
    markerShape(look, place, size / 2, size / 2, size * 0.8),
  );
}
