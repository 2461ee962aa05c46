import type { SetClub, SetRequest } from "./set-request.ts";

/**
 * A set request with every length of it put through `turn`: clubs, grip, trims, limits, the tape's place and the
 * tolerance of length. Weights, angles and codes stay.
 */
export function scaleLengths(request: SetRequest, turn: (length: number) => number): SetRequest {
  const each = <T extends object>(from: T, keys: readonly (keyof T)[]): T => {
    const turned = keys.flatMap((key) => {
      const value = from[key];
      return typeof value === "number" ? [[key, turn(value)] as const] : [];
    });
    return { ...from, ...Object.fromEntries(turned) };
  };
  const { clubs, grip, tipTrims, shaftBlank, tape, tolerances } = request;
  return {
    ...request,
    clubs: clubs.map((club) => each<SetClub>(club, ["length", "rawLength", "tipTrim", "bore"])),
    grip: each(grip, ["length", "balance"]),
    ...(tipTrims ? { tipTrims: each(tipTrims, ["tip", "step"]) } : {}),
    ...(shaftBlank
      ? {
          shaftBlank: {
            ...shaftBlank,
            ...(shaftBlank.limits ? { limits: each(shaftBlank.limits, ["tip", "butt", "cutLength"]) } : {}),
          },
        }
      : {}),
    ...(tape ? { tape: each(tape, ["up"]) } : {}),
    ...(tolerances ? { tolerances: each(tolerances, ["length"]) } : {}),
  };
}
