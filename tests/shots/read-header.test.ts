import { describe, expect, it } from "vitest";
import { COLUMN_NAMES, type ColumnKey } from "../../src/shots/column-names.ts";
import { METRICS } from "../../src/shots/metrics.ts";
import { readHeader } from "../../src/shots/read-header.ts";

// Headings as the trade spells them: common practice, no source.
const HEADINGS: [string, ColumnKey, string][] = [
  ["Club Speed", "clubSpeed", ""],
  ["Clubhead Spd", "clubSpeed", ""],
  ["CHS (mph)", "clubSpeed", "mph"],
  ["Schlägerkopfgeschwindigkeit [km/h]", "clubSpeed", "km/h"],
  ["Ball Spd", "ballSpeed", ""],
  ["Ball Speed - mph", "ballSpeed", "mph"],
  ["BallSpeedMPH", "ballSpeed", "mph"],
  ["ball_speed_kph", "ballSpeed", "km/h"],
  ["Vel. cabeza (km/h)", "clubSpeed", "km/h"],
  ["Vit. balle [m/s]", "ballSpeed", "m/s"],
  ["Ballgeschw.", "ballSpeed", ""],
  ["Ángulo lanz. (°)", "launch", "degrees"],
  ["Schl.-Geschw.", "clubSpeed", ""],
  ["Giro", "spin", ""],
  ["Desv. (m)", "offline", "m"],
  ["Seitl. Abw.", "offline", ""],
  ["BS", "ballSpeed", ""],
  ["Ball [km/h]", "ballSpeed", "km/h"],
  ["Kopf (m/s)", "clubSpeed", "m/s"],
  ["Abflug", "launch", ""],
  ["Vitesse de balle (m/s)", "ballSpeed", "m/s"],
  ["Smash Factor", "smash", ""],
  ["VLA", "launch", ""],
  ["Launch V", "launch", ""],
  ["Launch Ang.", "launch", ""],
  ["Launch °", "launch", "degrees"],
  ["HLA", "direction", ""],
  ["Azimuth (deg)", "direction", "degrees"],
  ["Side Angle", "direction", ""],
  ["Side (deg)", "direction", "degrees"],
  ["Spin Rate", "spin", ""],
  ["Total Spin", "spin", ""],
  ["Spin 1000 rpm", "spin", "krpm"],
  ["Back Spin", "backspin", ""],
  ["Sidespin", "sidespin", ""],
  ["Axis tilt", "spinAxis", ""],
  ["Carry Dist", "carry", ""],
  ["Carry Flat", "carry", ""],
  ["Carry, yds", "carry", "yd"],
  ["Carry in metres", "carry", "m"],
  ["Carry (Flat) [m]", "carry", "m"],
  ["Distancia de carry (m)", "carry", "m"],
  ["Total", "total", ""],
  ["Gesamt", "total", ""],
  ["Side", "offline", ""],
  ["Side carry", "offline", ""],
  ["Lateral", "offline", ""],
  ["Dispersion", "offline", ""],
  ["Apex", "height", ""],
  ["Max Height (feet)", "height", "ft"],
  ["Descent angle", "landingAngle", ""],
  ["Land. Angle", "landingAngle", ""],
  ["Hang time", "flightTime", ""],
  ["Time (s)", "flightTime", "s"],
  ["Time", "time", ""],
  ["AoA", "attack", ""],
  ["Angle of attack", "attack", ""],
  ["Path", "path", ""],
  ["Face Angle", "face", ""],
  ["Face to target", "face", ""],
  ["Face to Path", "faceToPath", ""],
  ["FTP", "faceToPath", ""],
  ["Dyn. Loft", "dynamicLoft", ""],
  ["Delivered loft", "dynamicLoft", ""],
  ["Spin loft", "spinLoft", ""],
  ["Impact offset", "strikeX", ""],
  ["Face impact lateral (mm)", "strikeX", "mm"],
  ["Strike vertical (in)", "strikeY", "in"],
  ["Shaft", "build", ""],
  ["Config", "build", ""],
  ["Shot #", "shot", ""],
  ["Use", "keep", ""],
  ["Include?", "keep", ""],
  ["Club", "club", ""],
];

describe("readHeader(text)", () => {
  it.each(HEADINGS)("takes %j for %s in %j", (text, key, unit) => {
    expect(readHeader(text)).toMatchObject({ key, unit });
  });

  it("knows every metric by its own label and key", () => {
    for (const { key, label } of METRICS) {
      expect(readHeader(key).key).toBe(key);
      expect(readHeader(label).key).toBe(key);
    }
  });

  it("knows nothing by other words, not even by those every object has", () => {
    for (const text of ["", "Mood", "constructor", "__proto__", "toString", "Avg Carry", "(yd)", "12"]) {
      expect(readHeader(text).key).toBeNull();
    }
  });

  it("sees whether a heading counts left as positive", () => {
    for (const text of ["Offline (L+)", "Offline (+ = left)", "Side (R-)", "Side (left +) [yd]"]) {
      expect(readHeader(text)).toMatchObject({ key: "offline", leftPositive: true });
    }
    for (const text of ["Offline (L-/R+)", "Offline (L/R)", "Offline (R+)", "Offline (L - R)"]) {
      expect(readHeader(text)).toMatchObject({ key: "offline", leftPositive: false });
    }
  });
});

describe("COLUMN_NAMES", () => {
  it("names each key of the vocabulary", () => {
    const keys = new Set([...COLUMN_NAMES.values()].map(({ key }) => key));
    expect([...keys].sort()).toEqual(
      [...METRICS.map(({ key }) => key), "club", "build", "shot", "time", "keep"].sort(),
    );
  });
});
