/** What a unit measures. Only units of one dimension turn into each other. */
export type Dimension = "length" | "speed" | "angle" | "rate" | "time";

/** A unit as this project names it, and the words the units library is asked with. */
export interface UnitName {
  readonly name: string;
  readonly dimension: Dimension;
  /** In the spelling of the units library. */
  readonly quantity: string;
  /** How many of `quantity` one of this unit is; for units the library does not have. */
  readonly times: number;
  /** Other spellings, lower case, without spaces and without full stops. */
  readonly spellings: readonly string[];
}

const unit = (
  name: string,
  dimension: Dimension,
  quantity: string,
  spellings: string,
  times = 1,
): UnitName => ({ name, dimension, quantity, times, spellings: spellings.split(" ") });

/**
 * The units that shot tables come in, with the spellings met in English, German, French and Spanish tables
 * (common practice, no source). Written with `km/h` rather than the library's `kph`, which it rounds.
 */
// biome-ignore format: a table reads best with a line a row
export const UNIT_NAMES: readonly UnitName[] = [
  unit("yd", "length", "yd", "yd yds yard yards y yarda yardas verge verges"),
  unit("m", "length", "m", "m mtr mtrs meter meters metre metres mètre mètres metro metros"),
  unit("ft", "length", "ft", "ft foot feet fuß fuss pie pies pied pieds ' ′ ’"),
  unit("in", "length", "in", "in inch inches zoll pouce pouces pulgada pulgadas \" ″ ”"),
  unit("cm", "length", "cm", "cm centimeter centimeters centimetre centimetres"),
  unit("mm", "length", "mm", "mm millimeter millimeters millimetre millimetres"),
  unit("mph", "speed", "mph", "mph mi/h mileshour milesperhour miles/h miles/hour"),
  unit("km/h", "speed", "km/h", "km/h kmh kph kmph km/hr kmhr km/std km/hour kmperhour"),
  unit("m/s", "speed", "m/s", "m/s ms mps m/sec m/sek msec ms-1 m·s-1 meterspersecond metrespersecond"),
  unit("ft/s", "speed", "ft/s", "ft/s fps ft/sec feetpersecond"),
  unit("degrees", "angle", "deg", "degrees degree deg degs ° º grad grado grados degré degrés"),
  unit("rpm", "rate", "rpm", "rpm r/min rev/min revs/min u/min umin 1/min min-1 tr/min trmin revsperminute"),
  unit("krpm", "rate", "rpm", "krpm 1000rpm 1,000rpm x1000rpm rpmx1000 rpm/1000 1000u/min", 1000),
  unit("s", "time", "s", "s sec secs second seconds sek sekunden seconde secondes segundo segundos"),
];
