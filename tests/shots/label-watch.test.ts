import { describe, expect, it } from "vitest";
import { LabelWatch } from "../../src/shots/label-watch.ts";
import { openSection } from "../../src/shots/section.ts";

/** A watch over the columns of a header, and how it sees rows one after the other. */
const watch = (header: string[], builds: string[] = []) => {
  const known = new Set(builds);
  const watching = new LabelWatch(
    openSection([header, ["A", "150"]], 0, (at) => at + 1, {}),
    known,
  );
  return {
    known,
    see: (...rows: string[][]) =>
      rows.map((cells) => {
        const label = watching.summaryIn(cells);
        if (label === "") watching.shotSeen(cells);
        return label;
      }),
  };
};

describe("LabelWatch(section, builds).summaryIn(cells)", () => {
  it.each(["Build", "Club", "Shot", "Time", "Keep", "", "Remark"])(
    "finds the label of a row of sums in a first column headed %j",
    (heading) => {
      expect(watch([heading, "Carry", "Total"]).see(["Average", "150", "160"])).toEqual(["Average"]);
    },
  );

  it.each(["Build", "Club", "Shot", "Time", "Keep", ""])(
    "finds it in a later column headed %j",
    (heading) => {
      expect(watch(["Carry", heading, "Total"]).see(["150", "Average", "160"])).toEqual(["Average"]);
    },
  );

  it("looks neither at columns of figures nor at later ones with a heading of their own", () => {
    expect(watch(["Carry", "Total", "Remark"]).see(["Average", "max", "Mean"])).toEqual([""]);
  });

  it("finds a label as often as it comes, and passes over names and blanks as often as they come", () => {
    const rows = ["A", "A", "", "A", "Average", "Average", "B", "A", "Average"].map((cell) => [cell, "150"]);
    expect(watch(["Build", "Carry"]).see(...rows)).toEqual([
      "",
      "",
      "",
      "",
      "Average",
      "Average",
      "",
      "",
      "Average",
    ]);
  });

  it("takes a summary word beside a build for a label once that build was met", () => {
    const { see, known } = watch(["Build", "Carry"], ["95 g mid"]);
    expect(see(["95 g mid average", "150"], ["105 g tip", "150"], ["Avg 105 g tip", "150"])).toEqual([
      "95 g mid average",
      "",
      "Avg 105 g tip",
    ]);
    expect([...known]).toEqual(["95 g mid", "105 g tip"]);
  });

  it("takes for a label what was none before its build was met, and a figure behind a label for no number", () => {
    expect(
      watch(["Club", "Build", "Carry"]).see(
        ["A b average", "", "1"],
        ["7i", "A b", "2"],
        ["A b average", "A b", "3"],
      ),
    ).toEqual(["", "", "A b average"]);
    expect(watch(["Club", "Carry"], ["95 g mid"]).see(["95 g mid average: 12.5", "150"])).toEqual([
      "95 g mid average: 12.5",
    ]);
    expect(
      watch(["Club", "Carry"]).see(["SD 12.5", "150"], ["S-1", "150"], ["12:30", "150"], ["7", "150"]),
    ).toEqual(["SD 12.5", "", "", ""]);
  });

  it("takes a build that is called as a summary for a label again where no shot's number speaks for it", () => {
    const { see } = watch(["Shot", "Build", "Carry"]);
    expect(see(["1", "Mean", "150"], ["2", "Mean", "150"], ["", "Mean", "150"])).toEqual(["", "", "Mean"]);
  });

  it("takes the cells of other columns for no builds", () => {
    const { see, known } = watch(["Club", "Carry"]);
    see(["7 iron", "150"]);
    expect([...known]).toEqual([]);
  });

  it("believes the number of the next shot over the name of its build", () => {
    const header = ["Shot", "Build", "Carry"];
    expect(watch(header).see(["1", "Mean", "150"], ["2", "Max", "150"])).toEqual(["", ""]);
    expect(watch(header).see(["1", "A", "150"], ["2", "A", "150"], ["2", "Mean", "150"])).toEqual([
      "",
      "",
      "Mean",
    ]);
    expect(watch(header).see(["7", "A", "150"], ["8", "Mean", "150"], ["1", "Max", "150"])).toEqual([
      "",
      "",
      "",
    ]);
    expect(watch(header).see(["7", "A", "150"], ["", "Mean", "150"])).toEqual(["", "Mean"]);
  });

  it("believes a label in the column of shot numbers itself", () => {
    expect(watch(["Shot", "Carry"]).see(["1", "150"], ["Average", "150"])).toEqual(["", "Average"]);
  });

  it("finds a label behind a time or a number, which label nothing", () => {
    const header = ["Time", "Build", "Carry"];
    expect(watch(header).see(["12:30", "A", "150"], ["12:31", "Average", "150"])).toEqual(["", "Average"]);
    expect(watch(header).see(["S-1", "A", "150"], ["S-2", "Average", "150"])).toEqual(["", "Average"]);
  });

  it("still finds labels when more names have come than it remembers", () => {
    const names = Array.from({ length: 600 }, (_, i) => [
      `build ${String.fromCharCode(97 + (i % 26))}${i}x`,
      "150",
    ]);
    const { see, known } = watch(["Build", "Carry"]);
    expect(see(...names, ["Average", "150"]).filter((label) => label !== "")).toEqual(["Average"]);
    expect(known.size).toBe(500);
  });
});
