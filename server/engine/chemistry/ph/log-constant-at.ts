/** An acid constant with its temperature and, where known, the heat that goes with it. */
export interface LogConstant {
  /** -log K at this temperature and no salt */
  pka: number
  temp_c: number
  /** heat of dissociation [kJ/mol] */
  dh_kj_mol?: number
  /** heat capacity of dissociation [J/(mol K)] */
  dcp_j_mol_k?: number
}

const GAS_J_MOL_K = 8.31446
const KELVIN = 273.15

/**
 * An acid constant at another temperature (van 't Hoff with heat capacity).
 *
 *   ln K(T) = ln K(T0) - dH/R (1/T - 1/T0) + dCp/R (ln(T/T0) + T0/T - 1)
 *
 * @param constant  -log K at T0, heat and heat capacity of dissociation at T0
 * @param temp_c    temperature asked for [°C]
 * @returns         -log K(T) [-]; the stated constant where no heat is known (see `heatIsKnown`)
 *
 * Holds over some 50 °C around T0. A missing heat capacity moves the result by less than 0.03 within 20 °C for the acids
 * whose heat capacity is known.
 */
export function logConstantAt({ pka, temp_c: from_c, dh_kj_mol, dcp_j_mol_k }: LogConstant, temp_c: number): number {
  if (dh_kj_mol === undefined) return pka
  const t = temp_c + KELVIN
  const t0 = from_c + KELVIN
  const heat = ((dh_kj_mol * 1000) / GAS_J_MOL_K) * (1 / t - 1 / t0)
  const bend = ((dcp_j_mol_k ?? 0) / GAS_J_MOL_K) * (Math.log(t / t0) + t0 / t - 1)
  return pka + (heat - bend) / Math.LN10
}

/** False where a constant is asked at a temperature to which nothing known leads. */
export const heatIsKnown = ({ temp_c: from_c, dh_kj_mol }: LogConstant, temp_c: number): boolean =>
  dh_kj_mol !== undefined || Math.abs(temp_c - from_c) <= 5
