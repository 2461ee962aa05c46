/**
 * Units of a worksheet in the SI: a foot is 0.3048 m and a mile 5,280 ft by the international agreement of 1959, a
 * hectopascal 100 Pa. The inch of mercury is the units library's, of mercury at 0 degrees C under standard gravity. Written
 * out, for the library is too heavy for the script of the functions; a test holds them against it.
 */
export const UNIT_SIZES = {
  /** m/s */
  mph: 0.44704,
  /** m */
  yd: 0.9144,
  /** m */
  ft: 0.3048,
  /** Pa */
  inHg: 3386.3881472,
  /** Pa */
  hPa: 100,
} as const;
