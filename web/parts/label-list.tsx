import { useRef, useState } from 'react'
import { label as T } from '#web/text/label.ts'

const ROWS = 5

/** The list ready to copy. Where the browser forbids copying, the text is marked instead. */
export function LabelList({ text }: { text: string }) {
  const field = useRef<HTMLTextAreaElement>(null)
  const [said, setSaid] = useState('')
  const copy = () => {
    field.current?.select()
    const { clipboard } = navigator as { clipboard?: Clipboard }
    if (!clipboard) return setSaid(T.list.notCopied)
    clipboard.writeText(text).then(
      () => setSaid(T.list.copied),
      () => setSaid(T.list.notCopied),
    )
  }
  return (
    <section className="card" aria-labelledby="label-list-title">
      <h2 id="label-list-title">{T.list.title}</h2>
      <p className="label-text print-only">{text}</p>
      <div className="screen-only">
        <textarea ref={field} className="label-text" aria-label={T.list.text} readOnly rows={ROWS} value={text} />
        <div className="row">
          <button type="button" className="main" onClick={copy}>
            {T.list.copy}
          </button>
          <p role="status" className="remark">
            {said}
          </p>
        </div>
      </div>
    </section>
  )
}
