/** One acid or base at one temperature: what its steps do at each pH. */
export interface AcidSystem {
  /** charge of the form with all its protons: 0 for citric acid, 1 for an amine */
  charge: number
  /** constants of the steps at this temperature and no salt, first proton first; none for what never changes */
  pkas: readonly number[]
  /** constants as measured in the salt of a real solution: the salt of this one does not move them again */
  apparent?: boolean
  /** total of all forms [mol/L] */
  mol_per_l: number
}

/** An ion that takes no part in acid-base reactions. */
export interface Ion {
  charge: number
  mol_per_l: number
}

/** A watery solution, 1 kg of it counted as 1 L. */
export interface Mixture {
  systems: readonly AcidSystem[]
  ions: readonly Ion[]
  temp_c: number
}

/** Water at one temperature and ionic strength. */
export interface Medium {
  /** Debye-Hückel slope √I/(1 + 1.5 √I) times A: -log γ of a single charge */
  slope: number
  /** -log Kw without salt */
  pkw: number
}
