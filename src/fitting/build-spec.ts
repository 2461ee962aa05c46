/** What a build is. Only the name is sure; the rest is what the fitter has told. */
export interface BuildSpec {
  readonly name: string;
  /** Shaft weight, grams. */
  readonly weight?: number;
  /** Club length, inches. */
  readonly length?: number;
  readonly flex?: string;
  /** Bend or launch profile, in the shop's own word. */
  readonly profile?: string;
  readonly head?: string;
  /** Degrees. */
  readonly loft?: number;
  readonly swingweight?: string;
}

/** Shafts lie between these, grams (common practice, no source). */
const LIGHTEST = 30;
const HEAVIEST = 160;

/**
 * Reads what a build's name tells of it: shops mostly call builds by weight and profile, as in "105 g mid-launch".
 * Nothing is taken that the name does not say with a unit.
 */
export function specFromName(name: string): BuildSpec {
  const found = /(?:^|[^\d.,])(\d{2,3}(?:[.,]\d+)?)\s*(?:g|gr|grams?)\b/i.exec(name);
  const weight = found ? Number(found[1]!.replace(",", ".")) : Number.NaN;
  const profile = /\b(low|mid|high)[\s-]*(?:launch|flight|profile)?\b/i.exec(name)?.[1]?.toLowerCase();
  return {
    name,
    ...(weight >= LIGHTEST && weight <= HEAVIEST ? { weight } : {}),
    ...(profile ? { profile } : {}),
  };
}
