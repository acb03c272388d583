import { isObject } from '#engine/knowledge/expand-claims.ts'
import type { Lint } from './lint.ts'

/** Guards against the CAS number of another substance: where the inventory gives numbers for the name, they are the ones. */
export const casIsOfName: Lint = (raw, { inventory }) =>
  raw.ingredients.flatMap(({ path, data }) => {
    if (!isObject(data) || typeof data['cas_note'] === 'string') return []
    const listed = inventory.get(String(data['id']))?.cas ?? []
    const own = Array.isArray(data['cas']) ? data['cas'].map(String) : []
    const strange = own.filter((cas) => !listed.includes(cas))
    if (listed.length === 0 || strange.length === 0) return []
    return [
      {
        path: `${path}/cas`,
        message: `the inventory gives ${listed.join(', ')} for this name, not ${strange.join(', ')}; correct it or say why in cas_note`,
      },
    ]
  })
