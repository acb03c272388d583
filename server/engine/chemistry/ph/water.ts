import { mustBeIn } from '#engine/units/must-be-in.ts'
import { logConstantAt } from './log-constant-at.ts'

const KELVIN = 273.15

/** Constants of water at 25 °C and no salt: pKw, heat [kJ/mol] and heat capacity [J/(mol K)] of its splitting. */
export const WATER = { pka: 13.997, temp_c: 25, dh_kj_mol: 55.81, dcp_j_mol_k: -224 } as const

/** e³ √(2000 N) / (8 π ln 10 (ε0 k)^1.5), from the defined constants of nature [K^1.5 (L/mol)^½ (mL/g)^½]. */
const DEBYE_HUECKEL = 1.82483e6

/** Relative permittivity of water [-], 0 to 100 °C. Malmberg and Maryott, J. Res. NBS 56 (1956) 1; seen quoted. */
const permittivity = (temp_c: number): number =>
  87.74 - 0.40008 * temp_c + 9.398e-4 * temp_c ** 2 - 1.41e-6 * temp_c ** 3

/** Density of water [g/mL], 0 to 100 °C. Equation of Thiesen, from memory; agrees with the usual table within 0.0005. */
const density = (temp_c: number): number =>
  1 - ((temp_c + 288.9414) / (508929.2 * (temp_c + 68.12963))) * (temp_c - 3.9863) ** 2

/**
 * Factor A of the Debye-Hückel law.
 *
 *   A(T) = 1.82483e6 · √density / (permittivity · T)^1.5
 *
 * @param temp_c  temperature [°C], 0 to 100
 * @returns       [(L/mol)^½] for decadic logarithms; 0.511 at 25 °C, where printed figures run from 0.509 to 0.5115
 * @throws RangeError when the temperature is out of range
 */
export function debyeHueckelA(temp_c: number): number {
  mustBeIn('temp_c', temp_c, 0, 100)
  return (DEBYE_HUECKEL * Math.sqrt(density(temp_c))) / (permittivity(temp_c) * (temp_c + KELVIN)) ** 1.5
}

/**
 * Ion product of water, -log Kw, without salt.
 *
 * @param temp_c  temperature [°C], 0 to 100
 * @throws RangeError when the temperature is out of range
 *
 * Within 0.01 of the printed expression of PHREEQC-DAT from 0 to 60 °C.
 * Source: PHREEQC-MINTEQ (13.997, 55.81 kJ/mol; seen quoted), heat capacity from memory.
 */
export function pkw(temp_c: number): number {
  mustBeIn('temp_c', temp_c, 0, 100)
  return logConstantAt(WATER, temp_c)
}
