import type { SameConditions } from "../fitting/same-conditions.ts";
import type { Session } from "../fitting/session.ts";
import type { SessionFlight } from "../fitting/session-flight.ts";
import { metricOf } from "../shots/metrics.ts";
import { BEFORE_BUILDS, PER_BUILD } from "./comparison-table.ts";
import { numberFormat, showing, unitText } from "./display-session.ts";
import type { CellValue } from "./plan.ts";
import { area, type SheetDraft } from "./sheet-draft.ts";

/** Column of a build's four in which the table above has its changes. */
const CHANGE = 2;

type Step = "sameAir" | "sameAirSameSpeed" | "strikeAdjusted";

/**
 * Carry in the same air, then at the same club speed, then with the usual strike, build beside build, and whether an
 * iron's mean shot holds a green. Values, not formulas, since no native formula flies a ball: a line below says when they
 * were worked out. Answers the next free row; nothing is put where no build can be flown.
 */
export function putSameAir(
  draft: SheetDraft,
  session: Session,
  flight: SessionFlight,
  made: string,
  from: number,
): number {
  if (flight.same.length === 0) return from;
  const width = session.builds.length * PER_BUILD;
  draft.put(from, 0, [["Carry in the same air, at the same club speed"]]);
  draft.style(area(from, 0, 1, BEFORE_BUILDS + width), "group");
  let row = from + 1;
  for (const [step, label] of stepsOf(session, flight)) {
    draft.put(row, 0, [[label, unitText(metricOf("carry"), session.units)]], "label");
    draft.put(row, BEFORE_BUILDS, [cellsOf(session, flight.same, step)], "figure", numberFormat(1));
    session.builds.forEach((_, b) => {
      draft.format(area(row, BEFORE_BUILDS + b * PER_BUILD + CHANGE), numberFormat(1, true));
    });
    row += 1;
  }
  if (flight.green.length > 0) {
    draft.put(row, 0, [["On a green", ""]], "label");
    session.builds.forEach(({ name }, b) => {
      const verdict = flight.green.find(({ build }) => build === name)?.verdict ?? "";
      draft.putAcross(row, BEFORE_BUILDS + b * PER_BUILD, CHANGE, verdict, "figure");
    });
    row += 1;
  }
  const note = [`Values of the flight model, worked out ${made}.`, ...airWords(flight), ...flight.notes];
  draft.putAcross(row, 0, BEFORE_BUILDS + width, note.join(" "), "small", 26);
  return row + 1;
}

/** The rows that there are figures for. */
function stepsOf(session: Session, { same }: SessionFlight): [Step, string][] {
  const speed = metricOf("clubSpeed");
  const common = showing(speed, session.units)(same[0]!.clubSpeed ?? 0);
  const steps: [Step, string][] = [
    ["sameAir", "In standard air"],
    ["sameAirSameSpeed", `and at ${common.toFixed(1)} ${unitText(speed, session.units)}`],
    ["strikeAdjusted", "and usual strike"],
  ];
  return steps.filter(([step]) => same.some((one) => one[step] !== null));
}

/** For each build its carry, and how far that lies from the baseline's. */
function cellsOf(session: Session, same: readonly SameConditions[], step: Step): CellValue[] {
  const shown = showing(metricOf("carry"), session.units);
  const of = (build: string) => same.find((one) => one.build === build)?.[step] ?? null;
  const base = of(session.baseline);
  return session.builds.flatMap(({ name }): CellValue[] => {
    const carry = of(name);
    const change = carry === null || base === null || name === session.baseline ? null : shown(carry - base);
    return [carry === null ? null : shown(carry), null, change, null];
  });
}

function airWords({ airStated, density, calibration }: SessionFlight): string[] {
  const words = airStated && density !== null ? [`Air as it was hit: ${density.toFixed(3)} kg/m3.`] : [];
  if (calibration) {
    const share = (factor: number) =>
      `${factor >= 1 ? "+" : "-"}${Math.abs(100 * (factor - 1)).toFixed(1)} %`;
    const { drag, lift } = calibration;
    words.push(
      `The flights of this bay differ from the model by ${share(drag.value)} drag (${share(drag.low)} to ${share(drag.high)}) and ${share(lift.value)} lift (${share(lift.low)} to ${share(lift.high)}); corrections are ratios, so that this cancels.`,
    );
  }
  return words;
}
