import { ASSEMBLE } from "./balance/assemble.ts";
import { HEADWEIGHT } from "./balance/head-weight.ts";
import { INERTIA } from "./balance/inertia.ts";
import { SWINGWEIGHT } from "./balance/swingweight.ts";
import { SWINGWEIGHT_CODE } from "./balance/swingweight-code.ts";
import { SWINGWEIGHT_DIFF } from "./balance/swingweight-diff.ts";
import { SWINGWEIGHT_MOMENT } from "./balance/swingweight-moment.ts";
import { WEIGHTTOADD } from "./balance/weight-to-add.ts";
import type { Cell } from "./cell.ts";
import { argumentsOf, callFunction, type FunctionSpec } from "./define-function.ts";
import { AIRAT } from "./flight/air-at.ts";
import { AIRDENSITY } from "./flight/air-density.ts";
import { FLIGHT } from "./flight/flight.ts";
import { NORMALIZE } from "./flight/normalize.ts";
import { SPINAXIS } from "./flight/spin-axis.ts";
import { SPINLOFT } from "./flight/spin-loft.ts";
import { CUTWEIGHT } from "./set/cut-weight.ts";
import { PROGRESSION } from "./set/progression.ts";
import { SORTSHAFTS } from "./set/sort-shafts.ts";
import { COMPARE } from "./shots/compare.ts";
import { GROUP } from "./shots/group.ts";
import { NEXTBUILD } from "./shots/next-build.ts";
import { SCREEN } from "./shots/screen.ts";
import { SHOTSNEEDED } from "./shots/shots-needed.ts";
import { SUMMARY } from "./shots/summary.ts";
import { WEIGHTEFFECT } from "./shots/weight-effect.ts";

/** The contents page of the functions, by their families. */
export const FUNCTIONS: readonly FunctionSpec[] = [
  // Balance
  SWINGWEIGHT,
  SWINGWEIGHT_MOMENT,
  SWINGWEIGHT_CODE,
  SWINGWEIGHT_DIFF,
  ASSEMBLE,
  HEADWEIGHT,
  WEIGHTTOADD,
  INERTIA,
  // Set
  PROGRESSION,
  CUTWEIGHT,
  SORTSHAFTS,
  // Shots
  SUMMARY,
  GROUP,
  SCREEN,
  COMPARE,
  SHOTSNEEDED,
  WEIGHTEFFECT,
  NEXTBUILD,
  // Flight
  AIRDENSITY,
  AIRAT,
  FLIGHT,
  NORMALIZE,
  SPINLOFT,
  SPINAXIS,
];

/** A function as a host that has its own way of registering functions wants it. */
export interface CatalogueEntry {
  /** Workbook name without the namespace. */
  readonly id: string;
  /** Takes raw cells or ranges; answers a single value where all were single, else rows of cells. */
  readonly run: (...raw: readonly unknown[]) => Cell | Cell[][];
  /** How many arguments must be given, and how many may be. */
  readonly least: number;
  readonly most: number;
}

/** Every function, ready to be registered. */
export const CATALOGUE: readonly CatalogueEntry[] = FUNCTIONS.map((spec) => {
  const all = argumentsOf(spec);
  return {
    id: spec.id,
    run: (...raw) => callFunction(spec, raw),
    least: all.filter((argument) => argument.otherwise === undefined).length,
    most: all.length,
  };
});
