/** The part of js-quantities that is used here; the package brings no types of its own. */
declare module "js-quantities" {
  interface Quantity {
    /** The size of the quantity in the base units of the SI. */
    readonly baseScalar: number;
  }
  const Qty: (scalar: number, unit: string) => Quantity;
  export default Qty;
}
