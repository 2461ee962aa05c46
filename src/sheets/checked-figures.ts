import type { PlannedClub } from "../club/plan-club.ts";
import type { SetRequest, SetTolerances } from "../club/set-request.ts";
import { isProblem } from "../outcome/problem.ts";
import type { UnitSet } from "../shots/unit-set.ts";
import type { BenchJob } from "./bench-job.ts";
import { benchLengths } from "./bench-lengths.ts";

/** A figure that the bench measures on a built club and holds against its target. */
export interface CheckedFigure {
  readonly key: "shaft" | "length" | "swingweight" | "total" | "loft" | "lie" | "frequency";
  readonly label: string;
  readonly unit: string;
  readonly format: string;
  readonly differenceFormat: string;
  /** Allowed off the target where the set file says nothing. Common practice, no source. */
  readonly tolerance: number;
  /** Greatest sensible measurement, for the cell that takes it; a swingweight is typed as a code. */
  readonly most: number;
  readonly target: (club: PlannedClub) => number | string | null;
}

// biome-ignore format: a table reads best with a line a row
export const CHECKED_FIGURES: readonly CheckedFigure[] = [
  { key: "shaft", label: "Raw shaft", unit: "g", format: "0.0", differenceFormat: "+0.0;-0.0;0.0", tolerance: 1, most: 1000, target: (club) => club.shaftWeight },
  { key: "length", label: "Length", unit: "in", format: "0.00##", differenceFormat: "+0.00##;-0.00##;0.00", tolerance: 0.0625, most: 100, target: (club) => club.length },
  { key: "swingweight", label: "Swingweight", unit: "points", format: "General", differenceFormat: "+0.0;-0.0;0.0", tolerance: 0.5, most: 0, target: ({ built }) => (isProblem(built.swingweight) ? null : built.swingweight) },
  { key: "total", label: "Total weight", unit: "g", format: "0.0", differenceFormat: "+0.0;-0.0;0.0", tolerance: 3, most: 5000, target: (club) => club.built.weight },
  { key: "loft", label: "Loft", unit: "°", format: "0.0#", differenceFormat: "+0.0#;-0.0#;0.0", tolerance: 0.5, most: 90, target: (club) => club.loft ?? null },
  { key: "lie", label: "Lie", unit: "°", format: "0.0#", differenceFormat: "+0.0#;-0.0#;0.0", tolerance: 0.5, most: 90, target: (club) => club.lie ?? null },
];

/** Checked beside the others where the set file tells what a club should show. The tolerance is common practice, no source. */
export const FREQUENCY: CheckedFigure = {
  ...{ key: "frequency", label: "Frequency", unit: "cpm", format: "0", differenceFormat: "+0;-0;0" },
  ...{ tolerance: 2, most: 1000 },
  target: (club) => club.frequency ?? null,
};

/** The figures that a job's clubs are checked by, in its units. */
export function figuresOf({ plan, units }: Pick<BenchJob, "plan" | "units">): readonly CheckedFigure[] {
  const told = plan.clubs.some(({ frequency }) => frequency !== undefined);
  return told ? [...checkedFigures(units), FREQUENCY] : checkedFigures(units);
}

/** The same in the units of a job: its length in centimetres where shots are shown in metres. */
export function checkedFigures(units: UnitSet = "us"): readonly CheckedFigure[] {
  const { unit, format, differenceFormat, shown } = benchLengths(units);
  return CHECKED_FIGURES.map((figure) =>
    figure.key === "length"
      ? {
          ...figure,
          ...{ unit, format, differenceFormat, tolerance: shown(figure.tolerance), most: shown(figure.most) },
          target: ({ length }) => shown(length),
        }
      : figure,
  );
}

/** What each figure may be off, by the set file where it says. */
export function tolerancesOf({ tolerances = {} }: SetRequest): Required<Omit<SetTolerances, "head">> {
  const of = (key: CheckedFigure["key"]) =>
    tolerances[key] ?? [...CHECKED_FIGURES, FREQUENCY].find((figure) => figure.key === key)!.tolerance;
  return {
    shaft: of("shaft"),
    length: of("length"),
    swingweight: of("swingweight"),
    total: of("total"),
    loft: of("loft"),
    lie: of("lie"),
    frequency: of("frequency"),
  };
}
