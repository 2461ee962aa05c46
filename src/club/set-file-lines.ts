import { invalid, isProblem, type Outcome, type Problem } from "../outcome/problem.ts";
import { pointsOfCode } from "./points-of-code.ts";
import { setFileNumber } from "./set-file-number.ts";
import { setFileUnit } from "./set-file-units.ts";
import type { SetRequest, SetTolerances } from "./set-request.ts";

type Writable<T> = { -readonly [Key in keyof T]: T[Key] };

/** What the lines above the table have said so far. */
export type SetFileDraft = Writable<Partial<Omit<SetRequest, "clubs">>> & { lengths?: "in" | "cm" };

const tolerances = ["length", "loft", "lie", "swingweight", "head", "shaft", "total", "frequency"] as const;

/** The cells as figures, blank ones at the end left out. */
function figures(name: string, cells: readonly string[]): Outcome<number[]> {
  const answer: number[] = [];
  const last = cells.findLastIndex((cell) => cell.trim() !== "");
  for (const cell of cells.slice(0, last + 1)) {
    const figure = setFileNumber(name, cell);
    if (isProblem(figure)) return figure;
    answer.push(figure);
  }
  return answer.length > 0 ? answer : invalid(`${name} has no figure; it should have one behind it.`);
}

/** A line that takes figures and keeps them. */
function line(name: string, keep: (draft: SetFileDraft, numbers: [number, ...number[]]) => void) {
  return (draft: SetFileDraft, cells: readonly string[]): Problem | undefined => {
    const numbers = figures(name, cells);
    if (isProblem(numbers)) return numbers;
    keep(draft, numbers as [number, ...number[]]);
  };
}

function target(draft: SetFileDraft, [kind = "", first = "", second = "", third = ""]: readonly string[]) {
  const word = kind.trim().toLowerCase();
  if (word === "swingweight") {
    const points = pointsOfCode(first.trim());
    if (isProblem(points)) return points;
    const steps = stepped("target", ["0", second, third]);
    if (isProblem(steps)) return steps;
    const { value: _, ...rest } = steps;
    draft.target = { kind: "swingweight", code: first.trim(), ...rest };
    return undefined;
  }
  if (word === "inertia") {
    const inertia = setFileNumber("target inertia", first);
    if (isProblem(inertia)) return inertia;
    draft.target = { kind: "inertia", inertia };
    return undefined;
  }
  if (word === "inertia of") {
    draft.target = { kind: "inertia of", reference: first.trim(), code: second.trim() };
    return undefined;
  }
  return invalid(`target is "${kind.trim()}"; it should be swingweight, inertia or inertia of.`);
}

function shafts(draft: SetFileDraft, cells: readonly string[]) {
  if (cells[0]?.trim().toLowerCase() === "list") {
    const weights = figures("shafts", cells.slice(1));
    if (isProblem(weights)) return weights;
    draft.shafts = { kind: "list", weights };
    return undefined;
  }
  const steps = stepped("shafts", cells);
  if (isProblem(steps)) return steps;
  const { value, ...rest } = steps;
  draft.shafts = { kind: "steps", weight: value, ...rest };
  return undefined;
}

function tipTrims(draft: SetFileDraft, cells: readonly string[]) {
  const steps = stepped("tip trims", cells);
  if (isProblem(steps)) return steps;
  const { value, ...rest } = steps;
  draft.tipTrims = { tip: value, ...rest };
  return undefined;
}

/** A value, its step a club shorter and the reference club, as a line says them; the last two may be left out. */
function stepped(name: string, [first = "", second = "", third = ""]: readonly string[]) {
  const value = setFileNumber(name, first);
  if (isProblem(value)) return value;
  const step = second.trim() === "" ? 0 : setFileNumber(`${name} step`, second);
  if (isProblem(step)) return step;
  const reference = third.trim();
  return { value, step, ...(reference ? { reference } : {}) };
}

function tolerance(draft: SetFileDraft, [name = "", value]: readonly string[]) {
  const word = name.trim().toLowerCase();
  const key = tolerances.find((each) => each === word);
  if (!key)
    return invalid(`tolerance is of "${name.trim()}"; it should be of one of: ${tolerances.join(", ")}.`);
  const figure = setFileNumber(`tolerance ${key}`, value);
  if (isProblem(figure)) return figure;
  if (figure < 0) return invalid(`tolerance ${key} is ${figure}; it should be 0 or more.`);
  const kept: SetTolerances = { ...draft.tolerances, [key]: figure };
  draft.tolerances = kept;
  return undefined;
}

function blank(draft: SetFileDraft, more: SetRequest["shaftBlank"]) {
  const limits = { ...draft.shaftBlank?.limits, ...more?.limits };
  draft.shaftBlank = { ...draft.shaftBlank, ...more, limits };
}

/** What each line above the table does, by its first word; the cells are those behind it. */
export const setFileLines: Readonly<
  Record<string, (draft: SetFileDraft, cells: readonly string[]) => Problem | undefined>
> = {
  set: (draft, [name = ""]) => {
    draft.name = name.trim();
    return undefined;
  },
  target,
  shafts,
  tolerance,
  "tip trims": tipTrims,
  lengths: (draft, [unit = ""]) => {
    const known = setFileUnit(unit);
    if (known !== "in" && known !== "cm") {
      return invalid(`lengths is "${unit.trim()}"; it should be in (inches) or cm.`);
    }
    draft.lengths = known;
    return undefined;
  },
  grip: line("grip", (draft, [weight, length, balance]) => {
    draft.grip = { weight, length, balance };
  }),
  ferrule: line("ferrule", (draft, [weight]) => {
    draft.ferrule = weight;
  }),
  epoxy: line("epoxy", (draft, [weight]) => {
    draft.epoxy = weight;
  }),
  "bend limit": line("bend limit", (draft, [degrees]) => {
    draft.bendLimit = degrees;
  }),
  tape: (draft, cells) => {
    const numbers = figures("tape", cells);
    if (isProblem(numbers)) return numbers;
    const [up, most] = numbers;
    if (most === undefined) {
      return invalid(
        `tape has ${up} alone; it should have two figures, how far above the club's end and most grams.`,
      );
    }
    draft.tape = { up: up!, most };
    return undefined;
  },
  "balance share": (draft, [cell]) => {
    const balanceShare = setFileNumber("balance share", cell);
    if (isProblem(balanceShare)) return balanceShare;
    if (!(balanceShare > 0 && balanceShare < 1)) {
      return invalid(`balance share is ${balanceShare}; it should be between 0 and 1, such as 0.49.`);
    }
    blank(draft, { balanceShare });
    return undefined;
  },
  "most tip trim": line("most tip trim", (draft, [tip]) => blank(draft, { limits: { tip } })),
  "most butt trim": line("most butt trim", (draft, [butt]) => blank(draft, { limits: { butt } })),
  "least cut length": line("least cut length", (draft, [cutLength]) =>
    blank(draft, { limits: { cutLength } }),
  ),
  bin: line("bin", (draft, weights) => {
    draft.bin = [...(draft.bin ?? []), ...weights];
  }),
  tip: (draft, [kind = ""]) => {
    const tipKind = kind.trim().toLowerCase();
    if (tipKind !== "parallel" && tipKind !== "taper") {
      return invalid(`tip is "${kind.trim()}"; it should be parallel or taper.`);
    }
    blank(draft, { tipKind });
    return undefined;
  },
};
