import fc from "fast-check";
import { expect, it } from "vitest";
import { isProblem } from "../../src/outcome/problem.ts";
import { benchWorkbook } from "../../src/sheets/bench-workbook.ts";
import { NOTHING_TAKEN } from "../../src/sheets/free-names.ts";
import { QUICK } from "../quick.ts";
import { demoSession } from "./demo-session.ts";

/** Mostly a figure that may stand there, now and then one that may not. */
const figure = (min: number, max: number) =>
  fc.oneof(
    { arbitrary: fc.double({ min, max, noNaN: true }), weight: 40 },
    { arbitrary: fc.constantFrom(0, -1, 1e-12, 1e12, 48, 18), weight: 1 },
  );

/** As someone would write it down. */
const shown = (value: number) => value.toFixed(3);

const anySet = fc
  .record({
    code: fc.constantFrom("C5", "C9.5", "D2", "E0", "Z1"),
    shaft: figure(40, 140),
    step: fc.double({ min: -6, max: 6, noNaN: true }),
    grip: figure(20, 120),
    bin: fc.oneof(fc.constant<number[]>([]), fc.array(figure(40, 140), { minLength: 3, maxLength: 9 })),
    clubs: fc.array(fc.tuple(figure(20, 50), figure(0, 64), figure(150, 400)), {
      minLength: 1,
      maxLength: 5,
    }),
  })
  .map(({ code, shaft, step, grip, bin, clubs }) =>
    [
      `target; swingweight; ${code}`,
      `shafts; ${shown(shaft)}; ${shown(step)}`,
      `grip; ${shown(grip)}`,
      ...(bin.length > 0 ? [`bin; ${bin.map(shown).join("; ")}`] : []),
      "club; length; loft; head",
      ...clubs.map((cells, i) => [`club ${i + 1}`, ...cells.map(shown)].join("; ")),
    ].join("\n"),
  );

it.skipIf(QUICK)(
  "a Build sheet of any set is either refused in a sentence or holds only figures that are figures",
  () => {
    const session = demoSession();
    let made = 0;
    fc.assert(
      fc.property(anySet, (text) => {
        const plan = benchWorkbook(session, "105 g mid-launch", text, NOTHING_TAKEN, "now");
        if (isProblem(plan)) {
          expect(plan.message).toMatch(/\.$/);
          return;
        }
        made++;
        for (const cell of plan.sheets[0]!.blocks.flatMap(({ cells }) => cells.flat())) {
          const value = typeof cell === "object" && cell !== null ? cell.value : cell;
          if (typeof value === "number") expect(value).toSatisfy(Number.isFinite);
          if (typeof value === "string") expect(value).not.toMatch(/NaN|undefined|Infinity/);
        }
      }),
      { numRuns: 300 },
    );
    expect(made).toBeGreaterThan(50);
  },
);
