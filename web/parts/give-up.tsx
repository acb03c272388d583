import type { SwapsReply } from '#web/client/use-swaps.ts'
import { text } from '#web/text/text.ts'
import { Said } from './spoken.tsx'

interface Props {
  ways: NonNullable<SwapsReply['giveUp']>
  labelOf: (id: string) => string
}

/** No stand-in fulfils all wishes: the fewest to give up, and what each would allow. */
export function GiveUp({ ways, labelOf }: Props) {
  return (
    <div className="give-up">
      <h3>{text.swaps.giveUp}</h3>
      <ul>
        {ways.map(({ wishes, text: words, allows }) => (
          <li key={wishes.join()}>
            <Said>{words}</Said>: {allows.map(labelOf).join(', ')}
          </li>
        ))}
      </ul>
    </div>
  )
}
