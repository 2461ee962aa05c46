import { mean } from "simple-statistics";
import { type Holding, holdsGreen } from "../flight/uses/holds-green.ts";
import { isProblem } from "../outcome/problem.ts";
import { buildValues } from "./build-values.ts";
import { type ClubKind, clubKindIn } from "./club-kind.ts";
import { fillSession } from "./fill-session.ts";
import type { Session } from "./session.ts";

/** Whether a build's mean shot stops on a green. */
export interface BuildHolding extends Holding {
  readonly build: string;
  /** Whether the landing angle, or a part of it, was computed. */
  readonly computed: boolean;
}

const INTO_GREENS: readonly ClubKind[] = ["hybrid", "long iron", "mid iron", "short iron", "wedge"];

/**
 * For clubs that are hit into greens, whether each build's mean landing angle and spin hold one (common practice, no
 * source). Empty for drivers and fairway woods; builds without spin, or without a landing angle that can be had, are left out.
 */
export function greenWords(session: Session): BuildHolding[] {
  if (!INTO_GREENS.includes(clubKindIn(session.table, session.title).kind)) return [];
  const { table, computed } = fillSession(session);
  return session.builds.flatMap(({ name }) => {
    const [angles, spins] = [buildValues(table, name, "landingAngle"), buildValues(table, name, "spin")];
    if (angles.length === 0 || spins.length === 0) return [];
    const holding = holdsGreen(mean(angles), mean(spins));
    if (isProblem(holding)) return [];
    const marked = computed.get("landingAngle") ?? new Set();
    const some = [...marked].some((shot) => table.keep[shot] && table.build[shot] === name);
    return [{ ...holding, build: name, computed: some }];
  });
}
