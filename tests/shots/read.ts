import { isProblem } from "../../src/outcome/problem.ts";
import type { ReadOptions } from "../../src/shots/read-options.ts";
import { readShots } from "../../src/shots/read-shots.ts";
import type { ShotTable } from "../../src/shots/shot-table.ts";

/** The shots of a text, or of its lines; a text that cannot be read fails the test. */
export function read(text: string | readonly string[], options?: ReadOptions): ShotTable {
  const table = readShots(typeof text === "string" ? text : text.join("\n"), options);
  if (isProblem(table)) throw new Error(table.message);
  return table;
}
