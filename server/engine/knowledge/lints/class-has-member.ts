import { isObject } from '#engine/knowledge/expand-claims.ts'
import type { Lint } from './lint.ts'

/** Guards against classes that nothing belongs to and groups that nobody explains: a rule about them would never speak. */
export const classHasMember: Lint = (raw, { classes, ingredients }) => {
  const used = new Set([...ingredients.values()].flatMap((one) => [...one.classes]))
  const groups = isObject(raw.classes.data) && isObject(raw.classes.data['groups']) ? raw.classes.data['groups'] : {}
  return [...classes.values()].flatMap(({ id, group }) => {
    const path = `${raw.classes.path}/classes/${id}`
    return [
      ...(used.has(id) ? [] : [{ path, message: 'nothing belongs to this class' }]),
      ...(group in groups ? [] : [{ path: `${path}/group`, message: `the group ${group} is not explained` }]),
    ]
  })
}
