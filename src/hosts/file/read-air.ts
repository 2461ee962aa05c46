import { type AirFacts, sessionAir } from "../../fitting/session-air.ts";
import { invalid, isProblem, type Outcome } from "../../outcome/problem.ts";

const KEYS: readonly string[] = [
  "altitude",
  "temperature",
  "pressure",
  "humidity",
] satisfies (keyof AirFacts)[];

/**
 * The air as the command line states it: metres above the sea, degrees C, hPa at the place itself, per cent; any of them.
 *
 * @example readAir("altitude=1600,temperature=25") // { altitude: 1600, temperature: 25 }
 */
export function readAir(text: string): Outcome<AirFacts> {
  const facts: Record<string, number> = {};
  for (const part of text.split(",")) {
    const [key, figure, ...rest] = part.split("=").map((word) => word.trim());
    const value = figure ? Number(figure) : Number.NaN;
    if (!KEYS.includes(key ?? "") || rest.length > 0 || !Number.isFinite(value)) {
      return invalid(
        `--air has "${part}"; it should be altitude=1600, temperature=25, pressure=830 or humidity=40.`,
      );
    }
    facts[key!] = value;
  }
  const air = sessionAir(facts);
  return isProblem(air) ? invalid(`--air: ${air.message}`) : facts;
}
