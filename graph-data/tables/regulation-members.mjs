/** Id of an ingredient: the INCI name in lower case, every other run of characters one hyphen. */
export const slug = (name) => name.toLowerCase().replace(/[^a-z0-9]+/g, '-').replace(/^-|-$/g, '')

const ATOMS = {
  H: 1.008, C: 12.011, N: 14.007, O: 15.999, Na: 22.99, K: 39.098, Ca: 40.078, Mg: 24.305, S: 32.06, Cl: 35.45,
  Zn: 65.38, Hg: 200.592, Br: 79.904, Al: 26.982, P: 30.974, Li: 6.94, Sr: 87.62, Ag: 107.868,
}

/** Molar mass in g/mol of a formula without brackets. */
const molarMass = (formula) =>
  [...formula.matchAll(/([A-Z][a-z]?)(\d*)/g)].reduce((sum, [, atom, count]) => {
    if (!(atom in ATOMS)) throw new Error(`no atomic mass for ${atom} in ${formula}`)
    return sum + ATOMS[atom] * Number(count || 1)
  }, 0)

/** `2 C7H6O2 / C14H10CaO4`: g of the first counted in 1 g of the second. */
const factor = (text) => {
  const [, units, basis, substance] = /^(?:([\d.]+) )?(\w+) \/ (\w+)$/.exec(text)
  return (Number(units ?? 1) * molarMass(basis)) / molarMass(substance)
}

const rounded = (value) => Number(value.toFixed(4))

/** Members named in the table itself, with the factor that its molar masses give. */
const fromTable = (facts) =>
  facts.flatMap(({ inci, basis_units, basis_molar_mass, molar_mass }) =>
    inci.split(';').map((name) => slug(name)).filter(Boolean)
      .map((id) => [id, molar_mass ? rounded((Number(basis_units) * Number(basis_molar_mass)) / Number(molar_mass)) : 1]))

/**
 * Substance -> g counted in 1 g of the pure substance.
 * `members` replaces the names of the table (list or map), `and` adds to them, `inventory` adds all that the inventory files under an entry.
 */
export const membersOf = (facts, { members, and, inventory: number, except = [] }, inventory) => {
  const listed = (some) => (Array.isArray(some) ? some.map((id) => [id, 1]) : Object.entries(some ?? {}))
  const own = members ? listed(members) : fromTable(facts)
  const filed = number ? inventory.filter(({ restriction }) => restriction.includes(number)).map(({ id }) => [id, 1]) : []
  const all = [...filed, ...own, ...listed(and)].filter(([id]) => !except.includes(id))
  return Object.fromEntries(all.map(([id, value]) => [id, typeof value === 'string' ? rounded(factor(value)) : value]))
}
