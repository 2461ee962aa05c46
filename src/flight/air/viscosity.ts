/**
 * Dynamic viscosity of air in Pa s at a temperature in degrees C, by Sutherland's formula with the constants of the
 * standard atmosphere (ISO 2533:1975, section 2.14; US Standard Atmosphere 1976, equation 51).
 *
 * @example viscosity(15) // 1.7894e-5
 */
export function viscosity(temperature: number): number {
  const kelvin = temperature + 273.15;
  return (1.458e-6 * kelvin ** 1.5) / (kelvin + 110.4);
}
