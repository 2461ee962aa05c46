import { words } from "./words.ts";

/**
 * The words that label a row of sums rather than a shot, in English, German, French and Spanish (common practice,
 * no source). Without gaps and accents.
 */
const LABELS = new Set(
  `average averages avg avgs ave mean means median std stdev stddev stddeviation sd stdv stdevs standarddeviation
  deviation dev variance var cv range spread min max minimum maximum count sum total totals subtotal
  grandtotal summary consistency coefficientofvariation plusminus
  durchschnitt durchschnitte mittel mittelwert mittelwerte mw schnitt standardabweichung stdabw stabw stabweichung
  abweichung streuung spannweite summe gesamt anzahl varianz zusammenfassung
  moyenne moyennes moy ecarttype etendue mediane somme nombre ecart totaux
  promedio promedios media desviacion desviacionestandar desviaciontipica desvest desvestandar mediana
  minimo maximo suma rango recuento`.split(/\s+/),
);

/** Words that may stand beside a label and change nothing: "Session average", "Avg of all shots". */
const BESIDE = new Set(
  `of all the shot shots session group set overall club build kept per for and n number count
  aller schlage alle gesamt de des tous coups los golpes todos`.split(/\s+/),
);

const SIGNS = /^(ø|⌀|σ|μ|x̄|±|\+\/-)[\s:]*$/i;

/** A name that a spreadsheet would take for a formula, such as a build called "@SUM(1,1)", is no label. */
const FORMULA = /^\s*[=@]/;

const FIGURE_BEHIND = /(\s*[:=]\s*-?\d[\d.,' ]*|\s-?\d+[.,]\d+)\s*\S{0,7}\s*$/;

/**
 * Whether a cell labels a row of sums. The whole cell must be a summary word, perhaps with a count, words in
 * brackets, a figure behind a colon, or the name of a build beside it; a build called "Mean Machine" is none.
 *
 * @example isSummaryLabel("Average (10 shots)", []) // true
 * @example isSummaryLabel("Avg - 95 g mid", ["95 g mid"]) // true
 */
export function isSummaryLabel(cell: string, builds: Iterable<string>): boolean {
  if (cell.length > 120 || FORMULA.test(cell)) return false;
  if (SIGNS.test(cell.trim())) return true;
  const bare = cell.replace(/[([{][^()[\]{}]*[)\]}]/g, " ").replace(FIGURE_BEHIND, "");
  const found = words(bare);
  if (isLabel(found)) return true;
  const whole = found.join(" ");
  for (const build of builds) {
    const name = words(build).join(" ");
    if (name === "") continue;
    if (whole.startsWith(`${name} `) && isLabel(found.slice(words(build).length))) return true;
    if (whole.endsWith(` ${name}`) && isLabel(found.slice(0, -words(build).length))) return true;
  }
  return false;
}

/** A number counts only beside a word such as "shots": "Average 10 shots" is a label, a build "Max 95" is none. */
function isLabel(found: readonly string[]): boolean {
  const counted = found.some((word) => BESIDE.has(word));
  const kept = found.filter((word) => !BESIDE.has(word) && !(counted && /^\d+$/.test(word)));
  if (kept.length === 0) return found.length === 1 && LABELS.has(found[0]!);
  return kept.length <= 3 && LABELS.has(kept.join(""));
}
