import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { DEVELOPMENT_ADDRESS } from "../../src/hosts/excel/manifest-for.ts";
import { manifestFaults } from "./manifest-faults.ts";

const manifest = readFileSync(new URL("../../manifest.xml", import.meta.url), "utf8");

// Rules from the platform's published reference of the add-in only manifest; one wrong manifest for each.
const WRONG: readonly (readonly [string, string | RegExp, string, string])[] = [
  ["an identifier that is none", /<Id>.*<\/Id>/, "<Id>bench</Id>", "Id is no identifier."],
  ["a version of two parts", "<Version>1.0.0.0<", "<Version>1.0<", "Version has not four parts."],
  ["reading only", "ReadWriteDocument", "ReadDocument", "Permissions is not ReadWriteDocument."],
  [
    "an address of others",
    'https://localhost:3000/functions.js"',
    'https://elsewhere.example/functions.js"',
    "https://elsewhere.example/functions.js is not under https://localhost:3000.",
  ],
  [
    "an address that is not https",
    "https://localhost:3000/pane.html",
    "http://localhost:3000/pane.html",
    "http://localhost:3000/pane.html is not https.",
  ],
  [
    "a domain more",
    "<Hosts>",
    "<AppDomains><AppDomain>https://elsewhere.example</AppDomain></AppDomains><Hosts>",
    "The domain https://elsewhere.example is not needed.",
  ],
  ["another host", '<Host Name="Workbook"/>', '<Host Name="Document"/>', "No host is a workbook."],
  [
    "functions that cannot say what is wrong",
    'Name="CustomFunctionsRuntime" MinVersion="1.2"',
    'Name="CustomFunctionsRuntime" MinVersion="1.1"',
    "CustomFunctionsRuntime 1.2 is not asked for.",
  ],
  ["a lower floor", 'MinVersion="1.9"', 'MinVersion="1.7"', "ExcelApi 1.9 is not asked for."],
  [
    "a resource that is not there",
    '<Label resid="Open.Label"/>',
    '<Label resid="Gone"/>',
    "Nothing is called Gone.",
  ],
  [
    "a resource nobody uses",
    "<bt:ShortStrings>",
    '<bt:ShortStrings><bt:String id="Idle" DefaultValue="x"/>',
    "Idle is never used.",
  ],
  ["a resource twice", ' id="Open.Text"', ' id="Bench.Text"', "Two resources are called Bench.Text."],
  ["a control twice", 'id="BayBench.Bench"', 'id="BayBench.Open"', "Two controls are called BayBench.Open."],
  [
    "a name of 33 letters",
    /Functions\.Namespace/g,
    "F".repeat(33),
    `${"F".repeat(33)} is longer than 32 letters.`,
  ],
  [
    "a label of 126 letters",
    'Open the pane"',
    `${"x".repeat(126)}"`,
    "Open.Label is longer than 125 letters.",
  ],
  [
    "a tip of 251 letters",
    /Turn the chosen build[^"]*/,
    "x".repeat(251),
    "Bench.Text is longer than 250 letters.",
  ],
  ["a short-lived runtime", 'lifetime="long"', 'lifetime="short"', "No long-lived shared runtime."],
  [
    "the runtimes behind the functions",
    /(<Runtimes>[\s\S]*<\/Runtimes>)([\s\S]*<\/AllFormFactors>)/,
    "$2$1",
    "Runtimes do not stand before the form factors.",
  ],
  [
    "another page for the commands",
    '<FunctionFile resid="Pane.Url"/>',
    '<FunctionFile resid="Functions.Page"/>',
    "A page is not that of the runtime.",
  ],
  ["a command that is not there", ">compareSelection<", ">compareAll<", "No command is called compareAll."],
  ["no group on the ribbon", /<Group [\s\S]*<\/Group>/, "", "The ribbon has no group of our own."],
  ["another tab", 'OfficeTab id="TabHome"', 'OfficeTab id="TabData"', "Nothing is on the Home tab."],
  [
    "no button that opens the pane",
    /<Control xsi:type="Button" id="BayBench.Open">[\s\S]*?<\/Control>/,
    "",
    "The ribbon lacks ShowTaskpane.",
  ],
  [
    "no button that compares",
    /<Control xsi:type="Button" id="BayBench.Compare">[\s\S]*?<\/Control>/,
    "",
    "The ribbon lacks compareSelection.",
  ],
  [
    "no button that fills a bench sheet",
    /<Control xsi:type="Button" id="BayBench.Bench">[\s\S]*?<\/Control>/,
    "",
    "The ribbon lacks fillBenchSheet.",
  ],
  [
    "nothing on the menu of cells",
    /<ExtensionPoint xsi:type="ContextMenu">[\s\S]*?<\/ExtensionPoint>/,
    "",
    "The menu of cells lacks compareSelection.",
  ],
  [
    "an icon without its middle size",
    '<bt:Image size="32" resid="Bench.32"/>',
    "",
    "An icon lacks 16, 32 or 80 pixels.",
  ],
  [
    "a picture that nobody drew",
    "bench-80.png",
    "ball-80.png",
    "https://localhost:3000/assets/ball-80.png is not drawn.",
  ],
  [
    "another namespace",
    'DefaultValue="CLUB"',
    'DefaultValue="GOLF"',
    "The functions' namespace is not CLUB.",
  ],
];

describe("manifest.xml", () => {
  test("keeps every rule", () => {
    expect(manifestFaults(manifest, DEVELOPMENT_ADDRESS)).toEqual([]);
  });

  test.each(WRONG)("with %s breaks a rule", (_, from, to, fault) => {
    const wrong = manifest.replace(from, to);
    expect(wrong).not.toBe(manifest);
    expect(manifestFaults(wrong, DEVELOPMENT_ADDRESS)).toContain(fault);
  });
});
