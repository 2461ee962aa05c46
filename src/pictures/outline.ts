import type { Ellipse } from "../stats/ellipse.ts";
import type { GroundPoint } from "./group-picture.ts";

/** Points around an ellipse whose x is carry and whose y is offline, as `groupSummary` gives it. */
export function outline(ellipse: Ellipse, points = 48): GroundPoint[] {
  const turn = (ellipse.angle * Math.PI) / 180;
  return Array.from({ length: points }, (_, i) => {
    const at = (2 * Math.PI * i) / points;
    const along = ellipse.longHalf * Math.cos(at);
    const across = ellipse.shortHalf * Math.sin(at);
    return {
      carry: ellipse.centreX + along * Math.cos(turn) - across * Math.sin(turn),
      offline: ellipse.centreY + along * Math.sin(turn) + across * Math.cos(turn),
    };
  });
}
