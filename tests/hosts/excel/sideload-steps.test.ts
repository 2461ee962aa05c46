import { execFileSync } from "node:child_process";
import { describe, expect, test } from "vitest";
import { sideloadSteps } from "../../../src/hosts/excel/sideload-steps.ts";

const steps = (platform: string) =>
  sideloadSteps(platform, "/Users/ann", "/shop/dist/manifest.xml", "3297-id");

describe("sideloading", () => {
  // The folder is the one that the platform's documentation of sideloading on a Mac names.
  test("on a Mac copies the manifest to the spreadsheet's own folder", () => {
    expect(steps("darwin").copy).toBe(
      "/Users/ann/Library/Containers/com.microsoft.Excel/Data/Documents/wef/3297-id.manifest.xml",
    );
  });

  test("on Windows makes the manifest known under its identifier", () => {
    expect(steps("win32").add).toEqual([
      "reg",
      "add",
      "HKCU\\Software\\Microsoft\\Office\\16.0\\WEF\\Developer",
      "/v",
      "3297-id",
      "/t",
      "REG_SZ",
      "/d",
      "/shop/dist/manifest.xml",
      "/f",
    ]);
  });

  test("elsewhere touches nothing and says how to upload it", () => {
    const { copy, add, next } = steps("linux");
    expect([copy, add]).toEqual([undefined, undefined]);
    expect(next).toContain("/shop/dist/manifest.xml");
  });

  const run = (...words: string[]) =>
    execFileSync(process.execPath, ["--import", "tsx", "src/hosts/excel/sideload.ts", ...words], {
      stdio: "pipe",
      encoding: "utf8",
    });

  test("without a build says to build first", () => {
    expect(() => run("no/manifest.xml")).toThrow(/run "npm run build" first/);
  });

  // On the other platforms this would change the machine that tests run on.
  test.runIf(process.platform === "linux")("with one says what to do, and how it goes again", () => {
    expect(run("manifest.xml")).toMatch(/Upload my add-in, and take .*\/manifest\.xml\.\n$/);
    expect(run("manifest.xml", "--stop")).toBe("The spreadsheet forgets Bay & Bench when it starts anew.\n");
  });
});
