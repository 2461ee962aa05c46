import { mean } from "simple-statistics";
import { isProblem, type Outcome } from "../outcome/problem.ts";
import { buildGroup, missPattern } from "./build-group.ts";
import { buildValues } from "./build-values.ts";
import { CLEAR, type Decision, LEANING } from "./decide.ts";
import { driftForPlayer } from "./order-drift.ts";
import { shownFigure } from "./plain-sentences.ts";
import { type PlayerChange, playerChanges } from "./player-changes.ts";
import type { Goal, Session } from "./session.ts";
import { listWords, outOfHundred, verdictWords } from "./verdict-words.ts";
import { windowReason } from "./window-reason.ts";

/** What a player takes home, in words that need no fitter beside them. */
export interface PlayerWords {
  readonly tried: readonly string[];
  /** Which build; one sentence. */
  readonly suggestion: string;
  readonly why: readonly string[];
  readonly sure: readonly string[];
  /** The two builds that `changes` stand between; null while there is no suggestion. */
  readonly between: { readonly from: string; readonly to: string } | null;
  readonly changes: readonly PlayerChange[];
  /** Every word on the page that a player may not have met. */
  readonly meanings: readonly string[];
}

const WANTED: Readonly<Record<Goal, string>> = {
  carry: "the longest carry, that is how far the ball flies before it lands",
  tight: "the tightest group, that is shots that land close together",
  window: "a flight that starts, climbs, spins and comes down as suits the club",
  overall: "distance, line and flight together",
};

const BRIEFLY: Readonly<Record<Goal, string>> = {
  carry: "a long carry",
  tight: "a tight group",
  window: "flight",
  overall: "distance, line and flight together",
};

/** Says a session to the player: what was tried, what we suggest and why, how sure that is, and what changed. */
export function playerWords(session: Session, decision: Outcome<Decision>): PlayerWords {
  const tried = triedWords(session);
  if (isProblem(decision)) {
    const sure = ["Nothing is sure yet."];
    return {
      ...{ tried, suggestion: "No suggestion yet.", why: [decision.message], sure },
      ...{ between: null, changes: [], meanings: meanings(session) },
    };
  }
  const said = verdictWords(session, decision);
  const between = { from: heldAgainst(session, decision), to: decision.best.build };
  return {
    tried,
    suggestion: suggestion(decision),
    why: [...whyWords(session, decision, between), ...said.costs],
    sure: sureWords(session, decision, said.next),
    between,
    changes: playerChanges(session, between.from, between.to),
    meanings: meanings(session),
  };
}

/** Two that cannot be told apart are shown beside each other; else the choice beside what it is to replace. */
function heldAgainst({ baseline }: Session, { verdict, best, runnerUp }: Decision): string {
  return verdict === "too close to call" || baseline === best.build ? runnerUp.build : baseline;
}

function triedWords({ table, builds, baseline, goal }: Session): string[] {
  const counted = (name: string) => table.build.filter((build, i) => build === name && table.keep[i]).length;
  const all = builds.reduce((sum, { name }) => sum + counted(name), 0);
  const aside = table.size - all;
  const shots =
    aside === 0 ? `All ${all} count` : `${all} count; ${aside} ${aside === 1 ? "was" : "were"} set aside`;
  const others = builds.length > 1 ? ` ${baseline} is the one the others have to beat.` : "";
  return [
    `You hit ${table.size} balls with ${builds.length === 1 ? "one build" : `${builds.length} builds`}. ${shots}: ${listWords(builds.map(({ name }) => `${counted(name)} with ${name}`))}.${others}`,
    `What counted was ${WANTED[goal]}.`,
  ];
}

function suggestion({ verdict, best, runnerUp }: Decision): string {
  if (verdict === "clear") return `We suggest ${best.build}.`;
  if (verdict === "leaning") return `We lean towards ${best.build}; it is not proved yet.`;
  return `These shots cannot choose between ${best.build} and ${runnerUp.build}.`;
}

function whyWords(
  session: Session,
  decision: Decision,
  { from, to }: { readonly from: string; readonly to: string },
): string[] {
  const { verdict, chances, goal } = decision;
  const open = verdict === "too close to call";
  const lines = open
    ? [`${to} did a touch better for ${BRIEFLY[goal]}, but by too little to choose by.`]
    : [`Of the ${chances.builds.length} builds it did best for ${BRIEFLY[goal]}.`];
  const carries = [to, from].map((name) => buildValues(session.table, name, "carry"));
  if (carries.every((values) => values.length > 0)) {
    const [mine, theirs] = carries.map((values) => shownFigure(mean(values), "carry", session.units));
    lines.push(
      mine === theirs
        ? `With ${to} the ball flew ${mine} on average before it landed, and as far with ${from}.`
        : `With ${to} the ball flew ${mine} on average before it landed, against ${theirs} with ${from}.`,
    );
  }
  const groups = [to, from].map((name) => buildGroup(session, name));
  if (groups[0]?.halfRadius != null && groups[1]?.halfRadius != null) {
    const [mine, theirs] = groups.map((group) => shownFigure(group!.halfRadius!, "offline", session.units));
    lines.push(
      `Half the shots with ${to} landed within ${mine} of the middle of their group, ${mine === theirs ? "the same as" : `against ${theirs}`} with ${from}.`,
      `Where shots with ${to} came down: ${missPattern(groups[0])}.`,
    );
  }
  if (goal === "window" || goal === "overall") lines.push(...windowReason(session, from, to));
  return lines;
}

function sureWords(session: Session, decision: Decision, next: string): string[] {
  const { verdict, best, chances } = decision;
  const first = outOfHundred(best.chance);
  const others = chances.builds.filter((one) => one !== best).sort((a, b) => b.chance - a.chance);
  const rest = listWords(
    others.map(({ build, chance }, i) => `${build} ${i === 0 ? "has " : ""}${outOfHundred(chance)}`),
  );
  const counts = chances.builds.map(({ n }) => n);
  const [fewest, most] = [Math.min(...counts), Math.max(...counts)];
  const each = fewest === most ? String(fewest) : `${fewest} to ${most}`;
  return [
    `${SAID[verdict]} As far as these shots can tell, ${best.build} has ${first} chances in 100 of being the best of the ${chances.builds.length}; ${rest}.`,
    `This rests on ${each} ${most === 1 ? "shot" : "shots"} with each build on one day. Another day may look a little different.`,
    next,
    ...driftForPlayer(session),
  ];
}

const SAID: Readonly<Record<Decision["verdict"], string>> = {
  clear: "Clear.",
  leaning: "Leaning, not clear.",
  "too close to call": "Too close to call.",
};

function meanings({ leftHanded }: Session): string[] {
  const sides = leftHanded
    ? "Right and left are as you see them looking from the ball to the target. For you as a left-handed player, right is the side you stand on."
    : "Right and left are as you see them looking from the ball to the target.";
  return [
    "Build: one way of putting the club together, named here by its shaft.",
    "Carry: how far the ball flies before it lands. Group: where all the shots with one build came down.",
    `Chances in 100: if a hundred players were told the same on shots like these, for about so many it would be right. From ${100 * CLEAR} we say clear, from ${100 * LEANING} leaning, below that too close to call.`,
    sides,
  ];
}
