import { tsImport } from "tsx/esm/api";

const { QUANTITY_SIZES } = await tsImport("./quantity-sizes.ts", import.meta.url);

/** The module of the sizes of units as numbers, worked out now, so that no script has to carry the units library. */
export const QUANTITY_SIZES_TEXT = `export const QUANTITY_SIZES = ${JSON.stringify(QUANTITY_SIZES)}`;

/** The same as a plugin of the bundler of the add-in. */
export function quantitySizes() {
  return {
    name: "sizes of units",
    load: (id) => (/[\\/]quantity-sizes\.ts$/.test(id) ? QUANTITY_SIZES_TEXT : null),
  };
}
