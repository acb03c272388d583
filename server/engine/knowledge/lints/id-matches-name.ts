import { isObject } from '#engine/knowledge/expand-claims.ts'
import { idOf } from '#engine/knowledge/slug.ts'
import type { Lint } from './lint.ts'

/** Guards against an id that cannot be worked out from the INCI name, and a name that the open inventory does not have. */
export const idMatchesName: Lint = (raw, { inventory }) =>
  raw.ingredients.flatMap(({ path, data }) => {
    if (!isObject(data)) return [{ path, message: 'expected a record' }]
    const id = String(data['id'])
    const inci = String(data['inci'])
    const problems = []
    if (path !== `ingredients/${id}.yaml`) problems.push({ path, message: `file name and id ${id} differ` })
    if (idOf(inci) !== id)
      problems.push({ path: `${path}/inci`, message: `${inci} gives the id ${idOf(inci)}, not ${id}` })
    const parts = id.split('-and-')
    if (parts.length === 1 && !inventory.has(id) && data['not_in_inventory'] === undefined) {
      problems.push({
        path: `${path}/inci`,
        message: `${inci} is not in the inventory; correct it or say why in not_in_inventory`,
      })
    }
    return problems
  })
