import type { SetPlanClub } from "../club/plan-set.ts";
import { isProblem } from "../outcome/problem.ts";
import { metricOf } from "../shots/metrics.ts";
import { displayUnit } from "../shots/unit-set.ts";
import type { BenchJob } from "./bench-job.ts";
import { type BenchLengths, benchLengths } from "./bench-lengths.ts";
import type { CheckedFigure } from "./checked-figures.ts";
import type { CellValue } from "./plan.ts";

/** A column of the Build sheet's first table: what to cut, weigh and bend for each club. */
export interface PlanColumn {
  readonly heading: string;
  readonly format: string;
  /** Whether it is a length, which every club has and which is shown in the units of the job. */
  readonly length?: true;
  /** Whether it is a carry: computed ones come in the unit that is shown, and those of a set file are taken to. */
  readonly carry?: true;
  /** The checked figure whose target stands in this column. */
  readonly checks?: CheckedFigure["key"];
  readonly of: (club: SetPlanClub, index: number, job: BenchJob) => CellValue | undefined;
}

const inches = "0.00##";
const grams = "0.0";
const signed = "+0.0#;-0.0#;0.0";
const signedGrams = "+0.0;-0.0;0.0";

// biome-ignore format: a table reads best with a line a row
const ALL: readonly PlanColumn[] = [
  { heading: "Length", length: true, format: inches, checks: "length", of: (club) => club.length },
  { heading: "Loft (°)", format: "0.0#", checks: "loft", of: (club) => club.loft },
  { heading: "Loft gap (°)", format: "0.0#", of: (club) => club.loftGap },
  { heading: "Lie (°)", format: "0.0#", checks: "lie", of: (club) => club.lie },
  { heading: "Raw shaft (g)", format: grams, checks: "shaft", of: (club) => club.shaftWeight },
  { heading: "Shaft no. in bin", format: "0", of: (_, index, { sorting }) => sorting?.choices[index]?.shaft },
  { heading: "Its weight (g)", format: grams, of: (_, index, { sorting }) => sorting?.choices[index]?.weight },
  { heading: "Drift (points)", format: "+0.00;-0.00;0.00", of: (_, index, { sorting }) => sorting?.drift[index] },
  { heading: "Raw length", length: true, format: inches, of: (club) => club.parts.shaft.length },
  { heading: "Tip trim", length: true, format: inches, of: (club) => club.cut.tip },
  { heading: "Butt trim", length: true, format: inches, of: (club) => club.cut.butt },
  { heading: "Cut length", length: true, format: inches, of: (club) => club.cut.cutLength },
  { heading: "Cut weight (g)", format: grams, of: (club) => club.cut.weight },
  { heading: "Fre-quency (cpm)", format: "0", checks: "frequency", of: (club) => club.frequency },
  { heading: "Grip (g)", format: grams, of: (club) => club.parts.grip.weight },
  { heading: "Head needed (g)", format: grams, of: (club) => club.headWeight },
  { heading: "Head on hand (g)", format: grams, of: (_, index, { request }) => request.clubs[index]!.head },
  { heading: "Add to it (g)", format: signedGrams, of: (club) => club.toAdd },
  { heading: "or as lead tape (g)", format: grams, of: (club) => club.tape },
  { heading: "Bend loft (°)", format: signed, of: (club) => club.loftChange },
  { heading: "Bend lie (°)", format: signed, of: (club) => club.lieChange },
  { heading: "Bounce after (°)", format: "0.0#", of: (club) => club.bounce },
  { heading: "Total weight (g)", format: grams, checks: "total", of: (club) => club.built.weight },
  { heading: "Balance point", length: true, format: "0.00", of: (club) => club.built.balance },
  { heading: "Swing-weight", format: "General", checks: "swingweight", of: ({ built }) => (isProblem(built.swingweight) ? "beyond" : built.swingweight) },
  { heading: "Inertia (kg cm2)", format: "0", of: (club) => club.built.inertiaButt },
  { heading: "Period (s)", format: "0.000", of: (club) => club.period },
  { heading: "Carry", carry: true, format: "0", of: (club) => club.carry },
  { heading: "Carry gap", carry: true, format: "0", of: (club) => club.carryGap },
];

function inUnits(column: PlanColumn, { unit, format, shown }: BenchLengths): PlanColumn {
  // A balance point is worked out and not laid to a rule: in inches its format rounds it.
  if (unit === "in" && column.format !== inches) return { ...column, heading: `${column.heading} (in)` };
  return {
    ...column,
    heading: `${column.heading} (${unit})`,
    format: unit === "in" ? column.format : format,
    of: (club, index, job) => shown(column.of(club, index, job) as number),
  };
}

/** The columns in which some club has something. */
export function planColumns(job: BenchJob): readonly PlanColumn[] {
  const lengths = benchLengths(job.units ?? "us");
  const carryUnit = displayUnit(metricOf("carry"), job.units ?? "us");
  return ALL.filter(({ of }) => job.plan.clubs.some((club, index) => of(club, index, job) !== undefined)).map(
    (column) => {
      if (column.carry) return { ...column, heading: `${column.heading} (${carryUnit})` };
      return column.length ? inUnits(column, lengths) : column;
    },
  );
}
