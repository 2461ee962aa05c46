import { execFile } from "node:child_process";
import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { SET_TEXT } from "../../sheets/bench-set.ts";
import { contentsOfXlsx } from "./contents-of-xlsx.ts";

const PATIENCE = 60_000;

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "compare-choose-"));
  await writeFile(join(folder, "set.csv"), SET_TEXT);
});
afterAll(() => rm(folder, { recursive: true, force: true }));

/** Runs the command as the script in package.json does. */
function compare(...words: string[]): Promise<{ code: number; out: string; complaint: string }> {
  const command = [
    join("node_modules", "tsx", "dist", "cli.mjs"),
    join("src", "hosts", "file", "compare.ts"),
  ];
  return new Promise((resolve) => {
    execFile(process.execPath, [...command, ...words], (error, out, complaint) => {
      resolve({ code: error ? Number(error.code) : 0, out, complaint });
    });
  });
}

async function sheetsOf(name: string) {
  return (await contentsOfXlsx(await readFile(join(folder, name)))).sheets;
}

describe("compare with --choose", { timeout: PATIENCE }, () => {
  it("writes the Build sheet of the usual set beside the comparison", async () => {
    const { code, out, complaint } = await compare(
      "--choose",
      "105 G mid-launch",
      "--out",
      join(folder, "usual.xlsx"),
    );
    expect([code, complaint]).toEqual([0, ""]);
    expect(out).toContain("Mean ± 95 % limits");
    const sheets = await sheetsOf("usual.xlsx");
    expect(sheets.map(({ name }) => name)).toEqual(["Comparison", "Player", "Shots", "Workings", "Build"]);
    expect(sheets[4]!.cells.A1?.value).toBe("Build sheet: 105 g mid-launch");
  });

  it("plans by the set file and says its warnings on standard error, so that --json stays JSON", async () => {
    const set = join(folder, "set.csv");
    const { code, out, complaint } = await compare(
      ...["--json", "--choose", "115 g mid-launch", "--set", set, "--out", join(folder, "set.xlsx")],
    );
    expect(code).toBe(0);
    expect(JSON.parse(out)).toBeTypeOf("object");
    expect(complaint.trim().split("\n")).toHaveLength(5);
    expect(complaint).toContain("Build: Club 7: Bending loft by -3 degrees passes the maker's limit of 2.");
    const build = (await sheetsOf("set.xlsx")).at(-1)!;
    expect(build.cells.A1?.value).toBe("Build sheet: Harrow Lane irons");
  });

  it("refuses in one line, with code 2, what cannot be done", async () => {
    const out = ["--out", join(folder, "never.xlsx")];
    const bad = join(folder, "bad.csv");
    const few = join(folder, "few.csv");
    const light = join(folder, "light.csv");
    const plain = "target; swingweight; D2\ngrip; 50\n";
    await writeFile(bad, "target; swingweight; K7\n");
    await writeFile(few, `${plain}shafts; 105\nbin; 105\nclub; length\n7; 37\n8; 36.5\n`);
    await writeFile(light, "target; swingweight; A0\nshafts; 600\ngrip; 20\nclub; length\n7; 45\n");
    const choose = ["--choose", "105 g mid-launch"];
    const asks: [string[], string][] = [
      [["--choose", "nobody's", ...out], 'one of "95 g high-launch", "105 g mid-launch"'],
      [choose, "--out X.xlsx"],
      [["--set", few, ...out], "say which one with --choose NAME"],
      [
        [...choose, "--set", join(folder, "gone.csv"), ...out],
        `There is no file ${join(folder, "gone.csv")}; `,
      ],
      [[...choose, "--set", bad, ...out], "no row of headings"],
      [[...choose, "--set", few, ...out], "1 more is needed"],
      [[...choose, "--set", light, ...out], "Club 7: Without head the club has"],
    ];
    for (const [words, part] of asks) {
      const { code, out: said, complaint } = await compare(...words);
      expect([code, said]).toEqual([2, ""]);
      expect(complaint).toContain(part);
      expect(complaint.trim().split("\n")).toHaveLength(1);
    }
    await expect(readFile(join(folder, "never.xlsx"))).rejects.toThrow();
  });

  it("warns of a length over the Rules and writes the sheet all the same", async () => {
    const long = join(folder, "long.csv");
    await writeFile(long, "target; swingweight; D2\nshafts; 60\ngrip; 50\nclub; length\nDriver; 48.5\n");
    const { code, complaint } = await compare(
      ...["--choose", "95 g high-launch", "--set", long, "--out", join(folder, "long.xlsx")],
    );
    expect(code).toBe(0);
    // Source: Equipment Rules of the R&A and the USGA, Part 2, Section 1c.
    expect(complaint).toContain("Build: Club Driver: 48.5 in is over 48 in, the most");
    expect((await sheetsOf("long.xlsx")).map(({ name }) => name)).toContain("Build");
  });
});
