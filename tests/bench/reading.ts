import Papa from "papaparse";
import { isProblem } from "../../src/outcome/problem.ts";
import { readShots } from "../../src/shots/read-shots.ts";
import { beside } from "./beside.ts";
import { manyShots } from "./many-shots.ts";
import type { BenchLine } from "./run.ts";

const SHOTS = 100_000;

/** From text to checked shots, beside a parser that stops at texts of cells. */
export async function* bench(): AsyncGenerator<BenchLine> {
  const text = manyShots(SHOTS);
  const own = () => {
    const table = readShots(text);
    if (isProblem(table) || table.size !== SHOTS || table.problems.length > 0) throw new Error("misread");
  };
  const bare = () => {
    const { data } = Papa.parse(text, { delimiter: "\t", newline: "\n" });
    if (data.length !== SHOTS + 1) throw new Error("misread");
  };
  const times = beside(own, bare);
  yield {
    what: "100,000 x 12 cells to checked shots beside papaparse's bare parse",
    ...times,
    goal: "at most 2",
    met: times.ratio <= 2,
  };
}
