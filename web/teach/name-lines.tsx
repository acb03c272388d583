import { teach as T } from '#web/text/teach.ts'

/** Lines for name and date, to be written on. */
export function NameLines() {
  return (
    <p className="teach-lines">
      <span>
        {T.name} <span className="write" />
      </span>
      <span>
        {T.date} <span className="write" />
      </span>
    </p>
  )
}
