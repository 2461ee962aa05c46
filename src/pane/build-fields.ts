import type { BuildSpec } from "../fitting/build-spec.ts";
import type { UnitSet } from "../shots/unit-set.ts";
import type { Figures } from "./figures.ts";

/** What can be told of a build. Bounds are common practice, no source; they only catch slips of the finger. */
export type BuildField =
  | {
      readonly kind: "text";
      readonly key: "flex" | "profile" | "head" | "swingweight";
      readonly label: string;
    }
  | {
      readonly kind: "number";
      readonly key: "weight" | "length" | "loft";
      readonly label: string;
      readonly least: number;
      readonly most: number;
      readonly unit: (units: UnitSet) => string;
      /** By what the kept figure is multiplied to be shown. */
      readonly times: (units: UnitSet) => number;
    };

const one = () => 1;

export const BUILD_FIELDS: readonly BuildField[] = [
  { kind: "number", key: "weight", label: "Shaft weight", least: 30, most: 160, unit: () => "g", times: one },
  {
    kind: "number",
    key: "length",
    label: "Length",
    least: 28,
    most: 50,
    unit: (units) => (units === "us" ? "in" : "cm"),
    // An inch is 2.54 cm by definition.
    times: (units) => (units === "us" ? 1 : 2.54),
  },
  { kind: "text", key: "flex", label: "Flex" },
  { kind: "text", key: "profile", label: "Profile" },
  { kind: "text", key: "head", label: "Head" },
  { kind: "number", key: "loft", label: "Loft", least: 5, most: 70, unit: () => "\u00b0", times: one },
  { kind: "text", key: "swingweight", label: "Swingweight" },
];

/** What is known of a build, in one line: "95 g, 36.75 in, stiff, D2". */
export function describeBuild(spec: BuildSpec, units: UnitSet, figures: Figures): string {
  return BUILD_FIELDS.flatMap((field) => {
    const value = spec[field.key];
    if (value === undefined || value === "") return [];
    if (field.kind === "text") return [String(value)];
    return [`${figures.plain(Number(value) * field.times(units), 2)} ${field.unit(units)}`];
  }).join(", ");
}
