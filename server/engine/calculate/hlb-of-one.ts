import {
  hlbByGroups,
  hlbByOxyethylene,
  hlbBySaponification,
  LIPOPHILIC_GROUP_NUMBER,
  OXYETHYLENE_G_PER_MOL,
} from '#engine/chemistry/hlb-by-structure.ts'
import type { World } from '#engine/graph/world.ts'
import type { Calculations } from './calculation.ts'
import { figure, listed, step } from './step.ts'

interface Group {
  name: string
  number: number
  source: string
}

/** "-OH (free)" and "oh(free)" are one group. */
const plain = (name: string): string =>
  name
    .toLowerCase()
    .replace(/\s+/g, '')
    .replace(/^-+|-+$/g, '')

const groupsKnown = new WeakMap<World, ReadonlyMap<string, Group>>()

/** Hydrophilic groups of the table by plain name. */
function groupsOf(world: World): ReadonlyMap<string, Group> {
  const known = groupsKnown.get(world)
  if (known) return known
  const rows = (world.knowledge.tables.get('hlb-groups') ?? []).filter((row) => row['kind'] === 'hydrophilic')
  const groups = new Map(
    rows.map((row) => {
      const name = row['name'] ?? ''
      return [plain(name), { name, number: Number(row['value']), source: row['source_id'] ?? '' }]
    }),
  )
  groupsKnown.set(world, groups)
  return groups
}

/** @throws RangeError naming the groups that are known */
function groupCalled(name: string, index: number, groups: ReadonlyMap<string, Group>): Group {
  const group = groups.get(plain(name))
  if (group) return group
  const names = [...groups.values()].map((one) => one.name).join(', ')
  throw new RangeError(`hydrophilic/${index}: expected one of ${names}; got ${name}`)
}

const LISTED_WINS = 'Where a listed HLB exists it wins over a computed one.'

export const HLB_OF_ONE: Calculations<'hlb-by-oxyethylene' | 'hlb-by-saponification' | 'hlb-by-groups'> = {
  'hlb-by-oxyethylene': {
    title: 'Which HLB has an ethoxylate?',
    run({ hydrophobe_molar_mass, oxyethylene_units }) {
      const hlb = hlbByOxyethylene(hydrophobe_molar_mass, oxyethylene_units)
      const mass = oxyethylene_units * OXYETHYLENE_G_PER_MOL
      const all = hydrophobe_molar_mass + mass
      return {
        values: { hlb },
        steps: [
          step(
            'Mass of the oxyethylene chain',
            `${figure(oxyethylene_units)} × ${OXYETHYLENE_G_PER_MOL}`,
            mass,
            'g/mol',
          ),
          step(
            'Its share of the molecule',
            `${figure(mass)} / (${figure(hydrophobe_molar_mass)} + ${figure(mass)}) × 100`,
            (100 * mass) / all,
            '%',
          ),
          step('HLB: a fifth of that share', `${figure((100 * mass) / all)} / 5`, hlb, '-'),
        ],
        range: `Nonionics whose only hydrophile is oxyethylene (ceteareth, laureth, oleth): not polysorbates, glucosides or polyglyceryl esters. ${LISTED_WINS}`,
        sources: ['davies-table', 'iupac-goldbook-15196'],
      }
    },
  },
  'hlb-by-saponification': {
    title: 'Which HLB has an ester of glycerol or sorbitan?',
    run({ saponification_value, acid_value }) {
      const hlb = hlbBySaponification(saponification_value, acid_value)
      return {
        values: { hlb },
        steps: [
          step(
            'HLB out of two titrations',
            `20 × (1 − ${figure(saponification_value)} / ${figure(acid_value)})`,
            hlb,
            '-',
          ),
        ],
        range: `Esters of fatty acids with polyhydric alcohols. Runs 0.9 high for sorbitan oleate and 0.6 low for sorbitan tristearate. ${LISTED_WINS}`,
        sources: ['hlb-faq', 'griffin1954-mem'],
      }
    },
  },
  'hlb-by-groups': {
    title: 'Which HLB follows from the groups of a molecule?',
    run({ hydrophilic, lipophilic_groups }, world) {
      const known = groupsOf(world)
      const groups = hydrophilic.map((name, index) => groupCalled(name, index, known))
      const numbers = groups.map(({ number }) => number)
      const hlb = hlbByGroups(numbers, lipophilic_groups)
      const sum = numbers.reduce((total, number) => total + number, 0)
      return {
        values: { hlb },
        steps: [
          step(
            `Hydrophilic groups: ${groups.map(({ name }) => name).join(', ')}`,
            numbers.map(figure).join(' + '),
            sum,
            '-',
          ),
          step(
            'Every CH, CH2 and CH3 takes away',
            `${figure(lipophilic_groups)} × ${LIPOPHILIC_GROUP_NUMBER}`,
            lipophilic_groups * LIPOPHILIC_GROUP_NUMBER,
            '-',
          ),
          step('HLB', `7 + ${figure(sum)} − ${figure(lipophilic_groups * LIPOPHILIC_GROUP_NUMBER)}`, hlb, '-'),
        ],
        range: `The scale of Davies; ionics lie above 20 (sodium lauryl sulfate 40). Poor for long oxyethylene chains and for mixtures of chain lengths. ${LISTED_WINS}`,
        sources: listed('davies-table', ...groups.map(({ source }) => source)),
      }
    },
  },
}
