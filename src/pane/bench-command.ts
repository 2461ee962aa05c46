/** What the ribbon's bench button takes, fetched when it is pressed. */

export { benchWorkbook } from "../sheets/bench-workbook.ts";
export { buildForBench } from "./build-for-bench.ts";
