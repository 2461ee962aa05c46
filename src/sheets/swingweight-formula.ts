/**
 * Points of a swingweight code in a cell as a native formula, without our functions and for every spreadsheet since
 * 2007: 32.3 for D2.3. Blanks, small letters and a decimal comma are fine; what is no code gives an error. Digits
 * are looked up one by one, since VALUE reads "2.3" by the place's own decimal mark; two behind the mark count.
 */
export function pointsFormula(cell: string): string {
  const code = `SUBSTITUTE(UPPER(TRIM(${cell}))," ","")`;
  const digit = (place: number) => `(FIND(MID(${code},${place},1),"0123456789")-1)`;
  const letter = `(FIND(LEFT(${code},1),"ABCDEFG")-1)*10`;
  const mark = `0*FIND(MID(${code}&".",3,1),".,")`;
  const tenths = `IF(LEN(${code})>3,${digit(4)}/10,0)`;
  const hundredths = `IF(LEN(${code})>4,${digit(5)}/100,0)`;
  return `IF(LEN(${code})<2,NA(),${letter}+${digit(2)}+${mark}+${tenths}+${hundredths})`;
}
