import type { Provenance } from './claim.ts'

type Access = Provenance['access']

/** How a statement was seen, the surest first. */
export const ACCESS_ORDER: readonly Access[] = ['read', 'secondary', 'memory', 'common-practice']

/** The weakest link: what follows from several statements was seen no better than the worst of them. */
export const worstAccess = (of: readonly Pick<Provenance, 'access'>[]): Access =>
  ACCESS_ORDER[Math.max(0, ...of.map(({ access }) => ACCESS_ORDER.indexOf(access)))] ?? 'memory'

/** Whether somebody saw it: in the source itself, or quoted. */
export const isSeen = ({ access }: Pick<Provenance, 'access'>): boolean => access === 'read' || access === 'secondary'
