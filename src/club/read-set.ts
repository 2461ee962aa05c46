import Papa from "papaparse";
import { invalid, isProblem, type Outcome } from "../outcome/problem.ts";
import { centimetresPerInch } from "./exact-units.ts";
import { onlyOnce } from "./only-once.ts";
import { scaleLengths } from "./scale-lengths.ts";
import { setFileClub, setFileColumns } from "./set-file-columns.ts";
import { type SetFileDraft, setFileLines } from "./set-file-lines.ts";
import type { SetClub, SetRequest } from "./set-request.ts";
import { strayReference } from "./stray-reference.ts";
import { unknownLine } from "./unknown-line.ts";

/**
 * Reads a set file: a small table a shop keeps for a set, separated by semicolons, tabs, commas or bars. Grams,
 * inches, degrees. Lines about the whole set come first, in any order; then a row of headings that begins with
 * `club`; then a row a club, the longest first. Blank lines and lines that begin with `#` are left out, cells may be
 * blank, and inches may be written `38 1/2`. A line of one kind stands once, but for `bin` and tolerances of several
 * figures.
 *
 * ```text
 * set; Harrow Lane irons
 * lengths; cm                         all lengths below in centimetres; inches where this line is left out
 * target; swingweight; D2; 0.5; 7     code, points a club shorter, from which club (both optional)
 * target; inertia; 2750               instead: one moment of inertia, kg cm2
 * target; inertia of; 7; D2           instead: the moment of inertia of the 7 built to D2
 * shafts; 108; 3; 7                   raw weight, grams a club shorter, from which club (both optional)
 * shafts; list; 102; 105; 108         instead: a weight a club
 * grip; 50; 10.63; 5.3                weight, length, balance point from the butt (both optional)
 * ferrule; 2
 * epoxy; 2
 * tip; parallel                       or taper
 * tip trims; 0.5; 0.5; 6              inches off, inches more a club shorter, at which club (both optional)
 * balance share; 0.49                 the raw shaft's balance point as a share of its length from the butt
 * most tip trim; 3                    the maker's limits: most tip trim, most butt trim, least cut length
 * bend limit; 2
 * tape; 1; 6                          lead tape for heads too light: inches above the club's end, most grams
 * tolerance; length; 0.0625           of length, loft, lie, swingweight, head (how much too heavy), shaft, total, frequency
 * bin; 107.2; 108.9; 110.4            measured raw shafts, to sort; as many lines as it takes
 * club; length; loft; lie; head; raw length; tip trim
 * 7; 37; 33; 62; 268; 41; 1
 * 8; 36.5; 37; 62.5; 275; 41; 1.5
 * ```
 *
 * Columns: club, length, loft, lie, swingweight, head, head loft, head lie, bounce, shaft, raw length, tip trim,
 * bore, frequency, carry, putter; see `SetClub`. A problem names the line. `target` may be left out where every club has its
 * own swingweight, `shafts` where every club has its own shaft weight; `grip` may not.
 */
export function readSetFile(text: string): Outcome<SetRequest> {
  const plain = text.replace(/^\uFEFF/, "");
  const delimiter = /^[ \t]*"?club"?[ ]*([;,|\t])/im.exec(plain)?.[1];
  if (delimiter === undefined) {
    return invalid(
      'The set has no row of headings; it should have one that begins with "club", then a row a club.',
    );
  }
  const rows = Papa.parse<string[]>(plain, { delimiter, skipEmptyLines: false }).data;
  const draft: SetFileDraft = {};
  const clubs: SetClub[] = [];
  const twice = onlyOnce();
  let fields: ReturnType<typeof setFileColumns> | undefined;
  for (const [index, cells] of rows.entries()) {
    const first = cells[0]?.trim().toLowerCase() ?? "";
    if (first.startsWith("#") || cells.every((cell) => cell.trim() === "")) continue;
    const problem = (found: { message: string }) => invalid(`Line ${index + 1}: ${found.message}`);
    if (fields === undefined) {
      if (first === "club") {
        fields = setFileColumns(cells, draft.lengths);
        if (isProblem(fields)) return problem(fields);
        continue;
      }
      const take = Object.hasOwn(setFileLines, first) ? setFileLines[first] : undefined;
      if (!take) {
        return problem(unknownLine(cells, delimiter));
      }
      const kind = first === "tolerance" ? `${first} ${cells[1]?.trim()}` : first;
      const repeated = first === "bin" ? undefined : twice(`"${kind}"`, index + 1);
      if (repeated) return problem(repeated);
      const wrong = take(draft, cells.slice(1));
      if (wrong) return problem(wrong);
    } else if (Object.hasOwn(setFileLines, first)) {
      return problem(
        invalid(`"${first}" is about the whole set; it should stand above the row of headings.`),
      );
    } else if (!isProblem(fields)) {
      const club = setFileClub(fields, cells);
      if (isProblem(club)) return problem(club);
      const repeated = twice(`club "${club.club}"`, index + 1);
      if (repeated) return problem(repeated);
      clubs.push(club);
    }
  }
  return complete(draft, clubs);
}

/** The request, where nothing it needs was left out. */
function complete(draft: SetFileDraft, clubs: readonly SetClub[]): Outcome<SetRequest> {
  const first = clubs[0];
  if (!first)
    return invalid("The set has no clubs; a row for each should follow the headings, the longest first.");
  const { grip } = draft;
  if (!grip) return invalid('The set has no grip; a line like "grip; 50" should give its weight in grams.');
  const target =
    draft.target ??
    (first.swingweight !== undefined && clubs.every((club) => club.swingweight !== undefined)
      ? { kind: "swingweight" as const, code: first.swingweight }
      : invalid('The set has no target; a line like "target; swingweight; D2" should give it.'));
  if (isProblem(target)) return target;
  const own = clubs.flatMap((club) => (club.shaft === undefined ? [] : [club.shaft]));
  const shafts =
    draft.shafts ??
    (own.length === clubs.length
      ? { kind: "list" as const, weights: own }
      : invalid('The set has no shaft weights; a line like "shafts; 108; 3; 7" should give them.'));
  if (isProblem(shafts)) return shafts;
  const { lengths, ...rest } = draft;
  const request = { ...rest, clubs, grip, target, shafts };
  const astray = strayReference(request);
  if (astray) return astray;
  return lengths === "cm" ? scaleLengths(request, (cm) => cm / centimetresPerInch) : request;
}
