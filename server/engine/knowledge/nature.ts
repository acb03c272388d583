import type { Ingredient } from '#engine/model/records.ts'

const CATIONS =
  /^(?:MONO|DI|TRI|TETRA|PENTA)?(?:SODIUM|POTASSIUM|CALCIUM|MAGNESIUM|ZINC|AMMONIUM|ALUMINUM|LITHIUM|COPPER|IRON|FERROUS|FERRIC|SILVER|BARIUM|STRONTIUM|LEAD|TEA|MEA|DEA)(?=[- ])/

const PLANT_PART =
  /\b(OIL|EXTRACT|WATER|BUTTER|WAX|CERA|JUICE|POWDER|GUM|STARCH|PROTEIN|RESIN|FLOUR|MEAL|FERMENT|ACID|ALCOHOL|HYDROXIDE|PEROXIDE|OXIDE|GLYCOL|GLUCOSIDE|BETAINE|COPOLYMER|CROSSPOLYMER)\b/g

/**
 * What a name says of the nature of a thing: counter-ion, last systematic word, its ending. Two likely readings that
 * differ here must not be mixed up: acid and salt, oil and extract, alcohol and aldehyde, chloride and chlorate.
 */
export function natureOf(inci: string): string {
  const cation = CATIONS.exec(inci)?.[0] ?? ''
  const kinds = inci.match(PLANT_PART) ?? []
  const last =
    inci
      .replace(/[-\d,/ ]+$/, '')
      .split(/[\s-]+/)
      .at(-1) ?? ''
  const ending =
    kinds.at(-1) ?? /(?:ATE|ITE|IDE|OL|AL|AMIDE|AMINE|INE|IN|ONE|ANE|ENE|ETH|YL|ATIN|OSE|UM)$/.exec(last)?.[0] ?? last
  const rest = cation && !kinds.length ? last : ending
  return `${cation}:${rest}${/HYDROGENATED/.test(inci) ? ':H' : ''}${/HYDROLYZED/.test(inci) ? ':Y' : ''}`
}

/** Names of substances that harm when taken for another, by their systematic words. */
const HARSH =
  /HYDROXIDE|PEROXIDE|HYPOCHLORITE|CHLORITE|CHLORATE|PERSULFATE|SULFIDE|NITRITE|THIOGLYCOL|METHYL ALCOHOL|HYDROCHLORIC|SULFURIC|HYDROFLUOR|PHENOL$|FORMALDEHYDE|CRESOL|ANTIMONY|MERCUR|LEAD |ARSEN|BARIUM|OXALIC|CHLOROACETIC|HYDROQUINONE|BROMATE|AMARA KERNEL|QUININE|RETINOIC/

/** Whether taking this for another substance can hurt. */
export function isHazardous(inci: string, record: Ingredient | undefined): boolean {
  if (HARSH.test(inci)) return true
  return record !== undefined && (record.classes.has('corrosive') || record.classes.has('strong-base'))
}
