/**
 * Points of a swingweight code in a cell as a native formula, without our functions and for every spreadsheet since
 * 2007: 32.3 for D2.3. Blanks, small letters and a decimal comma are fine; what is no code gives an error. The
 * digits behind the point are read as whole digits, since VALUE reads "2.3" by the place's own decimal mark.
 */
export function pointsFormula(cell: string): string {
  const code = `SUBSTITUTE(UPPER(TRIM(${cell}))," ","")`;
  const letter = `(FIND(LEFT(${code},1),"ABCDEFG")-1)*10`;
  const digit = `FIND(MID(${code},2,1),"0123456789")-1`;
  const mark = `0*FIND(MID(${code}&".",3,1),".,")`;
  const decimals = `IF(LEN(${code})>3,VALUE(MID(${code},4,9))/10^(LEN(${code})-3),0)`;
  return `IF(LEN(${code})<2,NA(),${letter}+${digit}+${mark}+${decimals})`;
}
