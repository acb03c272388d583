import type { TeachClass } from '#web/state/teach.ts'
import { teach } from '#web/text/teach.ts'

/** How a class is called; one without a name has a word of its own. */
export const classTitle = ({ name }: Pick<TeachClass, 'name'>): string =>
  name.trim() === '' ? teach.class.unnamed : name.trim()
