import { isDeepStrictEqual } from "node:util";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readInSlices } from "../../src/shots/read-in-slices.ts";
import { readShots } from "../../src/shots/read-shots.ts";
import { splitInSlices } from "../../src/shots/split-in-slices.ts";
import { plainLines, splitText } from "../../src/shots/split-text.ts";
import { manyShots } from "../bench/many-shots.ts";
import { drawFrom } from "../hostile/draw.ts";
import { hostileTable } from "../hostile/hostile-table.ts";
import { QUICK } from "../quick.ts";

function run<T>(work: Generator<number, T>): { readonly answer: T; readonly shares: number[] } {
  const shares: number[] = [];
  for (;;) {
    const turn = work.next();
    if (turn.done) return { answer: turn.value, shares };
    shares.push(turn.value);
  }
}

const told = (records: ReturnType<typeof splitText>) => ({
  cells: records.cells,
  lines: records.cells.map((_, record) => records.line(record)),
  looseQuotes: records.looseQuotes,
});

// Expected is what the reader that does all in one go answers; its own tests hold that one to what it should say.
describe("reading in slices", () => {
  test.skipIf(QUICK)("answers what reading in one go answers, of 20,000 shots, plain or quoted", () => {
    const plain = `${manyShots(20_000)}\n`;
    const quoted = plain.replace(/^(\d+ g \w+)/gm, '"$1\n, as ""cut"""');
    for (const text of [plain, quoted, plain.trim(), `${plain}A"\t1`, plain.replaceAll("\n", "\r\n\r\n")]) {
      const { answer, shares } = run(readInSlices(text));
      expect(isDeepStrictEqual(answer, readShots(text))).toBe(true);
      expect(shares.length).toBeGreaterThan(4);
      expect(shares).toEqual([...shares].sort((a, b) => a - b));
      expect(shares.every((share) => share >= 0 && share <= 1)).toBe(true);
    }
  });

  test.skipIf(QUICK)("answers the same of tables that nobody should paste", () => {
    for (let seed = 0; seed < 300; seed++) {
      const { text } = hostileTable(drawFrom(seed));
      expect(isDeepStrictEqual(run(readInSlices(text)).answer, readShots(text)), `input ${seed}`).toBe(true);
    }
  });

  test("cuts any text into the cells and lines that cutting in one go finds", () => {
    const piece = fc.constantFrom('"', "\n", "\t", "a", "b\ufeff", '"\n', '\n"x"\n', "\n\n", "a\tb", '""');
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 40 }), fc.integer({ min: 1, max: 9 }), (pieces, size) => {
        const text = plainLines(pieces.join(""));
        const { answer } = run(splitInSlices(text, "\t", { letters: size, records: size }));
        expect(told(answer)).toEqual(told(splitText(text, "\t")));
      }),
      { numRuns: 3000 },
    );
  });
});

describe("reading a short table in slices", () => {
  test("answers what reading in one go answers, and tells shares that never go back", () => {
    for (const text of ["", "  \n ", "Build,Carry\nA,150\n", 'Build;Carry\n"A\nB";150,5\n"', "hello"]) {
      const { answer, shares } = run(readInSlices(text));
      expect(answer).toEqual(readShots(text));
      expect(shares).toEqual([...shares].sort((a, b) => a - b));
    }
    const { shares } = run(readInSlices("Build,Carry\nA,150\n"));
    expect([shares[0], shares.at(-1)]).toEqual([0.5, 1]);
    expect(shares.every((share) => share >= 0 && share <= 1)).toBe(true);
  });

  test("takes the delimiter that is asked for", () => {
    const text = "Build;Carry,Spin\nA;150,6000\n";
    for (const delimiter of [";", ",", undefined])
      expect(run(readInSlices(text, { delimiter })).answer).toEqual(readShots(text, { delimiter }));
  });
});
