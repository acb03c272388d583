import { draft, held, sentence, usualTemp, usualTime } from './draft.ts'
import type { Maker, Plan } from './plan.ts'
import { hasClass, playsHere } from './roles-here.ts'

const isWatery = ({ process }: Plan): boolean => process === 'emulsion' || process === 'one-phase'
export const isPreserved = ({ context }: Plan): boolean =>
  context.lines.some((line) => playsHere(context, line, 'preservative'))

const FILLED: Record<Plan['process'], string> = {
  emulsion:
    'Fill when it is cool, into clean, dry containers that keep fingers out: pump, tube or spatula jar. No air pockets, little headspace.',
  'one-phase': 'Let air bubbles rise, then fill into clean, dry bottles or pumps; close at once.',
  anhydrous: 'Close when it is cold. Keep water out of the jar: dry fingers or a spatula.',
  powder: 'Fill into dry, tight containers; a sachet of drying agent helps.',
  bar: 'Wrap when dry, in paper or a tin.',
  soap: 'Wrap when cured, in paper: airtight it sweats.',
}

const STORED: Record<Plan['process'], string> = {
  emulsion: 'cool and dark',
  'one-phase': 'cool and dark',
  anhydrous: 'cool, dark and dry',
  powder: 'dry',
  bar: 'dry',
  soap: 'dry and airy',
}

export const fill: Maker = (plan, before) => {
  const flammable = plan.context.lines.filter(
    (line) => hasClass(line, 'flammable', 'short-alcohol') && line.share_percent >= 20,
  )
  const bare = isWatery(plan) && !isPreserved(plan)
  return draft({
    id: 'fill',
    title: 'Fill and store',
    text: sentence(
      FILLED[plan.process],
      `Store ${STORED[plan.process]}${bare ? ', in the refrigerator: nothing here preserves it' : ''}, out of the reach of children.`,
    ),
    why: 'Light, warmth, air and fingers are what ends a product',
    uses: held(before),
    temp:
      plan.process === 'emulsion' && plan.heat
        ? usualTemp({ max: 30 }, 'filled warm it sweats under the lid, and germs like the drops')
        : undefined,
    cautions: flammable.length > 0 ? ['Catches fire: no flame while filling, away from heat.'] : [],
  })
}

/** Day of making and code, as given or to be written by hand. */
export const mark: Maker = ({ date, batchCode }) =>
  draft({
    id: 'mark',
    title: 'Date and batch code',
    text: sentence(
      date === null ? 'Write the day of making' : `Made on ${date}: write it`,
      batchCode === null ? 'and a batch code of your own' : `and the code ${batchCode}`,
      'on every container and on this sheet, with who made it and the lot numbers of what went in.',
    ),
    why: 'When something is wrong later, only this leads back to it',
    after: ['fill'],
    aside: true,
  })

export const keepSample: Maker = ({ process }) =>
  draft({
    id: 'sample',
    title: 'Keep a sample back',
    text: `Fill ${process === 'bar' || process === 'soap' ? 'one piece' : 'one small container of the same kind'}, mark it like the batch, and keep it closed at room temperature, in the dark, as long as the batch is in use.`,
    why: 'It shows whether a fault is the batch or the way it was kept',
    after: ['mark'],
    aside: true,
  })

const WATCHED: Record<Plan['process'], string> = {
  emulsion: 'parting, oil eyes, water at the bottom, grains, colour, smell, pH',
  'one-phase': 'cloud, sediment, thinning, colour, smell, pH',
  anhydrous: 'sweat drops, grains, softening, colour, rancid smell',
  powder: 'clumps, damp, colour, smell',
  bar: 'cracks, softening, colour, smell',
  soap: 'orange spots, sweat drops, white crust, smell',
}

export const watch: Maker = ({ process }) =>
  draft({
    id: 'watch',
    title: 'Look at it again',
    text: sentence(
      `On day 1, 7 and 30 look for: ${WATCHED[process]}. Write it down beside the sample kept back.`,
      process === 'powder'
        ? 'Keep one container in a damp bathroom meanwhile.'
        : 'Put one container through warm and cold by turns, a day each, three times, and compare.',
    ),
    why: 'Most faults of making show within a month, and sooner under warm and cold',
    after: ['sample'],
    temp:
      process === 'powder'
        ? undefined
        : usualTemp(
            { min: 4, max: 40 },
            'refrigerator and a warm cupboard by turns; it speeds up what would happen anyway',
          ),
    time: usualTime(1, 30, 'days', 'day 1, 7 and 30 after making'),
    aside: true,
  })

function endText(plan: Plan): string {
  const { process } = plan
  if (process === 'soap')
    return 'Throw it away when free lye shows. Orange spots and a stale smell are rancid fat: no longer for skin.'
  if (process === 'powder') return 'Throw it away when it has got damp, clumps, smells or shows specks of mould.'
  if (process === 'bar') return 'Throw it away when it smells, shows mould or stays slimy.'
  if (process === 'anhydrous')
    return 'Throw it away when it smells rancid like old nuts or paint, when water has got in, or when it shows mould.'
  return isPreserved(plan)
    ? 'Throw it away when smell, colour, thickness or pH change, when it parts, gases or shows specks, and when nobody knows any more how old it is. It can be full of germs and look as ever.'
    : 'Nothing in it keeps germs down: make little, keep it cold, use it up within days, and throw the rest away even if it looks good.'
}

export const discard: Maker = (plan) =>
  draft({
    id: 'discard',
    title: 'When to throw it away',
    text: sentence(
      endText(plan),
      isWatery(plan)
        ? 'How long it keeps, no sheet can say: that takes a challenge test of this product.'
        : 'Stop using it when skin stings, reddens or itches.',
    ),
    why: 'Spoilt products infect eyes and broken skin; rancid fat and free lye irritate',
    after: ['watch'],
    aside: true,
  })
