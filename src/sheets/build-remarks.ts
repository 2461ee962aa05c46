import { lengthRule } from "../club/check-length.ts";
import { kgCm2PerGramInch2, standardGravity } from "../club/exact-units.ts";
import { inInches } from "../club/in-inches.ts";
import type { BenchJob } from "./bench-job.ts";
import { benchLengths } from "./bench-lengths.ts";
import { LENGTHS_CONFORM } from "./build-steps.ts";

/** A line between the Build sheet's head and its tables; one that warns is higher and coloured. */
export interface BuildRemark {
  readonly text: string;
  readonly warns: boolean;
}

/** Warnings of the job first, then how the sheet's figures are to be taken: what was counted, left out or assumed. */
export function buildRemarks(job: BenchJob): BuildRemark[] {
  const remarks = [
    ...job.warnings.map(warning),
    ...(job.notes ?? []).map(note),
    inertiaRemark(job),
    lengthsConform(job) ? note(LENGTHS_CONFORM) : null,
    rawLengthRemark(job),
    boreRemark(job),
    partsRemark(job),
    tapeRemark(job),
    driftRemark(job),
  ];
  const said = remarks.filter((remark) => remark !== null);
  return [...said.filter(({ warns }) => warns), ...said.filter(({ warns }) => !warns)];
}

const warning = (text: string): BuildRemark => ({ text, warns: true });
const note = (text: string): BuildRemark => ({ text, warns: false });

function lengthsConform({ request }: BenchJob): boolean {
  return request.clubs.every(
    ({ length, putter }) => length >= lengthRule.least && (putter || length <= lengthRule.greatest),
  );
}

/**
 * Where the bore is not known the shaft counts as reaching the club's end, so that a butt cut by the sheet alone leaves
 * the club too long by the bore. It warns where raw lengths were entered, since a butt trim is told then.
 */
function boreRemark({ request: { clubs } }: BenchJob): BuildRemark | null {
  const unknown = clubs.filter(({ bore }) => bore === undefined);
  if (unknown.length === 0) return null;
  const text =
    `Bore was not entered for ${unknown.length} of ${clubs.length} clubs: their shafts count as reaching the sole, so cut length is ` +
    "over and butt trim under by the bore. Dry-fit the head and mark the cut by the club's length.";
  return unknown.some(({ rawLength }) => rawLength !== undefined) ? warning(text) : note(text);
}

/**
 * The period hardly moves with weight in the head, which moves weight times arm and inertia alike; all three figures
 * are needed. Weight w, balance point b and period T of a pendulum hung at its end give w g b (T / 2 pi)^2.
 */
function inertiaRemark({ plan, units = "us" }: BenchJob): BuildRemark | null {
  const { target } = plan.clubs[0]!;
  if (target.kind !== "inertia") return null;
  const { unit, perInch } = benchLengths(units);
  // Gravity in inches a second squared makes gram inches squared of it.
  const perSwing = (((standardGravity * 100) / 2.54) * kgCm2PerGramInch2) / (2 * Math.PI) ** 2 / perInch;
  return note(
    `Built to one moment of inertia, ${target.inertia.toFixed(0)} kg cm2 about the butt; the swingweights follow from it. To check it, hang the club ` +
      `at its butt: grams × balance point in ${unit === "in" ? "inches" : "centimetres"} × seconds of a swing squared × ${perSwing.toPrecision(4)}, or CLUB.INERTIA.`,
  );
}

function rawLengthRemark({ request: { clubs } }: BenchJob): BuildRemark | null {
  const unknown = clubs.filter(({ rawLength }) => rawLength === undefined).length;
  if (unknown === 0) return null;
  return note(
    `Raw shaft length was not entered for ${unknown} of ${clubs.length} clubs: their shafts count as just long enough, nothing off the butt.`,
  );
}

/** Small parts that have no column of their own. */
function partsRemark({ request: { ferrule, epoxy } }: BenchJob): BuildRemark | null {
  const parts = [...(ferrule ? [`${ferrule} g of ferrule`] : []), ...(epoxy ? [`${epoxy} g of epoxy`] : [])];
  return parts.length === 0 ? null : note(`Each club counts ${parts.join(" and ")}.`);
}

function tapeRemark({ request: { tape }, plan }: BenchJob): BuildRemark | null {
  if (!tape || plan.clubs.every((club) => club.tape === undefined)) return null;
  return note(
    `Lead tape stands ${inInches(tape.up)} above the club's end, instead of weight added to the head and not on top of it.`,
  );
}

function driftRemark({ sorting }: BenchJob): BuildRemark | null {
  if (!sorting) return null;
  return note(
    "Drift: points by which the shaft from the bin moves the club's swingweight, its head as planned. Cut and head weights are those of the planned shaft.",
  );
}
