/** The day at this place as `yyyy-mm-dd`, not the day in Greenwich. */
export function today(now = new Date()): string {
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** Day and time at this place as `yyyy-mm-dd hh:mm`. */
export function moment(now = new Date()): string {
  return `${today(now)} ${two(now.getHours())}:${two(now.getMinutes())}`;
}

function two(n: number): string {
  return String(n).padStart(2, "0");
}
