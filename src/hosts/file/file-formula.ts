/**
 * A formula as a file must hold it. Functions newer than the file format's first edition (2007) stand there behind
 * the prefix `_xlfn.`; without it a spreadsheet answers #NAME? until each cell is typed again.
 *
 * Source: [MS-XLSX] 2.2.3, Functions, the table of future functions, as far as it holds functions of spreadsheets
 * of 2010 and 2013 and the later ones that work on single values. Functions that spill are left out: they need
 * more than a prefix.
 *
 * @example fileFormula("T.INV.2T(0.05,STDEV.S(A1:A9))") // "_xlfn.T.INV.2T(0.05,_xlfn.STDEV.S(A1:A9))"
 */
export function fileFormula(formula: string): string {
  return formula.replace(TOKENS, (token: string, name: string | undefined) =>
    name !== undefined && PREFIXED.has(name.toUpperCase()) ? `_xlfn.${token}` : token,
  );
}

/** The formula that `fileFormula` was given. */
export function withoutPrefixes(formula: string): string {
  return formula.replace(/_xlfn\.(?=[A-Za-z])/g, "");
}

/** Quoted text and quoted sheet names come first, so that a function's name inside them is left alone. */
const TOKENS = /"(?:[^"]|"")*"|'(?:[^']|'')*'|(?<![\w.\\$!:])([A-Za-z][A-Za-z0-9.]*)(?=\()/g;

const PREFIXED: ReadonlySet<string> = new Set(
  `ACOT ACOTH AGGREGATE ARABIC BASE BETA.DIST BETA.INV BINOM.DIST BINOM.DIST.RANGE BINOM.INV BITAND BITLSHIFT BITOR
  BITRSHIFT BITXOR CEILING.MATH CEILING.PRECISE CHISQ.DIST CHISQ.DIST.RT CHISQ.INV CHISQ.INV.RT CHISQ.TEST COMBINA
  CONCAT CONFIDENCE.NORM CONFIDENCE.T COT COTH COVARIANCE.P COVARIANCE.S CSC CSCH DAYS DECIMAL ERF.PRECISE
  ERFC.PRECISE EXPON.DIST F.DIST F.DIST.RT F.INV F.INV.RT F.TEST FLOOR.MATH FLOOR.PRECISE FORECAST.LINEAR
  FORMULATEXT GAMMA GAMMA.DIST GAMMA.INV GAMMALN.PRECISE GAUSS HYPGEOM.DIST IFNA IFS ISFORMULA ISOWEEKNUM
  LOGNORM.DIST LOGNORM.INV MAXIFS MINIFS MODE.SNGL NEGBINOM.DIST NORM.DIST NORM.INV NORM.S.DIST NORM.S.INV
  NUMBERVALUE PDURATION PERCENTILE.EXC PERCENTILE.INC PERCENTRANK.EXC PERCENTRANK.INC PERMUTATIONA PHI POISSON.DIST
  QUARTILE.EXC QUARTILE.INC RANK.AVG RANK.EQ RRI SEC SECH SHEET SHEETS SKEW.P STDEV.P STDEV.S SWITCH T.DIST
  T.DIST.2T T.DIST.RT T.INV T.INV.2T T.TEST TEXTJOIN UNICHAR UNICODE VAR.P VAR.S WEIBULL.DIST XLOOKUP XMATCH XOR
  Z.TEST`.split(/\s+/),
);
