import { describe, expect, test } from "vitest";
import { excelHost } from "../../../src/hosts/excel/excel-host.ts";
import { officeHost } from "../../office-host/office-host.ts";

describe("a text kept with the workbook", () => {
  test("comes back, is replaced and is forgotten", async () => {
    officeHost();
    const host = excelHost();
    expect(await host.recall("session")).toBeNull();
    expect(await host.keep("session", '{"v":1}')).toBe(true);
    expect(await host.keep("session", '{"v":2}')).toBe(true);
    expect(await host.recall("session")).toBe('{"v":2}');
    expect(await host.keep("session", null)).toBe(true);
    expect(await host.recall("session")).toBeNull();
  });

  test("can be forgotten though it was never kept", async () => {
    officeHost();
    expect(await excelHost().keep("never", null)).toBe(true);
  });

  test("that the spreadsheet refuses is a problem with its reason", async () => {
    officeHost().fault = { request: 0, action: -1, code: "RequestPayloadSizeLimitExceeded" };
    expect(await excelHost().keep("session", "x")).toEqual({
      kind: "unavailable",
      message: "That is more than the spreadsheet takes at once. Compare fewer shots.",
    });
  });
});
