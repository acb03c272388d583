import { useState } from 'react'
import type { ChangeEvent } from 'react'
import { withImported } from '#web/state/teach.ts'
import { classFile, readClass } from '#web/state/teach-read.ts'
import { teach } from '#web/text/teach.ts'
import { classTitle } from './class-title.ts'
import { download, fileWords } from './download.ts'
import type { ClassStore } from './use-classes.ts'

const T = teach.class

/** The way in and out for a class. A file that cannot be read changes nothing. */
export function ClassFiles({ store: { now, change } }: { store: ClassStore }) {
  const [said, setSaid] = useState({ isBad: false, words: '' })
  const load = async ({ target }: ChangeEvent<HTMLInputElement>) => {
    const file = target.files?.[0]
    if (!file) return
    const read = readClass(await file.text())
    target.value = ''
    if ('fault' in read) {
      setSaid({ isBad: true, words: T.notLoaded(file.name, read.fault.at, read.fault.expected) })
      return
    }
    change((all) => withImported(all, read.taken))
    setSaid({ isBad: false, words: T.loaded(classTitle(read.taken)) })
  }
  return (
    <section className="card" aria-labelledby="class-files">
      <h2 id="class-files">{T.files}</h2>
      <p className="remark">{T.fileHint}</p>
      <div className="row">
        {now && (
          <button
            type="button"
            onClick={() => download(T.file(fileWords(now.name)), 'application/json', classFile(now))}
          >
            {T.save}
          </button>
        )}
        <label className="field">
          <span>{T.load}</span>
          <input type="file" accept="application/json,.json" onChange={(event) => void load(event)} />
        </label>
      </div>
      <p role={said.isBad ? 'alert' : 'status'}>{said.words}</p>
    </section>
  )
}
