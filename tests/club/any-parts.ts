import fc from "fast-check";
import type { ClubParts } from "../../src/club/club-parts.ts";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Clubs over a wider range than any bench sees, every part present. */
export const anyParts: fc.Arbitrary<ClubParts> = fc
  .record({
    length: between(30, 50),
    head: between(120, 420),
    shaft: between(30, 140),
    balanceShare: between(0.35, 0.65),
    spare: between(1, 6),
    tip: between(0, 1),
    grip: between(20, 130),
    gripShare: between(0.35, 0.65),
    small: between(0, 12),
    tapePlace: between(12, 30),
  })
  .map(({ length, head, shaft, balanceShare, spare, tip, grip, gripShare, small, tapePlace }) => {
    const rawLength = length + spare;
    return {
      length,
      head: { weight: head, place: length - 0.5 },
      shaft: { weight: shaft, length: rawLength, balance: rawLength * balanceShare },
      trims: { tip, cutLength: length - 1 },
      grip: { weight: grip, length: 10.5, balance: 10.5 * gripShare },
      ferrule: { weight: small / 4 },
      epoxy: { weight: small / 3 },
      tipWeight: { weight: small },
      buttWeight: { weight: small * 2 },
      tape: [{ weight: small / 2, place: tapePlace }],
      extension: { weight: small / 5, length: 0.5, insert: 1.5 },
    };
  });
