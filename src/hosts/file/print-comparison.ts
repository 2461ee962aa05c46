import { type BuildSummary, type Comparison, compareBuilds } from "../../fitting/compare-builds.ts";
import { decide } from "../../fitting/decide.ts";
import { computedWords } from "../../fitting/filled-session.ts";
import { impossibleWords } from "../../fitting/impossible-words.ts";
import { driftWarnings } from "../../fitting/order-drift.ts";
import { outlierWords } from "../../fitting/outlier-words.ts";
import { plainSentences } from "../../fitting/plain-sentences.ts";
import type { Session } from "../../fitting/session.ts";
import { verdictWords } from "../../fitting/verdict-words.ts";
import { weightWords } from "../../fitting/weight-words.ts";
import { whatNext } from "../../fitting/what-next.ts";
import { displaySession, unitText } from "../../sheets/display-session.ts";
import { figureText } from "../../shots/figure-text.ts";
import { METRICS, type Metric } from "../../shots/metrics.ts";

/** Spaces, and whatever could move the cursor of a terminal. */
const UNPRINTABLE = /[\s\p{Cc}]+/u;

/** Columns of a terminal that the table must fit. */
const WIDEST = 100;
const LABEL = 22;
const CELL = 19;

/** The comparison as plain text, at most 100 columns wide: words first, then averages, builds beside each other. */
export function printComparison(session: Session): string {
  const shown = compareBuilds(displaySession(session));
  const facts = [session.title, session.player, session.date, session.place].filter((part) => part !== "");
  return [
    ...wrap(facts.join(" · ")),
    "",
    ...verdict(session).flatMap((sentence) => wrap(sentence)),
    "",
    ...averages(session, shown),
    ...remarks(session),
    "",
  ].join("\n");
}

/** What the shots say, what to hit next, and what differs from the baseline, a sentence a line. */
function verdict(session: Session): string[] {
  const decision = decide(session);
  const words = verdictWords(session, decision);
  const sentences = [
    words.headline,
    ...words.reasons,
    ...words.costs,
    words.next,
    whatNext(session, decision).why,
  ];
  const changes = plainSentences(session, compareBuilds(session));
  return [
    ...sentences.filter((text) => text !== ""),
    "",
    ...changes,
    "",
    ...impossibleWords(session),
    ...computedWords(session),
    ...outlierWords(session),
    ...weightWords(session),
    ...driftWarnings(session),
  ];
}

/** Averages with their 95 % limits, four builds a block, so that any number of builds fits. */
function averages(session: Session, comparison: Comparison): string[] {
  const perBlock = Math.floor((WIDEST - LABEL) / CELL);
  const lines: string[] = ["Mean ± 95 % limits (SD)"];
  for (let from = 0; from < comparison.builds.length; from += perBlock) {
    const builds = comparison.builds.slice(from, from + perBlock);
    lines.push(
      row(
        "",
        builds.map((build) => clip(build.name, CELL - 1)),
      ),
    );
    lines.push(
      row(
        "Shots kept",
        builds.map((build) => `${build.kept} of ${build.shots}`),
      ),
    );
    for (const metric of METRICS) {
      if (!builds.some((build) => build.metrics.has(metric.key))) continue;
      const unit = unitText(metric, session.units);
      const label = unit === "" ? metric.label : `${metric.label}, ${unit}`;
      lines.push(
        row(
          label,
          builds.map((build) => figure(build, metric)),
        ),
      );
    }
    lines.push("");
  }
  return lines;
}

function figure(build: BuildSummary, metric: Metric): string {
  const figures = build.metrics.get(metric.key);
  if (!figures) return "";
  const { mean, sd, high } = figures;
  const shown = (value: number) => figureText(value, metric.decimals);
  if (sd === null || high === null) return shown(mean);
  return `${shown(mean)} ±${shown(high - mean)} (${shown(sd)})`;
}

function remarks(session: Session): string[] {
  const { problems, skipped, notes } = session.table;
  return [
    ...notes.flatMap((note) => wrap(note)),
    ...skipped.flatMap(({ row: at, reason }) => wrap(`Row ${at} left out: ${reason}`)),
    ...problems.flatMap(({ message }) => wrap(message)),
  ];
}

function row(label: string, cells: readonly string[]): string {
  return (clip(label, LABEL - 1).padEnd(LABEL) + cells.map((cell) => cell.padEnd(CELL)).join("")).trimEnd();
}

function clip(text: string, width: number): string {
  const letters = [...text.replace(/\s+/g, " ")];
  return letters.length > width ? `${letters.slice(0, width - 1).join("")}…` : letters.join("");
}

/** Breaks a sentence at spaces, so that no line is wider than a terminal. */
function wrap(text: string): string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(UNPRINTABLE)) {
    for (let rest = word; rest !== ""; rest = rest.slice(WIDEST)) {
      const piece = rest.slice(0, WIDEST);
      if (line !== "" && line.length + 1 + piece.length > WIDEST) {
        lines.push(line);
        line = "";
      }
      line = line === "" ? piece : `${line} ${piece}`;
    }
  }
  return [...lines, line];
}
