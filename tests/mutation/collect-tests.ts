export { expect } from "vitest";

/** A test as it stands in its file, with the titles around it. */
export type CollectedTest = Readonly<{ id: string; run: () => unknown }>;

/**
 * Takes the place of vitest while mutants are tried: gathers the tests of the files it is imported by, so that a mutant
 * costs the tests that reach it and nothing more. Knows what these tests use: `describe`, `it`, `test`, their `each`
 * and `skipIf`.
 */
export const collected: CollectedTest[] = [];

let titles: readonly string[] = [];
const groups: (() => void)[] = [];

/** Gathers the tests of a file: `load` runs what stands outside its tests. */
export function inFile(file: string, load: () => void): void {
  within([file], load);
  // A group may hold others, which are appended and so come up in turn.
  for (const gather of groups) gather();
  groups.length = 0;
}

function within(place: readonly string[], act: () => void): void {
  titles = place;
  act();
  titles = [];
}

type Body<Case extends unknown[]> = (...one: Case) => unknown;

function add(title: string, ...rest: [Body<[]>, number?] | [object, Body<[]>]): void {
  const run = rest.find((one) => typeof one === "function") as Body<[]>;
  const id = [...titles, title].join(" > ");
  const before = collected.filter((one) => one.id.replace(/ \(\d+\)$/, "") === id).length;
  collected.push({ id: before === 0 ? id : `${id} (${before + 1})`, run });
}

/** What stands in a group is gathered once its file has been read to the end, for it may name what stands below it. */
function group(title: string, body: Body<[]>): void {
  const place = [...titles, title];
  groups.push(() => within(place, body));
}

const eachOf =
  (one: (title: string, body: Body<[]>) => void) =>
  (cases: readonly unknown[]) =>
  (title: string, body: Body<unknown[]>) =>
    cases.forEach((row, i) => {
      one(`${title} [${i}]`, () => body(...(Array.isArray(row) ? row : [row])));
    });

/** Cases that say `skipIf(QUICK)` take seconds each, so they sit out here too. */
const nothing = Object.assign(() => {}, { each: () => () => {} });

export const describe = Object.assign(group, { each: eachOf(group) });
export const test = Object.assign(add, { each: eachOf(add), skipIf: () => nothing });
export const it = test;
