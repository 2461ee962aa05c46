import Qty from "js-quantities";
import { UNIT_NAMES } from "./unit-names.ts";

/**
 * The size of each quantity of the unit table in the base units of the SI, as the units library has it. The library
 * reads any expression of units, which nobody types here: the build works this table out once, and the scripts carry
 * the numbers in place of the 9 KB of library (see `src/hosts/excel/bundle-addin.js`).
 */
export const QUANTITY_SIZES: Readonly<Record<string, number>> = Object.fromEntries(
  UNIT_NAMES.map(({ quantity }) => [quantity, Qty(1, quantity).baseScalar]),
);
