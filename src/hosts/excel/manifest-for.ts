import { invalid, type Outcome } from "../../outcome/problem.ts";
import { ICON_SETS, type IconSet } from "./icons/icon-sets.ts";

/** Where the manifest in the source says the add-in is served from. */
export const DEVELOPMENT_ADDRESS = "https://localhost:3000";

/** The manifest with another set of icons, for a shop whose spreadsheets all have one theme. */
export function withIcons(manifest: string, set: IconSet): string {
  return manifest.replace(/(\/assets\/[a-z]+-\d+)\.png/g, `$1${ICON_SETS[set].ending}.png`);
}

/**
 * The manifest with the development address replaced by a shop's own, such as `https://clubs.example/fitting`. The
 * identifier stays, by which a spreadsheet tells add-ins apart, so it takes both for the same one. A problem where
 * the address is no plain https address, or where the manifest does not hold what is to be replaced.
 */
export function manifestFor(address: string, xml: string): Outcome<string> {
  const own = address.replace(/\/+$/, "");
  if (!URL.canParse(own) || !/^https:\/\/[^\s?#&<>"']+$/.test(own)) {
    return invalid(
      `The address "${address}" cannot be served from: it must begin with https:// and hold no ? or #, as in https://clubs.example/fitting.`,
    );
  }
  const parts = xml.split(DEVELOPMENT_ADDRESS);
  if (parts.length === 1)
    return invalid(`The manifest does not name ${DEVELOPMENT_ADDRESS}, so nothing was replaced.`);
  return parts.join(own);
}
