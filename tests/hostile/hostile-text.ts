import type { Draw } from "./draw.ts";

/** Stands in every name that tries to become a formula or a script, so that a check can look for it. */
export const MARKER = "EVIL";

/** Names of things that every object has, or that a careless look-up would find. */
const PROTOTYPE = [
  "__proto__",
  "constructor",
  "prototype",
  "toString",
  "valueOf",
  "hasOwnProperty",
  "length",
  "__defineGetter__",
  "then",
];

/** Texts that a spreadsheet, a page or a pattern could take for something else. */
const INJECTION = [
  `=${MARKER}()`,
  `=HYPERLINK("http://${MARKER}.invalid","x")`,
  `+${MARKER}|' /C calc'!A0`,
  `-2+3+${MARKER}()`,
  `@SUM(${MARKER}())`,
  `<script>${MARKER}</script>`,
  `"><img src=x onerror=${MARKER}()>`,
  `javascript:${MARKER}()`,
  `']&${MARKER}()&['`,
  `"&${MARKER}()&"`,
  `\${${MARKER}}{{${MARKER}}}`,
  `]]>${MARKER}<![CDATA[`,
  `_x000D_${MARKER}&amp;&#0;`,
  `${MARKER}*?~[\\]/:`,
];

const CONTROL = [
  "\u0000",
  "\u0001\u0002",
  "\u0007",
  "\u000b",
  "\u001b[31m",
  "\u007f",
  "\u0085",
  "\ufffe",
  "\uffff",
];
const BIDI = [
  "\u202e95 g\u202c",
  "\u2067mid\u2069",
  "\u200f",
  "عصا ٩٥",
  "מקל 95",
  "\u061c",
  "\u200bzero\u200d",
];
const LETTERS = [
  "95 g ürück",
  "95 g 中鋒",
  "👩🏽‍🦰 105 g",
  "e\u0301\u0301\u0301\u0301",
  "ﬁ ﬂ Ⅷ",
  "İıẞ",
  "\ud83d",
  "\udc00x",
];
const PLAIN = [
  "95 g mid",
  "105 g low",
  "Average",
  "Build: A",
  "total",
  "Driver",
  "A B",
  "x".repeat(40),
  "0",
  "-",
  "n/a",
];

/** A name of a build, a heading or a remark, as nobody should paste it. */
export function hostileText(draw: Draw): string {
  const text = draw.one(draw.one([PROTOTYPE, INJECTION, CONTROL, BIDI, LETTERS, PLAIN, PLAIN]));
  return draw.once(6) ? text + draw.one(draw.one([PROTOTYPE, INJECTION, CONTROL, BIDI, LETTERS])) : text;
}

/** Figures in the habits of many places, and what only looks like one. */
export function hostileFigure(draw: Draw): string {
  const whole = draw.below(draw.one([10, 200, 9000]));
  const decimals = draw.below(100);
  return draw.one([
    () => `${whole}.${decimals}`,
    () => `${whole}.${decimals}`,
    () => `${whole},${decimals}`,
    () => `${whole}`,
    () => `-${whole}.${decimals}`,
    () => `${whole}.${decimals} ${draw.one(["yd", "m", "mph", "km/h", "°", "rpm", "L", "R", "quux"])}`,
    () => `${draw.one(["L", "R", "<", "~", "$", "−", "–"])}${whole}`,
    () => `${whole}'${100 + draw.below(900)}.${decimals}`,
    () => `${whole}\u202f${100 + draw.below(900)},${decimals}`,
    () => `1.${whole}.${100 + draw.below(900)},5`,
    () => `(${whole})`,
    () =>
      draw.one([
        "",
        " ",
        "-",
        "--",
        "n/a",
        "NaN",
        "Infinity",
        "-Infinity",
        "1e309",
        "1e5",
        "0x1F",
        "#N/A",
        "#REF!",
        "٣٫٥",
        "１２",
      ]),
    () => "9".repeat(1 + draw.below(400)),
    () => `0.${"0".repeat(draw.below(330))}1`,
    () => `${"-".repeat(draw.below(30))}${whole}`,
    () => hostileText(draw),
  ])();
}

/** Decimal mark, mark between thousands and digits, as written in one place or another. */
const PLACES = [
  [".", ",", "0"],
  [",", ".", "0"],
  [",", "\u202f", "0"],
  [",", "\u00a0", "0"],
  [".", "'", "0"],
  [".", "\u2019", "0"],
  [",", " ", "0"],
  ["\u066b", "\u066c", "\u0660"],
  [".", ",", "\u06f0"],
  [".", ",", "\u0966"],
  ["\uff0e", "\uff0c", "\uff10"],
] as const;

/** Figures as one place writes all of them, signs and empty cells included; now and then one that is none. */
export function placeFigures(draw: Draw): () => string {
  const [decimal, thousands, nought] = draw.one(PLACES);
  const first = nought.codePointAt(0)!;
  const minus = draw.one(["-", "\u2212", "\u200e-", "-\u00a0"]);
  return () => {
    if (draw.once(20)) return hostileFigure(draw);
    const size = draw.one([10, 200, 9000]);
    const whole = draw.below(size).toLocaleString("en-GB").replace(",", thousands);
    const text = `${draw.once(4) ? minus : ""}${whole}${draw.once(3) ? "" : decimal + draw.below(100)}`;
    return text.replace(/[0-9]/g, (digit) => String.fromCodePoint(first + Number(digit)));
  };
}
