import { describe, expect, test } from "vitest";
import { DEMO_TEXT } from "../../src/fitting/demo.ts";
import type { Row } from "../../src/ledger/cell.ts";
import { lookBack } from "../../src/ledger/look-back.ts";
import { answer, demoSession, laterSession, rowsOfSession } from "./demo-rows.ts";

const build = (name: string, carryMean: number, more: Row = {}): Row => ({
  build: name,
  kind: "mid iron",
  player: "Tess Marlow",
  carryMean,
  carrySd: 4,
  carryN: 10,
  ...more,
});
const on = (date: string, rows: readonly Row[]) =>
  rows.map((row, i) => ({ ...row, date, session: date, entry: `${date}-${i}` }));
const first = on("2026-01-10", [
  build("old", 150, { baseline: true }),
  build("new", 156, { ordered: "new", chosen: true }),
]);
const back = (rows: readonly Row[]) => answer(lookBack([...first, ...rows], "tess marlow"))[0]!;

describe("looking back at a player", () => {
  test("finds a gain kept, smaller, gone, or says that nobody knows", () => {
    // By hand: sd 4, n 10 each: standard error 1.789, 18 degrees of freedom, t 2.101 (Student's table): half width 3.76.
    expect(back(on("2026-06-10", [build("old", 150), build("new", 155)])).gain).toBe("kept");
    expect(back(on("2026-06-10", [build("old", 150), build("new", 149)])).gain).toBe("not kept");
    expect(back(on("2026-06-10", [build("old", 150), build("new", 152)])).gain).toBe("smaller");
    expect(back(on("2026-06-10", [build("old", 150), build("new", 153)])).gain).toBe("no saying");
    expect(back(on("2026-06-10", [build("new", 155)])).gain).toBe("no saying");
    expect(back(on("2026-06-10", [build("old", 150), build("new", 155)])).words).toBe(
      "new: the carry gain measured then was 6 yd (2 yd to 10 yd), now it is 5 yd (1 yd to 9 yd): kept.",
    );
  });

  test("compares the same build now and then with Welch's limits", () => {
    const [carry] = back(on("2026-06-10", [build("old", 150), build("new", 162)])).changes;
    expect(carry).toMatchObject({ metric: "carry", difference: 6, df: expect.closeTo(18, 9), real: true });
    // 6 -+ 2.100922 * sqrt(1.6 + 1.6); the t quantile from Student's table.
    expect(carry!.low).toBeCloseTo(6 - 2.100922 * Math.sqrt(3.2), 5);
  });

  test("puts both days in the same air where the air of each is stated", () => {
    const cold = rowsOfSession(demoSession({ date: "2026-01-10", air: { temperature: 2, altitude: 0 } }));
    const warm = rowsOfSession(
      laterSession({ date: "2026-07-10", air: { temperature: 33, altitude: 900 } }, 0.001),
    );
    const measured = rowsOfSession(laterSession({ date: "2026-07-10" }, 0.001));
    const player = String(cold[0]!.player);
    const changeOf = (rows: Row[]) =>
      answer(lookBack([...cold, ...rows], player))[0]!.changes.find(({ metric }) => metric === "carry")!;
    // The very same strikes and carries: in thin, warm air they mean less, so in standard air they come out shorter.
    expect(changeOf(warm).difference).toBeLessThan(changeOf(measured).difference - 3);
  });

  test("has the lead then and the lead now in the same air, though one build now lacks it", () => {
    const aired = (rows: readonly Row[]) =>
      rows.map((row) => ({ ...row, carrySameAir: Number(row.carryMean) + 20, airDensity: 1.1 }));
    const then = aired(
      on("2026-01-10", [build("old", 150, { baseline: true }), build("new", 156, { ordered: "new" })]),
    );
    // In standard air the new build leads by more: its carry is put right by 30, not 20.
    then[1]!.carrySameAir = 186;
    const now = on("2026-06-10", [
      build("old", 150),
      build("new", 155, { carrySameAir: 185, airDensity: 1.1 }),
    ]);
    const [measured] = answer(lookBack([...then, ...now], "Tess Marlow"));
    expect(measured!.words).toContain("then was 6 yd");
    expect(measured!.words).toContain("now it is 5 yd");
    expect(measured!.notes.join(" ")).toContain("as measured");
    expect(measured!.changes.find(({ metric }) => metric === "carry")!.difference).toBeCloseTo(-1, 9);
    const [aloft] = answer(lookBack([...then, ...aired(now)], "Tess Marlow"));
    expect(aloft!.words).toContain("then was 16 yd");
    expect(aloft!.notes.join(" ")).toContain("standard air at sea level");
  });

  test("takes the build that the order names, though it is written beside every build", () => {
    const rows = on("2026-01-10", [
      build("old", 150, { baseline: true, ordered: "new" }),
      build("new", 156, { ordered: "new" }),
    ]);
    const later = on("2026-06-10", [build("old", 150), build("new", 155)]);
    expect(answer(lookBack([...rows, ...later], "Tess Marlow"))[0]!.build).toBe("new");
  });

  test("looks back at no build of a session that was too close to call, unless it was ordered", () => {
    const close = (more: Row) =>
      on("2026-01-10", [
        build("old", 150, { baseline: true, verdict: "too close to call" }),
        build("new", 156, { verdict: "too close to call", ...more }),
      ]);
    const later = on("2026-06-10", [build("old", 150), build("new", 155)]);
    expect(lookBack([...close({ chosen: true }), ...later], "Tess Marlow")).toMatchObject({
      message: expect.stringContaining("chose a build"),
    });
    expect(answer(lookBack([...close({ ordered: "new" }), ...later], "Tess Marlow"))).toHaveLength(1);
  });

  test("is honest about two days, and about the luck of a winner", () => {
    expect(back(on("2026-06-10", [build("old", 150), build("new", 155)])).notes.join(" ")).toMatch(
      /Two days differ.*luck/,
    );
  });

  test("asks for a player and for two days", () => {
    expect(lookBack(first, "")).toMatchObject({ kind: "unavailable" });
    expect(lookBack(first, "Tess Marlow")).toMatchObject({ message: expect.stringContaining("one session") });
    expect(lookBack(rowsOfSession(demoSession({ player: "Ann" }, DEMO_TEXT)), "Ben")).toMatchObject({
      message: expect.stringContaining("no session"),
    });
  });
});
