/**
 * `npm run bench` prints one JSON object a line; `npm run bench -- decide flight` runs only those named. Each bench is
 * a file of this folder that exports `bench`, an async generator of lines. Speeds are ratios within one run, for
 * seconds alone say more of the machine than of the code.
 */
export type BenchLine = Readonly<Record<string, unknown>>;

const BENCHES: Readonly<Record<string, () => Promise<{ bench: () => AsyncGenerator<BenchLine> }>>> = {
  bundle: () => import("./bundle.ts"),
  decide: () => import("./decide.ts"),
  flight: () => import("./flight.ts"),
  ledger: () => import("./ledger.ts"),
  growth: () => import("./growth.ts"),
  hostile: () => import("./hostile.ts"),
  grid: () => import("./grid.ts"),
  huge: () => import("./huge.ts"),
  pane: () => import("./pane.ts"),
  reading: () => import("./reading.ts"),
  sorting: () => import("./sorting.ts"),
  summaries: () => import("./summaries.ts"),
  start: () => import("./start.ts"),
  swingweight: () => import("./swingweight.ts"),
  trips: () => import("./trips.ts"),
  writing: () => import("./writing.ts"),
};

const wished = process.argv.slice(2);
const unknown = wished.filter((name) => !(name in BENCHES));
if (unknown.length > 0) {
  console.error(`No bench is called ${unknown.join(", ")}; there are ${Object.keys(BENCHES).join(", ")}.`);
  process.exit(2);
}
for (const name of wished.length > 0 ? wished : Object.keys(BENCHES)) {
  const { bench } = await BENCHES[name]!();
  for await (const line of bench()) console.log(JSON.stringify({ bench: name, ...line }));
}
