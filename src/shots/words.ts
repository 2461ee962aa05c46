/**
 * The words of a heading or label: lower case, accents off, abbreviations and CamelCase opened up, so that
 * "Clubhead Spd.", "club_head-speed" and "ClubHeadSpeed" come to the same words.
 *
 * @example words("Dyn. Loft") // ["dynamic", "loft"]
 */
export function words(text: string): string[] {
  return text
    .slice(0, 200)
    .replace(/([a-z])([A-Z])/g, "$1 $2")
    .replace(/#/g, " number ")
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .replace(/ß/g, "ss")
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== "")
    .map((word) => ABBREVIATIONS.get(word) ?? word);
}

/** The same as one string without gaps: what headings and labels are looked up by. */
export function squash(text: string): string {
  return words(text).join("");
}

/** Common practice, no source. */
const ABBREVIATIONS = new Map(
  Object.entries({
    ang: "angle",
    angl: "angle",
    att: "attack",
    attk: "attack",
    clb: "club",
    desc: "descent",
    dir: "direction",
    dist: "distance",
    dyn: "dynamic",
    eff: "effective",
    fact: "factor",
    hd: "head",
    hgt: "height",
    horiz: "horizontal",
    horz: "horizontal",
    hor: "horizontal",
    ht: "height",
    imp: "impact",
    land: "landing",
    lat: "lateral",
    no: "number",
    nr: "number",
    num: "number",
    spd: "speed",
    tot: "total",
    vel: "speed",
    velocity: "speed",
    velo: "speed",
    vert: "vertical",
    ver: "vertical",
  }),
);
