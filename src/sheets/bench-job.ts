import { planSet, type SetPlan } from "../club/plan-set.ts";
import { planWithShafts, type SetSorting } from "../club/plan-with-shafts.ts";
import { readSetFile } from "../club/read-set.ts";
import type { SetClub, SetRequest } from "../club/set-request.ts";
import type { BuildSpec } from "../fitting/build-spec.ts";
import { CARRY_NOTE, carryOfLoft, FAR_LOFTS } from "../fitting/carry-of-loft.ts";
import { clubKindIn } from "../fitting/club-kind.ts";
import type { Session } from "../fitting/session.ts";
import { setRequestFor } from "../fitting/set-request.ts";
import { invalid, isProblem, type Outcome, type Problem } from "../outcome/problem.ts";
import type { UnitSet } from "../shots/unit-set.ts";
import { benchLengths, setFileLengths } from "./bench-lengths.ts";
import { tolerancesOf } from "./checked-figures.ts";
import { sessionWords } from "./session-words.ts";

/** All that the bench needs to know: what was chosen, for whom, and the set worked out. */
export interface BenchJob {
  readonly build: BuildSpec;
  readonly player: string;
  readonly date: string;
  readonly place: string;
  /** In which units and with which decimal mark the sheet speaks; yards, inches and a point where left out. */
  readonly units?: UnitSet;
  readonly decimalMark?: string;
  readonly request: SetRequest;
  readonly plan: SetPlan;
  /** Shafts given out from the bin, where the set has one. */
  readonly sorting?: SetSorting;
  /** What the bench must know before it starts: the plan's warnings, then those of the bin. */
  readonly warnings: readonly string[];
  /** What was taken or computed where nothing was entered. */
  readonly notes?: readonly string[];
}

/**
 * A refusal in the lengths that the set was written in, and with the session's decimal mark, so that a figure is found
 * where it was typed.
 */
function asTyped(problem: Problem, session: Session, setText: string | null): Problem {
  const { words } = setText === null ? benchLengths(session.units) : setFileLengths(setText);
  return { ...problem, message: sessionWords(session)(words(problem.message)) };
}

/** Says how far a club of the set carries; gaps follow from it. The session's own flight, when left out. */
export type CarryOf = (club: SetClub) => number | undefined;

/**
 * From a chosen build to a set worked out: by the set file where there is one, else by the usual set that follows
 * from the build. What cannot be built is a problem that names the club and the figure.
 */
export function benchJob(
  session: Session,
  chosen: string,
  setText: string | null,
  carryOf?: CarryOf,
): Outcome<BenchJob> {
  const build = session.builds.find(({ name }) => name.toLowerCase() === chosen.trim().toLowerCase());
  if (!build) {
    const names = session.builds.map(({ name }) => `"${name}"`).join(", ");
    return invalid(`"${chosen.trim()}" is not among the builds; it should be one of ${names}.`);
  }
  const { table, title } = session;
  const request =
    setText === null
      ? setRequestFor(build, {
          kind: clubKindIn(table, title).kind,
          said: [...new Set(table.club), title].join(" "),
        })
      : readSetFile(setText);
  if (isProblem(request)) return asTyped(request, session, setText);
  const flown = carryOfLoft(session, build.name);
  const job = benchJobOf(session, build, request, carryOf ?? (({ loft }) => flown(loft)));
  if (isProblem(job)) return asTyped(job, session, setText);
  if (job.plan.clubs.every((club, i) => club.carry === request.clubs[i]!.carry)) return job;
  // A blank between figures looks like one that was forgotten.
  const far = job.plan.clubs.some(({ carry }) => carry === undefined);
  return { ...job, notes: [CARRY_NOTE, ...(far ? [FAR_LOFTS] : [])] };
}

/** The same from a set request that was made elsewhere. */
function benchJobOf(
  { player, date, place, units, decimalMark = "." }: Session,
  build: BuildSpec,
  request: SetRequest,
  carryOf?: CarryOf,
): Outcome<BenchJob> {
  const plan = planSet(request, carryOf);
  if (isProblem(plan)) return plan;
  const job = { build, player, date, place, units, decimalMark, request, plan };
  if (request.bin === undefined) return { ...job, warnings: plan.warnings };
  const sorting = planWithShafts(plan, request.bin, { tolerance: tolerancesOf(request).shaft });
  if (isProblem(sorting)) return sorting;
  return { ...job, sorting, warnings: [...plan.warnings, ...binWarnings(plan, sorting)] };
}

function binWarnings(plan: SetPlan, { choices }: SetSorting): string[] {
  return choices.flatMap(({ shaft, weight, difference, within }, index) => {
    if (within) return [];
    const heavier = `${Math.abs(difference).toFixed(1)} g ${difference > 0 ? "over" : "under"}`;
    return [
      `Club ${plan.clubs[index]!.club}: shaft ${shaft} of the bin, ${weight} g, is ${heavier} its target and out of tolerance.`,
    ];
  });
}
