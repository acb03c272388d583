import { draft, held, sentence, usualTemp, usualTime } from './draft.ts'
import type { Say } from '#engine/words/say.ts'
import type { Maker, Plan } from './plan.ts'
import { hasClass, playsHere } from './roles-here.ts'

const isWatery = ({ process }: Plan): boolean => process === 'emulsion' || process === 'one-phase'
export const isPreserved = ({ context }: Plan): boolean =>
  context.lines.some((line) => playsHere(context, line, 'preservative'))

const FILLED: Record<Plan['process'], (say: Say) => string> = {
  emulsion: (say) =>
    say`Fill when it is cool, into clean, dry containers that keep fingers out: pump, tube or spatula jar. No air pockets, little headspace.`,
  'one-phase': (say) => say`Let air bubbles rise, then fill into clean, dry bottles or pumps; close at once.`,
  anhydrous: (say) => say`Close when it is cold. Keep water out of the jar: dry fingers or a spatula.`,
  powder: (say) => say`Fill into dry, tight containers; a sachet of drying agent helps.`,
  bar: (say) => say`Wrap when dry, in paper or a tin.`,
  soap: (say) => say`Wrap when cured, in paper: airtight it sweats.`,
}

const STORED: Record<Plan['process'], (say: Say) => string> = {
  emulsion: (say) => say`cool and dark`,
  'one-phase': (say) => say`cool and dark`,
  anhydrous: (say) => say`cool, dark and dry`,
  powder: (say) => say`dry`,
  bar: (say) => say`dry`,
  soap: (say) => say`dry and airy`,
}

export const fill: Maker = (plan, before) => {
  const { say } = plan
  const flammable = plan.context.lines.filter(
    (line) => hasClass(line, 'flammable', 'short-alcohol') && line.share_percent >= 20,
  )
  const bare = isWatery(plan) && !isPreserved(plan)
  return draft({
    id: 'fill',
    title: say`Fill and store`,
    text: sentence(
      FILLED[plan.process](say),
      bare
        ? say`Store ${STORED[plan.process](say)}, in the refrigerator: nothing here preserves it, out of the reach of children.`
        : say`Store ${STORED[plan.process](say)}, out of the reach of children.`,
    ),
    why: say`Light, warmth, air and fingers are what ends a product`,
    uses: held(before),
    temp:
      plan.process === 'emulsion' && plan.heat
        ? usualTemp({ max: 30 }, say`filled warm it sweats under the lid, and germs like the drops`, say)
        : undefined,
    cautions: flammable.length > 0 ? [say`Catches fire: no flame while filling, away from heat.`] : [],
  })
}

function markText({ date, batchCode, say }: Plan): string {
  if (date === null)
    return batchCode === null
      ? say`Write the day of making and a batch code of your own on every container and on this sheet, with who made it and the lot numbers of what went in.`
      : say`Write the day of making and the code ${batchCode} on every container and on this sheet, with who made it and the lot numbers of what went in.`
  return batchCode === null
    ? say`Made on ${date}: write it and a batch code of your own on every container and on this sheet, with who made it and the lot numbers of what went in.`
    : say`Made on ${date}: write it and the code ${batchCode} on every container and on this sheet, with who made it and the lot numbers of what went in.`
}

/** Day of making and code, as given or to be written by hand. */
export const mark: Maker = (plan) => {
  const { say } = plan
  return draft({
    id: 'mark',
    title: say`Date and batch code`,
    text: markText(plan),
    why: say`When something is wrong later, only this leads back to it`,
    after: ['fill'],
    aside: true,
  })
}

export const keepSample: Maker = ({ say, process }) =>
  draft({
    id: 'sample',
    title: say`Keep a sample back`,
    text:
      process === 'bar' || process === 'soap'
        ? say`Fill one piece, mark it like the batch, and keep it closed at room temperature, in the dark, as long as the batch is in use.`
        : say`Fill one small container of the same kind, mark it like the batch, and keep it closed at room temperature, in the dark, as long as the batch is in use.`,
    why: say`It shows whether a fault is the batch or the way it was kept`,
    after: ['mark'],
    aside: true,
  })

/** What shows that the product is going off, by kind of work. */
export const WATCHED: Record<Plan['process'], (say: Say) => string> = {
  emulsion: (say) => say`parting, oil eyes, water at the bottom, grains, colour, smell, pH`,
  'one-phase': (say) => say`cloud, sediment, thinning, colour, smell, pH`,
  anhydrous: (say) => say`sweat drops, grains, softening, colour, rancid smell`,
  powder: (say) => say`clumps, damp, colour, smell`,
  bar: (say) => say`cracks, softening, colour, smell`,
  soap: (say) => say`orange spots, sweat drops, white crust, smell`,
}

export const watch: Maker = ({ say, process }) =>
  draft({
    id: 'watch',
    title: say`Look at it again`,
    text: sentence(
      say`On day 1, 7 and 30 look for: ${WATCHED[process](say)}. Write it down beside the sample kept back.`,
      process === 'powder'
        ? say`Keep one container in a damp bathroom meanwhile.`
        : say`Put one container through warm and cold by turns, a day each, three times, and compare.`,
    ),
    why: say`Most faults of making show within a month, and sooner under warm and cold`,
    after: ['sample'],
    temp:
      process === 'powder'
        ? undefined
        : usualTemp(
            { min: 4, max: 40 },
            say`refrigerator and a warm cupboard by turns; it speeds up what would happen anyway`,
            say,
          ),
    time: usualTime([1, 30, 'days'], say`day 1, 7 and 30 after making`, say),
    aside: true,
  })

function endText(plan: Plan): string {
  const { say } = plan
  const { process } = plan
  if (process === 'soap')
    return say`Throw it away when free lye shows. Orange spots and a stale smell are rancid fat: no longer for skin.`
  if (process === 'powder') return say`Throw it away when it has got damp, clumps, smells or shows specks of mould.`
  if (process === 'bar') return say`Throw it away when it smells, shows mould or stays slimy.`
  if (process === 'anhydrous')
    return say`Throw it away when it smells rancid like old nuts or paint, when water has got in, or when it shows mould.`
  return isPreserved(plan)
    ? say`Throw it away when smell, colour, thickness or pH change, when it parts, gases or shows specks, and when nobody knows any more how old it is. It can be full of germs and look as ever.`
    : say`Nothing in it keeps germs down: make little, keep it cold, use it up within days, and throw the rest away even if it looks good.`
}

export const discard: Maker = (plan) => {
  const { say } = plan
  return draft({
    id: 'discard',
    title: say`When to throw it away`,
    text: sentence(
      endText(plan),
      isWatery(plan)
        ? say`How long it keeps, no sheet can say: that takes a challenge test of this product.`
        : say`Stop using it when skin stings, reddens or itches.`,
    ),
    why: say`Spoilt products infect eyes and broken skin; rancid fat and free lye irritate`,
    after: ['watch'],
    aside: true,
  })
}
