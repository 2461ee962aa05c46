import { isProblem, type Outcome } from "../outcome/problem.ts";
import { type AssembledClub, assembleClub } from "./assemble-club.ts";
import { checkLength } from "./check-length.ts";
import { checkNumbers } from "./check-number.ts";
import type { ClubParts } from "./club-parts.ts";
import type { ClubTarget } from "./club-target.ts";
import { type CutShaft, cutShaft } from "./cut-shaft.ts";
import { loftChange } from "./loft-change.ts";
import { pendulumPeriod } from "./pendulum.ts";
import type { SetClub, SetRequest } from "./set-request.ts";
import { weightFor } from "./weight-for.ts";

/** One club of a set, worked out. */
export interface PlannedClub {
  readonly club: string;
  readonly length: number;
  readonly loft?: number;
  readonly lie?: number;
  /** Cycles a minute the finished club should show, as entered. */
  readonly frequency?: number;
  readonly target: ClubTarget;
  /** Target weight of the raw shaft, in grams. */
  readonly shaftWeight: number;
  readonly cut: CutShaft;
  /** Head weight that brings the club to its target, in grams. */
  readonly headWeight: number;
  /** Grams the head on hand lacks; negative where it is too heavy. */
  readonly toAdd?: number;
  /** Grams of lead tape that bring the head on hand to the target, where the shop uses tape. */
  readonly tape?: number;
  /** Degrees to bend the head on hand. */
  readonly loftChange?: number;
  readonly lieChange?: number;
  /** Bounce after bending for loft. */
  readonly bounce?: number;
  /** Seconds on the pendulum, hung at the butt. */
  readonly period?: number;
  readonly parts: ClubParts;
  readonly built: AssembledClub;
  /** What the bench must know before it starts. */
  readonly warnings: readonly string[];
}

/** Grams between which heads are made, from a child's driver to the heaviest putter. Common practice, no source. */
const made = { least: 100, most: 600 } as const;

/** Grams that a scale of tenths rounds to 0.0. */
const scaleStep = 0.05;

/**
 * Works one club out: the head it needs, the cuts, the bends and the warnings. `bare`: its parts without a head.
 * `heavier`: grams that the head on hand may be too heavy by without a word.
 */
export function planClub(
  club: SetClub,
  bare: ClubParts,
  target: ClubTarget,
  bendLimit = Number.POSITIVE_INFINITY,
  tape?: SetRequest["tape"],
  heavier = scaleStep,
): Outcome<PlannedClub> {
  const problem = checkClub(club);
  if (problem) return problem;
  const cut = cutShaft(bare.shaft, bare.trims);
  if (isProblem(cut)) return cut;
  const headWeight = weightFor(bare, { kind: "head" }, target);
  if (isProblem(headWeight)) return headWeight;
  const parts = { ...bare, head: { ...bare.head, weight: headWeight } };
  const built = assembleClub(parts);
  if (isProblem(built)) return built;
  const rule = checkLength(club.length, club.putter);
  if (isProblem(rule)) return rule;
  const { loft, lie, headLoft, headLie } = club;
  const toAdd = club.head === undefined ? undefined : headWeight - club.head;
  const lacks = toAdd ?? 0;
  const strip = lacks > 0 && tape ? tapeFor(club, bare, target, tape) : undefined;
  if (isProblem(strip)) return strip;
  const bend =
    loft === undefined || headLoft === undefined ? undefined : loftChange(headLoft, loft, club.bounce ?? 0);
  if (isProblem(bend)) return bend;
  const lieChange = lie === undefined || headLie === undefined ? undefined : lie - headLie;
  const period = pendulumPeriod(built.weight, built.balance, built.inertiaButt);
  const warnings = [...cut.warnings];
  if (!rule.conforms) warnings.push(rule.message);
  if (headWeight < made.least || headWeight > made.most) {
    warnings.push(
      `It asks for a head of ${headWeight.toFixed(0)} g, such as none is made; look at length, its unit, shaft weight and target.`,
    );
  }
  if (-lacks > heavier) {
    warnings.push(`The head is ${(-lacks).toFixed(1)} g too heavy; take a lighter one, or another target.`);
  }
  for (const [name, change] of [["loft", bend?.change ?? 0] as const, ["lie", lieChange ?? 0] as const]) {
    if (Math.abs(change) > bendLimit) {
      warnings.push(
        `Bending ${name} by ${Number(change.toFixed(2))} degrees passes the maker's limit of ${bendLimit}.`,
      );
    }
  }
  return {
    club: club.club,
    length: club.length,
    loft,
    lie,
    frequency: club.frequency,
    target,
    shaftWeight: bare.shaft.weight,
    cut,
    headWeight,
    toAdd,
    tape: strip,
    loftChange: bend?.change,
    lieChange,
    bounce: club.bounce === undefined ? undefined : (bend?.bounce ?? club.bounce),
    period: isProblem(period) ? undefined : period,
    parts,
    built,
    warnings,
  };
}

/** Grams of tape on the head on hand; a problem where even the most of it does not reach the target. */
function tapeFor(
  club: SetClub,
  bare: ClubParts,
  target: ClubTarget,
  { up, most }: NonNullable<SetRequest["tape"]>,
) {
  const asIs = { ...bare, head: { ...bare.head, weight: club.head! } };
  return weightFor(asIs, { kind: "tape", place: club.length - up }, target, most);
}

function checkClub(club: SetClub) {
  return checkNumbers([
    [club.length, { name: "length", unit: "inches", least: 0, above: true }],
    [club.loft ?? 0, { name: "loft", unit: "degrees", least: -15, greatest: 90 }],
    [club.lie ?? 60, { name: "lie", unit: "degrees", least: 0, greatest: 90 }],
    [club.headLie ?? 60, { name: "head lie", unit: "degrees", least: 0, greatest: 90 }],
    [club.bounce ?? 0, { name: "bounce", unit: "degrees", least: -30, greatest: 45 }],
    [club.head ?? 1, { name: "head", unit: "grams", least: 0, above: true }],
    [club.frequency ?? 1, { name: "frequency", unit: "cycles a minute", least: 0, above: true }],
    [club.bore ?? 0, { name: "bore", unit: "inches", least: 0 }],
  ]);
}
