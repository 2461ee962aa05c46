import type { ClubParts } from "./club-parts.ts";
import type { SetClub, SetRequest } from "./set-request.ts";

/** The parts of one club of a set with no head yet, its shaft of so many grams. */
export function setParts(request: SetRequest, club: SetClub, shaftWeight: number): ClubParts {
  const { shaftBlank = {}, grip, ferrule, epoxy } = request;
  const cutLength = club.length - (club.bore ?? 0);
  const rawLength = club.rawLength ?? cutLength + (club.tipTrim ?? 0);
  return {
    length: club.length,
    head: { weight: 0 },
    shaft: { weight: shaftWeight, length: rawLength, balance: rawLength * (shaftBlank.balanceShare ?? 0.5) },
    trims: { tip: club.tipTrim, cutLength, tipKind: shaftBlank.tipKind, limits: shaftBlank.limits },
    grip,
    ...(ferrule === undefined ? {} : { ferrule: { weight: ferrule } }),
    ...(epoxy === undefined ? {} : { epoxy: { weight: epoxy } }),
  };
}
