import { invalid, type Problem } from "../outcome/problem.ts";
import { checkNumbers, computable, type NumberRule } from "./check-number.ts";
import { type ClubParts, usualGripLength } from "./club-parts.ts";
import { inInches } from "./in-inches.ts";

/** Refuses parts that are no figures, negative, or placed off the club; the shaft is checked where it is cut. */
export function checkParts(parts: ClubParts): Problem | undefined {
  const { length, head, grip, extension } = parts;
  const gripLength = grip.length ?? usualGripLength;
  const checks: [number, NumberRule][] = [
    [length, { name: "length", unit: "inches", least: 0, above: true }],
    [head.weight, { name: "head weight", unit: "grams", least: 0 }],
    [head.place ?? length, { name: "head place", unit: "inches from the butt", least: 0, above: true }],
    [grip.weight, { name: "grip weight", unit: "grams", least: 0 }],
    [gripLength, { name: "grip length", unit: "inches", least: 0, above: true, greatest: length }],
  ];
  const placed = [
    ["ferrule", parts.ferrule],
    ["epoxy", parts.epoxy],
    ["tip weight", parts.tipWeight],
    ["butt weight", parts.buttWeight],
    ...(parts.tape ?? []).map((strip, index) => [`tape ${index + 1}`, strip] as const),
  ] as const;
  for (const [name, part] of placed) {
    if (part === undefined) continue;
    checks.push([part.weight, { name: `${name} in grams`, unit: "grams", least: 0 }]);
    checks.push([part.place ?? 0, { name: `${name} place`, unit: "inches from the butt", least: 0 }]);
  }
  if (extension) {
    checks.push([extension.weight, { name: "extension weight", unit: "grams", least: 0 }]);
    checks.push([extension.length, { name: "extension length", unit: "inches", least: 0, above: true }]);
    checks.push([extension.insert ?? 0, { name: "extension insert", unit: "inches", least: 0 }]);
  }
  const problem = checkNumbers(checks);
  if (problem) return problem;
  const { balance } = grip;
  if (balance === undefined || (balance > computable.least && balance < gripLength - computable.least))
    return undefined;
  return invalid(
    `grip balance point is ${inInches(balance)}; it should be inches from the butt, more than 0 in and less than ${inInches(gripLength)}.`,
  );
}
