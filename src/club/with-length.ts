import { type ClubParts, usualGripLength } from "./club-parts.ts";

/**
 * The same head on more or less of the same shaft: the saw cuts at the butt, so all that lies beyond the grip moves
 * along with the tip, and what sits at the butt stays at the butt.
 */
export function withLength(parts: ClubParts, length: number): ClubParts {
  const more = length - parts.length;
  const { shaft, trims = {}, grip, tape } = parts;
  const now = trims.cutLength ?? shaft.length - (trims.tip ?? 0) - (trims.butt ?? 0);
  const moved = <T extends { readonly place?: number }>(part: T): T =>
    part.place === undefined ? part : { ...part, place: part.place + more };
  const underGrip = grip.length ?? usualGripLength;
  return {
    ...parts,
    length,
    head: moved(parts.head),
    trims: { ...trims, butt: undefined, cutLength: now + more },
    ferrule: parts.ferrule && moved(parts.ferrule),
    epoxy: parts.epoxy && moved(parts.epoxy),
    tipWeight: parts.tipWeight && moved(parts.tipWeight),
    tape: tape?.map((strip) => (strip.place > underGrip ? moved(strip) : strip)),
  };
}
