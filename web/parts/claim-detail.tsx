import type { IngredientReply } from '#web/client/use-ingredient.ts'
import { isNoSource } from '#web/format/source.ts'
import { text } from '#web/text/text.ts'
import { SourceLinks } from './source-links.tsx'
import { dayText } from '#web/format/day.ts'
import { Said } from './spoken.tsx'

type Claim = IngredientReply['claims'][number]
/** What a statement says of its origin, whatever it states. */
type Told = Pick<Claim, 'kind' | 'source' | 'locator' | 'access' | 'date' | 'evidence'> &
  Partial<Pick<Claim, 'conditions' | 'note'>>

const T = text.ingredient

/** Nothing stays nothing, so that its row can be left out. */
const said = (words: string) => (words === '' ? '' : <Said key={words}>{words}</Said>)

interface Props {
  claim: Told
  /** title of each source that the record lists */
  titles: ReadonlyMap<string, string>
}

/** Where a statement comes from, in full: source, place, how it was seen and when, and what kind of evidence that is. */
export function ClaimDetail({ claim, titles }: Props) {
  const { source, locator, access, kind, date, evidence, conditions, note } = claim
  const named = source.split(/\s*;\s*/).flatMap((id) => titles.get(id) ?? [])
  const rows = [
    [T.source, <SourceLinks key="source" ids={source} />],
    [T.sourceTitle, said(named.join('; '))],
    [T.locator, isNoSource(source) ? '' : said(locator)],
    [T.access, `${T.accesses[access]}, ${dayText(date)}`],
    [T.kind, T.kinds[kind]],
    [T.evidence, said(`${evidence.label} (${evidence.code})`)],
    [T.conditions, said(conditions ?? '')],
    [T.note, said(note ?? '')],
  ] as const
  return (
    <dl className="claim-detail">
      {rows
        .filter(([, value]) => value !== '')
        .map(([head, value]) => (
          <div key={head}>
            <dt>{head}</dt>
            <dd>{value}</dd>
          </div>
        ))}
    </dl>
  )
}
