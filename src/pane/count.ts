/** "1 shot", "2 shots", "no shots". */
export function count(n: number, thing: string, things = `${thing}s`): string {
  return `${n === 0 ? "no" : n} ${n === 1 ? thing : things}`;
}
