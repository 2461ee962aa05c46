import type { AirFacts } from "../fitting/session-air.ts";
import type { UnitSet } from "../shots/unit-set.ts";
import { airScales } from "./air-scales.ts";
import { NumberField } from "./fields.tsx";
import type { Figures } from "./figures.ts";

interface AirFieldsProps {
  readonly air: AirFacts;
  readonly units: UnitSet;
  readonly figures: Figures;
  readonly tell: (air: AirFacts) => void;
}

/** The air it was hit in: any of four readings, none of them needed. */
export function AirFields({ air, units, figures, tell }: AirFieldsProps) {
  return (
    <>
      <p class="quiet">
        Whatever is known. Pressure as read at the place itself, not reduced to sea level; where it is given,
        altitude is not needed. Carries are then also told in standard air.
      </p>
      <div class="fields">
        {airScales(units).map(({ key, label, unit, least, most, shown, kept }) => (
          <NumberField
            key={`${key} ${units}`}
            label={`${label}, ${unit}`}
            value={air[key] === undefined ? undefined : shown(air[key])}
            least={Math.ceil(shown(least))}
            most={Math.floor(shown(most))}
            figures={figures}
            onChange={(value) => {
              const { [key]: _, ...others } = air;
              tell(value === undefined ? others : { ...others, [key]: kept(value) });
            }}
          />
        ))}
      </div>
    </>
  );
}
