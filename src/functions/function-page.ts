import { argumentsOf, type Example, type FunctionSpec } from "./define-function.ts";
import { callPattern, exampleFormula } from "./example-formula.ts";
import type { FunctionMetadata } from "./function-metadata.ts";

/** What a function gives back, for people. */
const ANSWERS = {
  one: "One value; a range gives a value for each of its cells.",
  row: "One row; a column of arguments gives a row each, and headings set to TRUE names the columns.",
  like: "A value for each cell of the first argument, in its shape.",
  table: "A table.",
} as const;

/**
 * The page that the spreadsheet's help opens: every function with its arguments, a worked example and where its
 * figures come from, at an anchor of its own name. Made from the functions themselves, so it cannot fall behind.
 */
export function functionPage(
  functions: readonly FunctionSpec[],
  metadata: readonly FunctionMetadata[],
): string {
  const told = new Map(metadata.map((one) => [one.id, one]));
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<meta http-equiv="Content-Security-Policy" content="default-src 'self'; img-src 'self' data:; script-src 'none'; object-src 'none'; base-uri 'none'; form-action 'none'">
<title>Functions of Bay &amp; Bench</title>
<link rel="icon" href="data:,">
<link rel="stylesheet" href="functions.css">
</head>
<body>
<h1>
<picture>
<source srcset="assets/pane-64-dark.png" media="(prefers-color-scheme: dark)"/>
<img src="assets/pane-64-light.png" width="32" height="32" alt=""/>
</picture>
Functions of Bay &amp; Bench
</h1>
${INTRODUCTION.map((sentence) => `<p>${inHtml(sentence)}</p>`).join("\n")}
<nav aria-label="Functions"><ul>
${functions.map(({ id }) => `<li><a href="#${id}">${id}</a></li>`).join("\n")}
</ul></nav>
<main>
${functions.map((spec) => section(spec, told.get(spec.id))).join("\n")}
</main>
</body>
</html>
`;
}

const INTRODUCTION = [
  "Weights are in grams, lengths in inches and angles in degrees unless an argument says otherwise. Any argument also takes a range; the answer then spills over as many cells as it needs.",
  "A blank cell in a list is left out. What cannot be 0, such as a weight, a length, a speed, a carry or a spin, takes a 0 for a blank, since some spreadsheets hand blank cells over as 0. Where something cannot be worked out the cell shows #VALUE! or #N/A, and the sentence beside it says which argument it is and what would do.",
  "In a workbook that is opened where the add-in is not installed, a cell with one of these functions keeps its last value until it is calculated again and then shows #NAME?. The sheets that the pane makes use the spreadsheet's own functions only and go on calculating.",
];

function section(spec: FunctionSpec, told: FunctionMetadata | undefined): string {
  const texts = new Map(told?.parameters.map(({ name, description }) => [name, description]));
  const named = argumentsOf(spec).map(({ name, expects, otherwise }) => ({
    name,
    optional: otherwise !== undefined,
    text: texts.get(name) ?? expects,
  }));
  const rows = named.map(
    ({ name, optional, text }) =>
      `<tr><th scope="row">${inHtml(name)}</th><td>${optional ? "may be left out" : "needed"}</td><td>${inHtml(text)}</td></tr>`,
  );
  return `<section id="${spec.id}" aria-labelledby="${spec.id}-name">
<h2 id="${spec.id}-name">${spec.id}</h2>
<p>${inHtml(told?.description ?? "")}</p>
<p><code>${inHtml(callPattern(spec.id, named))}</code></p>
<table><caption>Arguments</caption>
${rows.join("\n")}
</table>
<p>${ANSWERS[spec.shape]}</p>
<p>Example: <code>${inHtml(exampleFormula(spec))}</code> gives</p>
${answerTable(spec.example, spec.headings)}
<p class="source">${inHtml(spec.example.source)}</p>
</section>`;
}

function answerTable({ answer }: Example, headings: readonly string[] | undefined): string {
  if (typeof answer !== "object") return `<p><output>${inHtml(String(answer))}</output></p>`;
  const head = headings && headings.length === answer[0]?.length && answer[0][0] !== headings[0];
  const top = head
    ? `<tr>${headings.map((name) => `<th scope="col">${inHtml(name)}</th>`).join("")}</tr>\n`
    : "";
  const body = answer.map((row) => `<tr>${row.map((cell) => `<td>${cellOf(cell)}</td>`).join("")}</tr>`);
  return `<table class="answer">\n${top}${body.join("\n")}\n</table>`;
}

function cellOf(cell: string | number | boolean): string {
  return inHtml(typeof cell === "boolean" ? String(cell).toUpperCase() : String(cell));
}

function inHtml(text: string): string {
  return text
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}
