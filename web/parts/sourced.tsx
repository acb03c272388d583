import type { ReactNode } from 'react'
import type { IngredientReply } from '#web/client/use-ingredient.ts'
import { text } from '#web/text/text.ts'
import { ClaimDetail } from './claim-detail.tsx'

type Told = Parameters<typeof ClaimDetail>[0]['claim']

/** Titles of the sources of a record, by id. */
export const titlesOf = ({ sources }: Pick<IngredientReply, 'sources'>): ReadonlyMap<string, string> =>
  new Map(sources.map(({ id, title }) => [id, title]))

interface Props {
  claim: Told | undefined
  titles: ReadonlyMap<string, string>
  children: ReactNode
}

/** A figure that opens where it comes from; bare where no statement stands behind it. */
export function Sourced({ claim, titles, children }: Props) {
  if (!claim) return <>{children}</>
  return (
    <details className="sourced">
      <summary>
        {children} <span className="hidden">{text.ingredient.opens}</span>
      </summary>
      <ClaimDetail claim={claim} titles={titles} />
    </details>
  )
}
