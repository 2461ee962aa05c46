/** What a launch monitor says of a flight; angles in degrees, the rest in one unit of length. */
export interface MeasuredFlight {
  readonly launch: number;
  readonly height: number;
  readonly landingAngle: number;
  readonly carry: number;
}

/**
 * A smooth curve that starts at the measured launch angle, peaks at the measured height and comes down at the
 * measured angle and carry: a cubic Bezier curve with both handles at 4/3 of the height, which makes its top exactly
 * the height. What happens between those is drawn, not measured. Empty where the four figures do not make a flight.
 */
export function flightCurve(flight: MeasuredFlight, points = 40): { ahead: number; height: number }[] {
  const { launch, height, landingAngle, carry } = flight;
  const handle = (4 / 3) * height;
  const first = handle / Math.tan((launch * Math.PI) / 180);
  const second = carry - handle / Math.tan((landingAngle * Math.PI) / 180);
  // Handles between both ends make a curve that never runs back.
  const runs = [first, second].every((ahead) => ahead >= 0 && ahead <= carry) && height > 0;
  if (!runs) return [];
  return Array.from({ length: points + 1 }, (_, i) => {
    const t = i / points;
    const s = 1 - t;
    return {
      ahead: 3 * s * s * t * first + 3 * s * t * t * second + t ** 3 * carry,
      height: 3 * s * t * handle * (s + t),
    };
  });
}
