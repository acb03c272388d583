import { DEMOS } from '#web/demo/index.ts'
import type { Demo } from '#web/demo/demo.ts'
import { text } from '#web/text/text.ts'

/** The recipes of an invented workshop, each with something to try. */
export function DemoList({ onOpen }: { onOpen: (demo: Demo) => void }) {
  return (
    <section className="demos" aria-labelledby="demos-title">
      <h2 id="demos-title">{text.start.demos}</h2>
      <p>{text.start.demosFrom}</p>
      <ul>
        {DEMOS.map((demo) => (
          <li key={demo.id}>
            <button type="button" className="demo" onClick={() => onOpen(demo)}>
              <strong>{demo.title}</strong>
              <span>{demo.story}</span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  )
}
