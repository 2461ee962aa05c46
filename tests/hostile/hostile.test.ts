import { expect, test } from "vitest";
import { QUICK } from "../quick.ts";
import { attack } from "./attack.ts";
import { drawFrom } from "./draw.ts";
import { faultsOfReading } from "./faults-of-reading.ts";
import { faultsOfJson, faultsOfWorkbook, hostileSession } from "./faults-of-workbook.ts";
import { type HostileTable, hostileTable } from "./hostile-table.ts";
import { MARKER } from "./hostile-text.ts";

// Expected is what the reader promises of any text (README.md): no exception, every row a shot or listed, no figure
// that is none. The line numbers come from the grammar that wrote the text, not from the reader.
const INPUTS = 2000;

test.skipIf(QUICK)(
  "2,000 hostile tables are read, compared and made into sheets without an exception, a hang or a lost row",
  async () => {
    const { faults, ...count } = await attack(INPUTS);
    expect(faults).toEqual([]);
    expect(count.inputs).toBe(INPUTS);
    // Else the grammar would only write what is refused at the door.
    expect(count.tables).toBeGreaterThan(INPUTS / 3);
    expect(count.sheets).toBeGreaterThan(10);
    expect(count.files).toBeGreaterThan(1);
  },
);

const HEADER = "Build\tCarry\tOffline\tBall Speed\tRemarks";

/** A table of three builds of hostile names, three shots each. */
function named(names: readonly string[]): HostileTable {
  const shots = names.flatMap((name) =>
    [150, 154, 151].map((carry, i) => `${name}\t${carry}\t${i - 1}\t${100 + i}\t${name}`),
  );
  const text = [HEADER, ...shots].join("\n");
  return { text, delimiter: "\t", starts: Array.from({ length: shots.length + 1 }, (_, i) => i + 1) };
}

test("builds called after what every object has keep their shots and their figures", () => {
  const names = ["__proto__", "constructor", "hasOwnProperty"];
  const { table, faults } = faultsOfReading(named(names), true);
  expect(faults).toEqual([]);
  const session = hostileSession(table!, drawFrom(1));
  expect(session.builds.map(({ name }) => name)).toEqual(names);
  expect(faultsOfJson(session)).toEqual([]);
  expect(faultsOfWorkbook(session, drawFrom(2))).toEqual([]);
});

test("builds that would be formulas or scripts stay texts on every sheet", () => {
  const names = [`=${MARKER}()`, `<script>${MARKER}()</script>`, `x"&${MARKER}()&"`, `']&${MARKER}()&['`];
  const { table, faults } = faultsOfReading(named(names), true);
  expect(faults).toEqual([]);
  const session = hostileSession(table!, drawFrom(3));
  expect(new Set(session.builds.map(({ name }) => name))).toEqual(new Set(names));
  expect(faultsOfWorkbook(session, drawFrom(4))).toEqual([]);
});

test("a table of 10,000 columns and a cell of a megabyte are read without losing a row", () => {
  const wide = `${HEADER}\t${"x\t".repeat(10_000)}\nA\t150\t1\t100\t${"1\t".repeat(10_000)}`;
  const long = `${HEADER}\nA\t150\t1\t100\t${"1 MB ".repeat(200_000)}\nA\t152\t1\t101\t`;
  for (const [text, starts] of [
    [wide, [1, 2]],
    [long, [1, 2, 3]],
  ] as const) {
    const { table, faults } = faultsOfReading({ text, delimiter: "\t", starts }, true);
    expect(faults).toEqual([]);
    expect(table!.size).toBe(starts.length - 1);
  }
});

test("the checks see a lost row, so that silence means something", () => {
  const whole = named(["A", "B"]);
  expect(faultsOfReading({ ...whole, starts: [...whole.starts!, 99] }, true).faults).not.toEqual([]);
});

test.skipIf(QUICK)("the grammar writes every kind of trouble it speaks of", () => {
  const texts = Array.from({ length: 8000 }, (_, seed) => hostileTable(drawFrom(seed)));
  for (const delimiter of ["\t", ";", ",", "|", "^", " "]) {
    expect(texts.some((table) => table.delimiter === delimiter)).toBe(true);
  }
  for (const trouble of [
    "__proto__",
    "=EVIL()",
    "\u202e",
    "\u0000",
    "\ufffd",
    "\r\n",
    "\u201c",
    "\u00ab",
    "\u0663",
  ]) {
    expect(texts.some(({ text }) => text.includes(trouble))).toBe(true);
  }
  expect(texts.some(({ text }) => /"[^"]*\n/.test(text))).toBe(true);
  expect(texts.some(({ text, delimiter }) => text.split(delimiter).length > 10_000)).toBe(true);
  expect(Math.max(...texts.map(({ text }) => text.length))).toBeGreaterThan(1_000_000);
});
