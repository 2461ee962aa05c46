import { readFileSync } from "node:fs";
import { XMLParser } from "fast-xml-parser";
import { describe, expect, test } from "vitest";
import { COMMAND_NAMES } from "../../../src/hosts/excel/commands.ts";
import { shortcutsFile, withShortcuts } from "../../../src/hosts/excel/shortcuts.ts";

const manifest = readFileSync(new URL("../../../manifest.xml", import.meta.url), "utf8");
const { actions, shortcuts } = shortcutsFile();

/**
 * Letters that type a sign with AltGr and Shift, which Windows takes Ctrl+Alt+Shift for; from memory of these layouts.
 */
const TYPED = {
  Polish: "ACELNOSXZ",
  "US international": "ACDEILNOPQRSTUWYZ",
  "UK extended": "ACEIOUWY",
};

describe("the keys", () => {
  test("are one for each command, each another's", () => {
    expect(actions.map(({ id }) => id)).toEqual([...COMMAND_NAMES]);
    expect(shortcuts.map(({ action }) => action)).toEqual([...COMMAND_NAMES]);
    for (const keys of [shortcuts.map(({ key }) => key.default), shortcuts.map(({ key }) => key.mac)]) {
      expect(new Set(keys).size).toBe(keys.length);
    }
  });

  test.each(Object.entries(TYPED))("take no letter from those who write on a %s keyboard", (_, letters) => {
    for (const { key } of shortcuts) expect(letters).not.toContain(key.default.at(-1));
  });

  test("are written by the platform's rules: modifiers and one letter, joined by a plus", () => {
    for (const { key } of shortcuts) {
      expect(key.default).toMatch(/^Ctrl\+Alt\+Shift\+[A-Z]$/);
      expect(key.mac).toMatch(/^Cmd\+Option\+Shift\+[A-Z]$/);
    }
  });
});

describe("the manifest with keys", () => {
  const own = withShortcuts(manifest, "https://localhost:3000/");

  test("names the file of keys behind the overrides, as the platform's documentation asks", () => {
    const { OfficeApp: app } = new XMLParser({ ignoreAttributes: false }).parse(own);
    const elements = Object.keys(app).filter((name) => !name.startsWith("@"));
    expect(elements.slice(-2)).toEqual(["VersionOverrides", "ExtendedOverrides"]);
    expect(app.ExtendedOverrides["@_Url"]).toBe("https://localhost:3000/shortcuts.json");
  });

  test("is the other one in all else", () => {
    expect(own.replace(/\n {2}<ExtendedOverrides [^>]*>/, "").trim()).toBe(manifest.trim());
  });
});
