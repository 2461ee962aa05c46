import type { SameConditions } from "../fitting/same-conditions.ts";
import type { Session } from "../fitting/session.ts";
import type { SessionFlight } from "../fitting/session-flight.ts";
import { metricOf } from "../shots/metrics.ts";
import { showing } from "../shots/showing.ts";
import { cellName, sheetName } from "./a1.ts";
import { FIRST_CHART_COLUMN, FIRST_CHART_ROW } from "./chart-place.ts";
import { BEFORE_BUILDS, PER_BUILD } from "./comparison-table.ts";
import { numberFormat, unitText } from "./display-session.ts";
import { linesHigh } from "./lines-high.ts";
import type { CellValue, FormulaCell } from "./plan.ts";
import { sessionWords } from "./session-words.ts";
import { area, formula, type SheetDraft } from "./sheet-draft.ts";
import type { WorkingsLayout } from "./workings-sheet.ts";

/** Column of a build's four in which the table above has its changes. */
const CHANGE = 2;

const STEPS = ["sameAir", "sameAirSameSpeed", "strikeAdjusted"] as const;
type Step = (typeof STEPS)[number];

/**
 * Carry in the same air, then at the same club speed, then with the usual strike, build beside build, and whether an
 * iron's mean shot holds a green. No native formula flies a ball, so the flight model's factors stand on the Workings
 * sheet as values, and a line below says when they were worked out; the carries are the live averages times them. Answers
 * the next free row; nothing is put where no build can be flown.
 */
export function putSameAir(
  draft: SheetDraft,
  workings: SheetDraft,
  session: Session,
  flight: SessionFlight,
  layout: WorkingsLayout,
  made: string,
  from: number,
): number {
  if (flight.same.length === 0) return from;
  const width = session.builds.length * PER_BUILD;
  draft.put(from, 0, [["Carry in the same air, at the same club speed"]]);
  draft.style(area(from, 0, 1, BEFORE_BUILDS + width), "group");
  putFactors(workings, session, flight.same);
  let row = from + 1;
  for (const step of STEPS) {
    if (flight.same.every((one) => one[step] === null)) continue;
    draft.put(
      row,
      0,
      [[labelOf(session, flight, step), unitText(metricOf("carry"), session.units)]],
      "label",
    );
    draft.put(
      row,
      BEFORE_BUILDS,
      [cellsOf(session, flight.same, layout, step, row)],
      "figure",
      numberFormat(1),
    );
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
  const note = [`By factors of the flight model, worked out ${made}.`, ...airWords(flight), ...flight.notes];
  const columns = BEFORE_BUILDS + width;
  const words = sessionWords(session)(note.join(" "));
  draft.putAcross(row, 0, columns, words, "small", linesHigh(words, columns, "small"));
  return row + 1;
}

function labelOf(session: Session, { same }: SessionFlight, step: Step): string {
  if (step === "sameAir") return "In standard air";
  if (step === "strikeAdjusted") return "and usual strike";
  const speed = metricOf("clubSpeed");
  const common = showing(speed, session.units)(same[0]!.clubSpeed ?? 0);
  return sessionWords(session)(`and at ${common.toFixed(1)} ${unitText(speed, session.units)}`);
}

/** A row a build: the factor on its measured carry, or the carry itself where none was measured. */
function putFactors(workings: SheetDraft, session: Session, same: readonly SameConditions[]): void {
  const column = factorColumn(session);
  const headings = ["Build", "Standard air", "and same speed", "and usual strike"];
  workings.put(FIRST_CHART_ROW - 1, column, [headings], "headingCentre");
  const rows = same.map((one) => [one.build, ...STEPS.map((step) => factorOf(session, one, step))]);
  workings.put(FIRST_CHART_ROW, column, rows, "plain");
}

function factorOf(session: Session, one: SameConditions, step: Step): number | null {
  const carry = one[step];
  if (carry === null) return null;
  return one.measured === null ? showing(metricOf("carry"), session.units)(carry) : carry / one.measured;
}

/** Behind the pairs of the flight chart, which stand behind those of the other charts. */
function factorColumn(session: Session): number {
  return FIRST_CHART_COLUMN + 4 * session.builds.length + 8;
}

/** For each build its carry, and how far that lies from the baseline's on the same row. */
function cellsOf(
  session: Session,
  same: readonly SameConditions[],
  layout: WorkingsLayout,
  step: Step,
  row: number,
): CellValue[] {
  const carries = session.builds.map(({ name }) => carryCell(session, same, layout, step, name));
  const baseline = session.builds.findIndex(({ name }) => name === session.baseline);
  const base = carries[baseline];
  return session.builds.flatMap((_, b): CellValue[] => {
    const carry = carries[b];
    if (!carry) return [null, null, null, null];
    if (!base || b === baseline) return [carry, null, null, null];
    const [mine, theirs] = [b, baseline].map((at) => cellName(row, BEFORE_BUILDS + at * PER_BUILD, "both"));
    const change = formula(
      `IF(AND(ISNUMBER(${mine}),ISNUMBER(${theirs})),${mine}-${theirs},"")`,
      Number(carry.value) - Number(base.value),
    );
    return [carry, null, change, null];
  });
}

function carryCell(
  session: Session,
  same: readonly SameConditions[],
  layout: WorkingsLayout,
  step: Step,
  build: string,
): FormulaCell | null {
  const place = same.findIndex((one) => one.build === build);
  const one = same[place];
  if (!one || one[step] === null) return null;
  const column = factorColumn(session) + 1 + STEPS.indexOf(step);
  const factor = `${sheetName(layout.sheet)}!${cellName(FIRST_CHART_ROW + place, column, "both")}`;
  const value = showing(metricOf("carry"), session.units)(one[step]);
  if (one.measured === null) return formula(factor, value);
  const mean = layout.cell(build, "carry", "Mean");
  return formula(`IF(ISNUMBER(${mean}),${mean}*${factor},"")`, value);
}

function airWords({ airStated, density, calibration }: SessionFlight): string[] {
  const words = airStated && density !== null ? [`Air as it was hit: ${density.toFixed(3)} kg/m3.`] : [];
  if (calibration) {
    const share = (factor: number) =>
      `${factor >= 1 ? "+" : "-"}${Math.abs(100 * (factor - 1)).toFixed(1)} %`;
    const { drag, lift } = calibration;
    words.push(
      `The flights of this bay differ from the flight model (${calibration.model.name}) by ${share(drag.value)} drag (${share(drag.low)} to ${share(drag.high)}) and ${share(lift.value)} lift (${share(lift.low)} to ${share(lift.high)}); corrections are ratios, so that this cancels.`,
    );
  }
  return words;
}
