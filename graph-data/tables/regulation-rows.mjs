const PRODUCTS = ['leave-on', 'rinse-off']
const PLACES = ['face', 'eye', 'lip', 'hair', 'hand', 'body', 'deodorant', 'intimate', 'nail']
const AREAS = [...PLACES, 'under-3', 'oral']
const FORMS = ['spray', 'aerosol', 'powder', 'bar']
const ALLIED = { face: ['eye', 'lip'], body: ['hand'] }
const DEFAULTS = { all: '*', powder: 'powder', aerosol: 'aerosol', 'raw-material': '*', fragrance: '(fragrance product)', depilatory: '(depilatory)', mouthwash: 'oral (mouthwash)' }

/** `leave-on hair !body spray (hair dye)` -> scope; `!spray` bars sprays; `*` is every product; words in brackets say what a formula cannot tell. */
const scopeOf = (text, tools) => {
  const { problems } = tools
  const only = /\((.*)\)/.exec(text)?.[1]
  const words = text.replace(/\(.*\)/, '').split(/\s+/).filter((word) => word && word !== '*')
  const pick = (list) => words.filter((word) => list.includes(word))
  const areas = pick(AREAS)
  const not = words.filter((word) => word.startsWith('!') && word !== '!spray').map((word) => word.slice(1))
  words.filter((word) => ![...PRODUCTS, ...AREAS, ...FORMS, '!spray', ...AREAS.map((area) => `!${area}`)].includes(word))
    .forEach((word) => problems.push(`unknown word in scope: ${word}`))
  return {
    ...(pick(PRODUCTS).length ? { product: pick(PRODUCTS)[0] } : {}),
    ...(areas.length ? { areas } : {}),
    ...(not.length ? { not_areas: not } : {}),
    ...(pick(FORMS).length ? { form: pick(FORMS) } : {}),
    ...(words.includes('!spray') ? { not_form: ['spray'] } : {}),
    ...(only ? { only, ...usesOf(only, areas, tools) } : {}),
  }
}

/** What a formula may state of a use: every use outside the mouth has its words in uses.yaml. */
const usesOf = (only, areas, { problems, uses }) => {
  if (!uses[only] && !areas.includes('oral')) problems.push(`no words for the use: ${only}`)
  return uses[only]
}

const number = (text) => (text ? Number(text) : undefined)
const without = (row) => Object.fromEntries(Object.entries(row).filter(([, value]) => value !== undefined && value !== null && value !== ''))

const provenance = ({ source_id, locator, access, applies_from, older_stock_available_until, legal_act }) => ({
  applies_from, older_stock_until: older_stock_available_until,
  legal_act: legal_act.startsWith('(') ? legal_act : undefined, source: source_id.split('; ')[0],
  also: source_id.split('; ')[1], locator: locator || 'not opened', access,
})

const limitOf = (fact) => {
  const type = fact.rule_type ?? fact.kind
  const ph = without({ min: number(fact.ph_min), max: number(fact.ph_max) })
  return {
    ...(/max_percent|panel|^limit/.test(type) ? { max_percent: number(fact.max_percent) } : {}),
    ...(/^prohibited/.test(type) ? { prohibited: true } : {}),
    ...(Object.keys(ph).length ? { ph } : {}),
    warning: fact.label_text,
  }
}

const rowsOfFact = (fact, { rows = {}, all = {}, text = {} }, tools) => {
  const { problems } = tools
  const last = fact.fact_id.slice(-2)
  const wanted = rows[last] === undefined ? (DEFAULTS[fact.product_scope] ?? fact.product_scope) : rows[last]
  if (wanted === null) return []
  return [wanted].flat().map((scope) => {
    const row = without({ scope: scopeOf(scope, tools), ...limitOf(fact), ...provenance(fact), ...all, ...(text[last] ?? {}) })
    const { source, also, locator, access, note, ...rest } = row
    if (!['max_percent', 'prohibited', 'ph', 'condition'].some((key) => key in rest)) problems.push(`${fact.fact_id}: row says nothing`)
    return without({ ...rest, source, locator, access, note: noted(note, also) })
  })
}

const noted = (note, also) => [note, also && `Second source: ${also}.`].filter(Boolean).join(' ')

const sameRows = (rows) => [...new Map(rows.map((row) => [JSON.stringify({ ...row, source: 0, locator: 0 }), row])).values()]

/** Rows of one entry: limits, and bans that hold whatever the limit says (kept apart, so that no narrower limit hides them). */
export const rowsOf = (facts, map, tools) => {
  const limits = sameRows(facts.flatMap((fact) => rowsOfFact(fact, map, tools)))
  const { also: _, ...first } = facts.length ? provenance(facts[0]) : {}
  const cited = without(first)
  const elsewhere = map.else ? [{ scope: {}, prohibited: true, ...cited, note: map.else }] : []
  const extra = (map.extra ?? []).map(({ scope, ...row }) => ({ scope: scopeOf(scope, tools), ...cited, ...row }))
  const bans = (map.ban ?? []).map((one) => (typeof one === 'string' ? { scope: one } : one))
    .map(({ scope, ...row }) => ({ scope: scopeOf(scope, tools), prohibited: true, ...cited, ...row }))
  return { limits: [...elsewhere, ...limits, ...extra], bans }
}

const strictness = ({ prohibited, max_percent = Infinity }) => (prohibited ? -1 : max_percent)
const meet = (a, b) => !a.product || !b.product || a.product === b.product
const wider = (w, r) => (!w.product || w.product === r.product) && !w.areas && !w.form && !w.not_form && !w.only

/**
 * A generous row for one place must not cover a product that is also used where a stricter row holds:
 * those other places are put into `not_areas`. Eye and lip belong to the face, hands to the body, unless they have a stricter row of their own.
 */
export const narrowed = (rows) =>
  rows.map((row) => {
    const { areas, only } = row.scope
    const places = areas?.filter((area) => PLACES.includes(area)) ?? []
    const stricter = rows.filter((other) => meet(other.scope, row.scope) && !other.scope.only && strictness(other) < strictness(row))
    if (places.length === 0 || only || stricter.length === 0) return row
    const open = stricter.some((other) => wider(other.scope, row.scope))
    const named = stricter.flatMap((other) => (other.scope.form ? [] : (other.scope.areas ?? [])))
    const generous = rows.filter((other) => meet(other.scope, row.scope) && strictness(other) >= strictness(row) && !other.scope.form && !other.scope.only)
      .flatMap((other) => other.scope.areas ?? [])
    const allied = places.flatMap((place) => ALLIED[place] ?? [])
    const rest = open ? PLACES.filter((place) => ![...places, ...allied, ...generous].includes(place)) : []
    const not_areas = [...new Set([...(row.scope.not_areas ?? []), ...named.filter((area) => PLACES.includes(area) && !places.includes(area)), ...rest])]
    if (not_areas.length === 0) return row
    const { product, form, not_form } = row.scope
    return { ...row, scope: { ...(product ? { product } : {}), areas, not_areas, ...(form ? { form } : {}), ...(not_form ? { not_form } : {}) } }
  })
