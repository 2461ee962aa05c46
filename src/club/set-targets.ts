import { invalid, isProblem, type Outcome } from "../outcome/problem.ts";
import { assembleClub } from "./assemble-club.ts";
import type { ClubParts } from "./club-parts.ts";
import type { ClubTarget } from "./club-target.ts";
import { progression } from "./progression.ts";
import type { SetRequest } from "./set-request.ts";
import { swingweightMoment } from "./swingweight-moment.ts";
import { swingweightScale } from "./swingweight-scale.ts";
import { weightFor } from "./weight-for.ts";

/** What each club of a set is built to, its own code before the set's. `parts`: the clubs without heads. */
export function setTargets(
  { clubs, target }: SetRequest,
  parts: readonly ClubParts[],
): Outcome<ClubTarget[]> {
  const common = commonTargets(
    clubs.map((club) => club.club),
    target,
    parts,
  );
  if (isProblem(common)) return common;
  return clubs.map(({ swingweight }, index) =>
    swingweight === undefined ? common[index]! : { kind: "swingweight", code: swingweight },
  );
}

function commonTargets(
  labels: readonly string[],
  target: SetRequest["target"],
  parts: readonly ClubParts[],
): Outcome<ClubTarget[]> {
  if (target.kind === "inertia") return labels.map(() => target);
  if (target.kind === "swingweight") {
    const moment = swingweightMoment(target.code);
    if (isProblem(moment)) return moment;
    const step = (target.step ?? 0) * swingweightScale.point;
    const moments = progression(labels, target.reference ?? labels[0]!, moment, step);
    return isProblem(moments) ? moments : moments.map((each) => ({ kind: "moment", moment: each }));
  }
  const at = labels.findIndex(
    (label) => label.trim().toLowerCase() === target.reference.trim().toLowerCase(),
  );
  const reference = parts[at];
  if (!reference) {
    return invalid(
      `reference "${target.reference}" is not among the clubs; it should be one of: ${labels.join(", ")}.`,
    );
  }
  const weight = weightFor(reference, { kind: "head" }, { kind: "swingweight", code: target.code });
  if (isProblem(weight)) return weight;
  const club = assembleClub({ ...reference, head: { weight } });
  return isProblem(club) ? club : labels.map(() => ({ kind: "inertia", inertia: club.inertiaButt }));
}
