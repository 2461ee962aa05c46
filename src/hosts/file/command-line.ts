import { parseArgs } from "node:util";
import { GOALS, type Goal } from "../../fitting/session.ts";
import type { AirFacts } from "../../fitting/session-air.ts";
import { invalid, isProblem, type Outcome } from "../../outcome/problem.ts";
import { UNIT_SETS, type UnitSet } from "../../shots/unit-set.ts";
import { readAir } from "./read-air.ts";

/** The one line of help. */
export const USAGE =
  "npm run compare -- [FILE|-] [--out X.xlsx] [--json] [--baseline NAME] [--goal carry|tight|window|overall] [--units us|metric|metric-kmh] [--comma] [--left-handed] [--air altitude=M,temperature=C,pressure=HPA,humidity=PERCENT] [--fill] [--choose NAME [--set SETFILE]]";

/** What was asked for on the command line, with what is taken where nothing was said. */
export interface CommandLine {
  /** A file to read, `-` for standard input, null for the demo session. */
  readonly file: string | null;
  readonly out: string | null;
  readonly json: boolean;
  readonly baseline: string | null;
  readonly goal: Goal | null;
  readonly units: UnitSet;
  /** Sentences of the workbook with a decimal comma. */
  readonly comma: boolean;
  readonly leftHanded: boolean;
  /** The air it was hit in; null where it was not stated. */
  readonly air: AirFacts | null;
  /** Compute carry, height and landing angle where the table lacks them. */
  readonly fill: boolean;
  /** The build to write a Build sheet for. */
  readonly choose: string | null;
  /** A set file for it. */
  readonly set: string | null;
  readonly help: boolean;
}

/** What was typed behind `npm run compare --`. One sentence says what is wrong with it, where something is. */
export function readCommandLine(words: readonly string[]): Outcome<CommandLine> {
  let found: ReturnType<typeof parse>;
  try {
    found = parse(words);
  } catch (refused) {
    return invalid(`${(refused as Error).message.split(". ")[0]}. Usage: ${USAGE}`);
  }
  const { values, positionals } = found;
  if (positionals.length > 1) {
    return invalid(
      `One file at a time: found ${positionals.map((word) => `"${word}"`).join(" and ")}. Usage: ${USAGE}`,
    );
  }
  const goal = values.goal?.toLowerCase();
  if (goal !== undefined && !GOALS.some((one) => one === goal)) {
    return invalid(`--goal is "${values.goal}"; it should be one of ${GOALS.join(", ")}.`);
  }
  const units = values.units?.toLowerCase() ?? "us";
  if (!UNIT_SETS.some((one) => one === units)) {
    return invalid(`--units is "${values.units}"; it should be us, metric or metric-kmh.`);
  }
  if (values.out !== undefined && !/\.xlsx$/i.test(values.out)) {
    return invalid(`--out is "${values.out}"; it should be the name of a workbook that ends in .xlsx.`);
  }
  if (values.set !== undefined && values.choose === undefined) {
    return invalid("--set needs a build: say which one with --choose NAME.");
  }
  if (values.choose !== undefined && values.out === undefined) {
    return invalid("--choose writes a Build sheet: say into which workbook with --out X.xlsx.");
  }
  const air = values.air === undefined ? null : readAir(values.air);
  if (isProblem(air)) return air;
  return {
    file: positionals[0] ?? null,
    out: values.out ?? null,
    json: values.json ?? false,
    baseline: values.baseline ?? null,
    goal: (goal as Goal | undefined) ?? null,
    units: units as UnitSet,
    comma: values.comma ?? false,
    leftHanded: values["left-handed"] ?? false,
    air,
    fill: values.fill ?? false,
    choose: values.choose ?? null,
    set: values.set ?? null,
    help: values.help ?? false,
  };
}

function parse(words: readonly string[]) {
  return parseArgs({
    args: [...words],
    allowPositionals: true,
    options: {
      out: { type: "string" },
      json: { type: "boolean" },
      baseline: { type: "string" },
      goal: { type: "string" },
      units: { type: "string" },
      comma: { type: "boolean" },
      "left-handed": { type: "boolean" },
      air: { type: "string" },
      fill: { type: "boolean" },
      choose: { type: "string" },
      set: { type: "string" },
      help: { type: "boolean", short: "h" },
    },
  });
}
