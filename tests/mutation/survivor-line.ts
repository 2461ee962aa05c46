import { readFileSync } from "node:fs";
import { relative } from "node:path";
import type { Mutant } from "./mutate.ts";

/** The line that tells of a mutant which no test noticed: place, kind, what stood there and what took its place. */
export function survivorLine({ status, fileName, location, mutatorName, replacement }: Mutant) {
  if (status !== "Survived" && status !== "NoCoverage") return undefined;
  const lines = readFileSync(fileName, "utf8")
    .split("\n")
    .slice(location.start.line - 1, location.end.line);
  lines[lines.length - 1] = lines.at(-1)!.slice(0, location.end.column - 1);
  const stood = onOneLine(lines.join("\n").slice(location.start.column - 1));
  const place = `${relative(".", fileName)}:${location.start.line}:${location.start.column}`;
  const unreached = status === "NoCoverage" ? " (no test comes here)" : "";
  return `${place} ${mutatorName}${unreached}: ${stood} -> ${onOneLine(replacement ?? "")}`;
}

const onOneLine = (code: string) => code.replace(/\s+/g, " ").slice(0, 200);
