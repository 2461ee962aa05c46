import { describe, expect, it } from "vitest";
import { METRICS, metricOf } from "../../src/shots/metrics.ts";
import { rowsWords } from "../../src/shots/rows-words.ts";
import { showing, showingIn } from "../../src/shots/showing.ts";
import { orderedMetrics } from "../../src/shots/unit-set.ts";
import { words } from "../../src/shots/words.ts";
import { read } from "./read.ts";

describe("rowsWords(rows)", () => {
  it("names one row, twelve, and the first twelve of more", () => {
    const rows = Array.from({ length: 15 }, (_, row) => row + 1);
    expect(rowsWords([4])).toBe("row 4");
    expect(rowsWords([4, 9])).toBe("rows 4, 9");
    expect(rowsWords(rows.slice(0, 12))).toBe("rows 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12");
    expect(rowsWords(rows)).toBe("rows 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12 and 3 more");
  });
});

describe("showing(metric, units)", () => {
  it("turns a yard into 0.9144 m, and leaves what is shown as it is kept", () => {
    expect(showing(metricOf("carry"), "metric")(100)).toBe(91.44);
    expect(showing(metricOf("carry"), "us")(100)).toBe(100);
    expect(showing(metricOf("spin"), "metric")(6000)).toBe(6000);
    expect(showing(metricOf("smash"), "metric")(1.4)).toBe(1.4);
  });

  it("changes nothing for a unit that the metric cannot have", () => {
    expect(showingIn(metricOf("carry"), "rpm")(100)).toBe(100);
  });
});

describe("orderedMetrics(keys)", () => {
  it("answers those there are, in the order of METRICS", () => {
    expect(orderedMetrics(["offline", "carry", "nothing"]).map(({ key }) => key)).toEqual([
      "carry",
      "offline",
    ]);
    expect(orderedMetrics(METRICS.map(({ key }) => key))).toEqual(METRICS);
  });
});

describe("words(text)", () => {
  it("opens up marks, capitals, accents and abbreviations", () => {
    expect(words("  Dyn.-- Loft ")).toEqual(["dynamic", "loft"]);
    expect(words("ballSpeedMPH")).toEqual(["ball", "speed", "mph"]);
    expect(words("ABC")).toEqual(["abc"]);
    expect(words("Höhe ß #2")).toEqual(["hohe", "ss", "number", "2"]);
  });

  it("looks at the first 200 letters", () => {
    expect(words("a ".repeat(150))).toHaveLength(100);
  });
});

describe("what a table says in few words", () => {
  it("tells a ruled line and an empty row from a row with a word", () => {
    const reason = (line: string) =>
      read(["Build,Carry,Spin", "A,150,6000", line, "A,151,6100"]).skipped.at(-1)?.reason;
    expect(reason("===,===,===")).toBe("a ruled line");
    expect(reason("---,A,---")).not.toBe("a ruled line");
    expect(reason(" , ,")).toBe("an empty row");
    expect(reason("n/a,-,")).toBe("an empty row");
    expect(reason(",yd,rpm")).toMatch(/units|no figure/);
  });

  it("tells the column of a doubt in units that nothing fits", () => {
    const said = (header: string) => read([`Carry,${header}`, "150,odd"]).problems[0]!.message;
    expect(said("Total")).toMatch(/in yards such as 152\.3 would do/);
    expect(said("Total [m]")).toMatch(/in metres such as/);
    expect(said("Height")).toMatch(/in feet such as/);
    expect(said("Flight time")).toMatch(/in seconds such as 6\.1 would do/);
    expect(said("Landing angle")).toMatch(/in degrees such as 14\.2 would do/);
    expect(said("Direction")).toMatch(/in degrees such as -12\.3 or 12\.3 L would do/);
    expect(said("Strike Y")).toMatch(/such as 152\.3 would do/);
    expect(said("Spin")).toMatch(/in rpm such as 2450 would do/);
    expect(said("Smash")).toMatch(/a number such as 1\.42 would do/);
    expect(said("Ball speed [km/h]")).toMatch(/in km\/h such as 152\.3 would do/);
  });
});
