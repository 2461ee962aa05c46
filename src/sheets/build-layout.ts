import { cellName } from "./a1.ts";
import type { BenchJob } from "./bench-job.ts";
import { CHECKED_FIGURES, type CheckedFigure, FREQUENCY, figuresOf } from "./checked-figures.ts";
import { type PlanColumn, planColumns } from "./plan-columns.ts";

/** Each checked figure takes four columns: target, measured, difference, mark. */
export const PER_FIGURE = 4;
/** Figures in the order of their columns. */
const ORDER = [...CHECKED_FIGURES, FREQUENCY].map(({ key }) => key);
/** Column of the clubs' labels; tables begin behind it. */
export const LABELS = 0;

type Key = CheckedFigure["key"];

/** Where on the Build sheet things stand. Rows and columns count from 0, cells are named as formulas want them. */
export interface BuildLayout {
  readonly columns: number;
  readonly planColumns: readonly PlanColumn[];
  readonly tolerances: number;
  /** Row of the headings of what to cut and build, of the check, and of what to do. */
  readonly plan: number;
  readonly check: number;
  readonly adjust: number;
  /** First row of a club in each. */
  readonly planClubs: number;
  readonly checkClubs: number;
  readonly adjustClubs: number;
  readonly columnOf: (key: Key) => number;
  readonly tolerance: (key: Key) => string;
  readonly target: (key: Key, club: number) => string;
  readonly measured: (key: Key, club: number) => string;
  readonly difference: (key: Key, club: number) => string;
  readonly mark: (key: Key, club: number) => string;
}

/** `from`: the first row free below title, facts and warnings. */
export function buildLayout(job: BenchJob, from: number): BuildLayout {
  const clubs = job.plan.clubs.length;
  const shown = planColumns(job);
  const columns = 1 + Math.max(figuresOf(job).length * PER_FIGURE, shown.length);
  const tolerances = from;
  const plan = tolerances + 2;
  const check = plan + 1 + clubs + 1;
  const adjust = check + 2 + clubs + 1;
  const columnOf = (key: Key) => 1 + PER_FIGURE * ORDER.indexOf(key);
  const inCheck = (step: number) => (key: Key, club: number) =>
    cellName(check + 2 + club, columnOf(key) + step, "column");
  return {
    columns,
    planColumns: shown,
    tolerances,
    plan,
    check,
    adjust,
    planClubs: plan + 1,
    checkClubs: check + 2,
    adjustClubs: adjust + 1,
    columnOf,
    tolerance: (key) => cellName(tolerances, columnOf(key) + 2, "both"),
    target: inCheck(0),
    measured: inCheck(1),
    difference: inCheck(2),
    mark: inCheck(3),
  };
}
