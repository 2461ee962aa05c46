import { readdirSync } from "node:fs";
import { generateCustomFunctionsMetadata } from "custom-functions-metadata";
import { XMLValidator } from "fast-xml-parser";
import { beforeAll, describe, expect, test } from "vitest";
import { FUNCTIONS } from "../../src/functions/catalogue.ts";
import { argumentsOf } from "../../src/functions/define-function.ts";
import type { FunctionMetadata } from "../../src/functions/function-metadata.ts";
import { functionPage } from "../../src/functions/function-page.ts";

const FOLDER = "src/functions";
let metadata: FunctionMetadata[];
let page: string;

beforeAll(async () => {
  const files = readdirSync(FOLDER, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .flatMap(({ name }) => readdirSync(`${FOLDER}/${name}`).map((file) => `${FOLDER}/${name}/${file}`));
  const { metadataJson, errors } = await generateCustomFunctionsMetadata(files, true);
  expect(errors).toEqual([]);
  metadata = JSON.parse(metadataJson).functions;
  page = functionPage(FUNCTIONS, metadata);
});

describe("the page of the functions", () => {
  test("stands on descriptions that are one whole sentence on their first line", () => {
    for (const { id, description } of metadata) expect(description?.split("\n")[0], id).toMatch(/^\S.*\.$/);
    for (const { id, description } of metadata) expect(description, id).not.toContain("\n");
  });

  test("has an anchor for the help address of every function, and no other function's", () => {
    const anchors = [...page.matchAll(/<section id="([^"]+)"/g)].map(([, id]) => id);
    const asked = metadata.map(({ helpUrl = "" }) => {
      expect(helpUrl).toMatch(/^https:\/\/localhost:3000\/functions\.html#/);
      return helpUrl.split("#")[1];
    });
    expect([...anchors].sort()).toEqual([...asked].sort());
    expect(metadata.map(({ id }) => id).sort()).toEqual(FUNCTIONS.map(({ id }) => id).sort());
  });

  test("explains every argument in the words of the help, in the order of the call", () => {
    for (const spec of FUNCTIONS) {
      const told = metadata.find(({ id }) => id === spec.id)!;
      expect(
        told.parameters.map(({ name, optional = false }) => ({ name, optional })),
        spec.id,
      ).toEqual(
        argumentsOf(spec).map(({ name, otherwise }) => ({ name, optional: otherwise !== undefined })),
      );
      for (const { name, description = "" } of told.parameters) {
        expect(description, `${spec.id} ${name}`).not.toBe("");
        expect(page).toContain(`>${inHtml(description)}</td>`);
      }
      expect(page).toContain(inHtml(told.description!));
      expect(page).toContain(inHtml(spec.example.source));
    }
  });

  test("is one well-formed document with every link leading somewhere on it", () => {
    const body = page.slice(page.indexOf("<body>"), page.indexOf("</html>"));
    expect(XMLValidator.validate(body)).toBe(true);
    const ids = new Set([...page.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id));
    for (const [, target] of page.matchAll(/href="#([^"]+)"/g)) expect(ids).toContain(target);
    expect(page).not.toMatch(/https?:/);
  });

  test("lets no text of a function become markup", () => {
    const [first] = FUNCTIONS;
    const sly = { ...first!, example: { ...first!.example, source: '<img src="x">&' } };
    expect(functionPage([sly], [])).toContain("&lt;img src=&quot;x&quot;&gt;&amp;");
  });
});

const inHtml = (text: string) =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");
