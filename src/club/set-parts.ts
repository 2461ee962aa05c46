import type { ClubParts } from "./club-parts.ts";
import type { SetClub, SetRequest } from "./set-request.ts";

/** The parts of one club of a set with no head yet, its shaft of so many grams and trimmed so much at the tip. */
export function setParts(request: SetRequest, club: SetClub, shaftWeight: number, tip: number): ClubParts {
  const { shaftBlank = {}, grip, ferrule, epoxy } = request;
  const cutLength = club.length - (club.bore ?? 0);
  const rawLength = club.rawLength ?? cutLength + tip;
  return {
    length: club.length,
    head: { weight: 0 },
    shaft: { weight: shaftWeight, length: rawLength, balance: rawLength * (shaftBlank.balanceShare ?? 0.5) },
    trims: { tip, cutLength, tipKind: shaftBlank.tipKind, limits: shaftBlank.limits },
    grip,
    ...(ferrule === undefined ? {} : { ferrule: { weight: ferrule } }),
    ...(epoxy === undefined ? {} : { epoxy: { weight: epoxy } }),
  };
}
