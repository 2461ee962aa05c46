import { expect, it } from "vitest";
import { impossibleWords } from "../../src/fitting/impossible-words.ts";
import { sessionOfShots } from "./session-of-shots.ts";

it("a carry whose decimal mark was lost is told with its row, in the units shown", () => {
  const shots = { A: [150.1, 1502, 151], B: [160, 161, 162] };
  // Rows by hand: the headings, then A and B in turn; 1502 yd are 1373 m.
  expect(impossibleWords(sessionOfShots(shots))).toEqual([
    "No shot can have this: carry 1502 yd in row 4. Averages, limits and chances count it until it is put right or unticked.",
  ]);
  expect(impossibleWords(sessionOfShots(shots, { units: "metric" }))[0]).toContain("carry 1373 m in row 4");
});

it("many are named by a few and a number", () => {
  const [sentence] = impossibleWords(sessionOfShots({ A: [1501, 1502, 1503, 1504, 1505] }));
  expect(sentence).toContain("carry 1503 yd in row 4 and 2 more.");
});

it("shots that do not count, and figures at the very bounds, are not told", () => {
  const session = sessionOfShots({ A: [400, 1502, 1] });
  const keep = session.table.keep.map((_, i) => i !== 1);
  expect(impossibleWords({ ...session, table: { ...session.table, keep } })).toEqual([]);
});
