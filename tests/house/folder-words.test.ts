import { existsSync, readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";

const SOURCE = new URL("../../src/", import.meta.url);
const FOLDERS = ["", "hosts/"].flatMap((above) =>
  readdirSync(new URL(above, SOURCE), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => `${above}${name}/`),
);

describe.each(FOLDERS)("src/%s", (folder) => {
  it("opens with a few words on what lives there, which name no file that is not", () => {
    const words = readFileSync(new URL(`${folder}README.md`, SOURCE), "utf8");
    expect(words.split("\n").length).toBeLessThan(12);
    const files = [...words.matchAll(/`([\w-]+\.tsx?)`/g)].map(([, name]) => name!);
    expect(files.filter((name) => !existsSync(new URL(folder + name, SOURCE)))).toEqual([]);
  });
});
