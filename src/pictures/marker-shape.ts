import { buildMarker } from "../sheets/palette.ts";
import { type Look, lookColor } from "./look.ts";
import { type Mark, mark } from "./mark.ts";
import { round } from "./round.ts";

/** The markers as paths about the origin; about equally dark to the eye at one size. */
const SHAPES: Readonly<Record<ReturnType<typeof buildMarker>, string>> = {
  circle: "M-.48,0A.48,.48,0,1,1,.48,0A.48,.48,0,1,1,-.48,0Z",
  square: "M-.42,-.42H.42V.42H-.42Z",
  diamond: "M0,-.62L.46,0L0,.62L-.46,0Z",
  triangle: "M0,-.58L.56,.42H-.56Z",
  x: "M-.42,-.42L.42,.42M-.42,.42L.42,-.42",
  plus: "M0,-.55V.55M-.55,0H.55",
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
    d: SHAPES[marker],
    transform: `translate(${round(x)},${round(y)}) scale(${size})`,
    fill: open ? "none" : color,
    stroke: open ? color : look.surface,
    "stroke-width": (open ? 1.8 : 0.8) / size,
    ...(faint ? { opacity: 0.35 } : {}),
  });
}
