import { mean } from "simple-statistics";
import { isProblem } from "../outcome/problem.ts";
import { metricOf } from "../shots/metrics.ts";
import { displayUnit } from "../shots/unit-set.ts";
import { convert } from "../units/convert.ts";
import { buildValues } from "./build-values.ts";
import { clubKindIn } from "./club-kind.ts";
import { loftAnswers } from "./loft-answers.ts";
import type { Session } from "./session.ts";
import { standardClubs } from "./standard-clubs.ts";

/** Beside every carry that is computed so. */
export const CARRY_NOTE =
  "Carries of the set are computed from the mean strike of the tested club, loft by loft, at one head speed. A shorter club is swung a little slower, so true gaps are somewhat wider: hit a few clubs before you bend lofts.";

/** Where some club of a set has no computed carry, though others have. */
export const FAR_LOFTS =
  "Clubs without a carry have no loft entered, or one too far from the tested one to be told by its strike.";

/**
 * How far each loft of a set would carry, from the tested build's mean carry and strike, in the unit that is shown.
 * Undefined where the session has no carry or strike, and for lofts more than ten degrees away from the tested one.
 */
export function carryOfLoft(
  session: Session,
  build: string,
): (loft: number | undefined) => number | undefined {
  const { kind } = clubKindIn(session.table, session.title);
  const said = [...new Set(session.table.club), session.title].join(" ");
  const { clubs, tested } = standardClubs(kind, said);
  const own = session.builds.find(({ name }) => name === build)?.loft;
  const from = own ?? clubs.find(({ club }) => club === tested)?.loft;
  const carries = buildValues(session.table, build, "carry");
  const unit = displayUnit(metricOf("carry"), session.units);
  return (loft) => {
    if (loft === undefined || from === undefined || carries.length === 0) return undefined;
    const delta = loft - from;
    const answers = delta === 0 ? null : loftAnswers(session, build, delta);
    if (answers !== null && isProblem(answers)) return undefined;
    const carry = convert(mean(carries) + (answers?.change.carry?.value ?? 0), "yd", unit);
    return isProblem(carry) ? undefined : carry;
  };
}
