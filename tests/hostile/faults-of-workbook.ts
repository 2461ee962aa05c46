import { comparisonJson } from "../../src/fitting/comparison-json.ts";
import { type Session, sessionOf } from "../../src/fitting/session.ts";
import { comparisonWorkbook } from "../../src/sheets/comparison-workbook.ts";
import { freeSheetName } from "../../src/sheets/free-names.ts";
import type { WorkbookPlan } from "../../src/sheets/plan.ts";
import type { ShotTable } from "../../src/shots/shot-table.ts";
import type { Draw } from "./draw.ts";
import { hostileText, MARKER } from "./hostile-text.ts";

/** A session over a hostile table, with a player, title and place as hostile as it. */
export function hostileSession(table: ShotTable, draw: Draw): Session {
  return sessionOf(table, {
    title: hostileText(draw),
    player: hostileText(draw),
    place: hostileText(draw),
    date: hostileText(draw),
    baseline: draw.one(table.build),
    units: draw.one(["us", "metric", "metric-kmh"]),
  });
}

/** What is wrong with the figures that other programs get: only finite numbers may stand in them. */
export function faultsOfJson(session: Session): string[] {
  return unfinished(comparisonJson(session), "json");
}

/** What is wrong with the sheets: pasted words are texts or answers, never part of a formula, and names are lawful. */
export function faultsOfWorkbook(session: Session, draw: Draw): string[] {
  const plan = hostilePlan(session, draw);
  const faults = unfinished(plan, "plan");
  const names = plan.sheets.map(({ name }) => name);
  if (new Set(names.map((name) => name.toLowerCase())).size < names.length)
    faults.push(`sheets named alike: ${names}`);
  for (const name of names) {
    // Source of the rules: "Rename a worksheet", support.microsoft.com.
    if (name.length > 31 || name.trim() === "" || /[\\/?*[\]:]|^'|'$/.test(name))
      faults.push(`a sheet named ${name}`);
  }
  for (const { name, blocks, conditions, charts, tables } of plan.sheets) {
    const formulas = blocks.flatMap(({ cells }) =>
      cells.flatMap((line) =>
        line.flatMap((cell) => (typeof cell === "object" && cell !== null ? [cell.formula] : [])),
      ),
    );
    for (const formula of [...formulas, ...conditions.map((condition) => condition.formula)]) {
      if (outsideTexts(formula).includes(MARKER))
        faults.push(`pasted words in a formula of ${name}: ${formula}`);
    }
    if (charts.some((chart) => chart.name.includes(MARKER)))
      faults.push("pasted words in the name of a chart");
    if (tables.some((table) => !/^[A-Za-z_]\w*$/.test(table.name)))
      faults.push("an unlawful name of a table");
  }
  return faults;
}

/** The sheets of a session in a workbook that already has hostile names. */
export function hostilePlan(session: Session, draw: Draw): WorkbookPlan {
  const sheets = ["comparison", "Shots", freeSheetName(hostileText(draw).repeat(3), [])];
  return comparisonWorkbook(session, { sheets, names: ["shots"] }, "2026-11-25 12:00");
}

/** A formula without its quoted texts and quoted names of sheets. */
function outsideTexts(formula: string): string {
  return formula.replace(/"(?:[^"]|"")*"|'(?:[^']|'')*'/g, "");
}

/** Places of numbers that are none. */
function unfinished(part: unknown, path: string): string[] {
  if (typeof part === "number") return Number.isFinite(part) ? [] : [`${path} is ${part}`];
  if (typeof part !== "object" || part === null) return [];
  return Object.entries(part).flatMap(([key, value]) => unfinished(value, `${path}.${key}`));
}
