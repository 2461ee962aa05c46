import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { excelHost } from "../../../src/hosts/excel/excel-host.ts";
import type { StopFollowing } from "../../../src/hosts/host.ts";
import type { Outcome } from "../../../src/outcome/problem.ts";
import { answer } from "../../club/answer.ts";
import { officeHost } from "../../office-host/office-host.ts";
import type { Service } from "../../office-host/service.ts";

let service: Service;
let told: Outcome<string>[];
let stops: StopFollowing[] = [];
beforeEach(async () => {
  service = officeHost();
  told = [];
  await edit((sheet) => {
    sheet.getRange("B2:C3").formulas = [
      ["'Build", "'Carry"],
      ["'A", 150],
    ];
    sheet.tables.add("B2:C3", true).name = "Fittings";
  });
});

// The client library goes on hearing for all workbooks that are opened after each other.
afterEach(async () => {
  for (const stop of stops) await stop();
  stops = [];
});

/** Someone works on the sheet. */
const edit = (work: (sheet: Excel.Worksheet) => void) =>
  Excel.run(async (context) => {
    work(context.workbook.worksheets.getItem("Sheet1"));
    await context.sync();
  });

/** The launch monitor's row lands below the table, which takes it in. */
const addShot = (row: number, build: string, carry: number) =>
  edit((sheet) => {
    sheet.getRange(`B${row}:C${row}`).formulas = [[`'${build}`, carry]];
    sheet.tables.getItem("Fittings").resize(`B2:C${row}`);
  });

const follow = async (name?: string): Promise<StopFollowing> => {
  const stop = answer(await excelHost().follow!(name, (text) => told.push(text)));
  stops.push(stop);
  // What it holds as listening begins; the rest is what changes from then on.
  await expect.poll(() => told).toHaveLength(1);
  expect(told.shift()).toBe("Build\tCarry\nA\t150");
  return stop;
};

const settled = () => new Promise((resolve) => setTimeout(resolve, 30));

describe("a table that is followed", () => {
  test("is told anew when a row is added", async () => {
    await follow("Fittings");
    await addShot(4, "B", 161.5);
    await expect.poll(() => told).toEqual(["Build\tCarry\nA\t150\nB\t161.5"]);
    await addShot(5, "A", 149);
    await expect.poll(() => told.at(-1)).toBe("Build\tCarry\nA\t150\nB\t161.5\nA\t149");
  });

  test("is told once without a change, with what came in between the caller's reading and listening", async () => {
    const text = answer(await excelHost().tableText("Fittings"));
    await addShot(4, "B", 161.5);
    stops.push(answer(await excelHost().follow!("Fittings", (now) => told.push(now))));
    await expect.poll(() => told).toEqual([`${text}\nB\t161.5`]);
  });

  test("is found again under another name, with another sheet in front", async () => {
    await follow("Fittings");
    await Excel.run(async (context) => {
      context.workbook.tables.getItem("Fittings").name = "Monday";
      context.workbook.worksheets.add("Other").activate();
      context.workbook.worksheets.getItem("Sheet1").getRange("C3").values = [[152]];
      await context.sync();
    });
    await expect.poll(() => told).toEqual(["Build\tCarry\nA\t152"]);
  });

  test("is not read for what happens on other sheets, nor after it was let go", async () => {
    const stop = await follow("Fittings");
    await Excel.run(async (context) => {
      context.workbook.worksheets.add("Other").getRange("A1").values = [[1]];
      await context.sync();
    });
    await settled();
    expect(told).toEqual([]);
    expect(service.workbook.watched.size).toBe(1);
    await stop();
    expect(service.workbook.watched.size).toBe(0);
    await addShot(4, "B", 160);
    await settled();
    expect(told).toEqual([]);
  });

  test("that is deleted is told of as the last thing", async () => {
    await follow("Fittings");
    await edit((sheet) => {
      sheet.tables.getItem("Fittings").delete();
      sheet.getRange("B2").values = [["x"]];
    });
    const last = { kind: "unavailable", message: 'There is no table "Fittings" any more; choose another.' };
    await expect.poll(() => told).toEqual([last]);
    await expect.poll(() => service.workbook.watched.size).toBe(0);
    await edit((sheet) => {
      sheet.getRange("B3").values = [["y"]];
    });
    await settled();
    expect(told).toEqual([last]);
  });

  test("is let go when reading it fails once, for then the pane says that it has ended", async () => {
    await follow("Fittings");
    service.before = (request) => {
      const isReading = JSON.stringify(service.requests[request]!.body).includes("GetItemOrNullObject");
      if (isReading) service.fault = { request, action: 0 };
    };
    await addShot(4, "B", 160);
    await expect.poll(() => told).toMatchObject([{ kind: "unavailable" }]);
    await expect.poll(() => service.workbook.watched.size).toBe(0);
    service.before = () => {};
    await addShot(5, "B", 161);
    await settled();
    expect(told).toHaveLength(1);
  });

  test("is read twice for a burst of entries, not once for each", async () => {
    await follow("Fittings");
    service.requests.length = 0;
    await edit((sheet) => {
      for (let i = 0; i < 12; i++) sheet.getRange("C3").values = [[140 + i]];
    });
    await expect.poll(() => told.at(-1)).toBe("Build\tCarry\nA\t151");
    await settled();
    expect(told.length).toBeLessThanOrEqual(2);
  });

  test("is let go when the pane is closed, which is said", async () => {
    await follow("Fittings");
    globalThis.onPaneVisibility!({ visibilityMode: "Hidden" });
    await expect.poll(() => service.workbook.watched.size).toBe(0);
    expect(told).toMatchObject([{ message: expect.stringContaining("pane was closed") }]);
  });

  test("that is not there is said at once, and nothing is listened to", async () => {
    expect(await excelHost().follow!("Nowhere", () => {})).toMatchObject({ kind: "unavailable" });
    expect(service.workbook.watched.size).toBe(0);
  });
});

test("a sheet without a table is followed as it was in front", async () => {
  await follow();
  await Excel.run(async (context) => {
    context.workbook.worksheets.add("Other").activate();
    context.workbook.worksheets.getItem("Sheet1").getRange("D2").values = [["Remark"]];
    await context.sync();
  });
  await expect.poll(() => told).toEqual(["Build\tCarry\tRemark\nA\t150\t"]);
});

test("following needs no more than the floor, and one event", async () => {
  const older = officeHost("1.9", service);
  older.requests.length = 0;
  await follow("Fittings");
  const names = older.requests.flatMap(({ body }) => body.Actions.map(({ Name }) => Name));
  expect(names.filter((name) => name.startsWith("_Register"))).toEqual(["_RegisterDataChangedEvent"]);
});
