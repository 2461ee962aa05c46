import type { ShotTable } from "../shots/shot-table.ts";

/** Where a build's shots stand in the columns of a table. */
export interface BuildPlaces {
  /** All its shots, kept or not. */
  readonly shots: number;
  /** Places of the kept ones, counted from 0, in the order they were hit. */
  readonly kept: readonly number[];
}

/**
 * The shots of each build, by its name. A table never changes, so one walk over it serves every build and metric:
 * asking each shot for its build again and again is what summaries of long tables spent their time on.
 */
export function buildPlaces(table: ShotTable): ReadonlyMap<string, BuildPlaces> {
  const known = placesOf.get(table);
  if (known) return known;
  const places = new Map<string, { shots: number; kept: number[] }>();
  for (let shot = 0; shot < table.size; shot++) {
    const name = table.build[shot]!;
    let build = places.get(name);
    if (!build) {
      build = { shots: 0, kept: [] };
      places.set(name, build);
    }
    build.shots++;
    if (table.keep[shot]) build.kept.push(shot);
  }
  placesOf.set(table, places);
  return places;
}

const placesOf = new WeakMap<ShotTable, ReadonlyMap<string, BuildPlaces>>();
