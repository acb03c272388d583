import { useState } from 'react'
import { today } from '#web/format/day.ts'
import { announce } from '#web/parts/announcer.tsx'
import { focusSoon } from '#web/parts/focus-soon.ts'
import { newClass, withoutClass } from '#web/state/teach.ts'
import type { TeachClass } from '#web/state/teach.ts'
import { teach } from '#web/text/teach.ts'
import { ClassFiles } from './class-files.tsx'
import { ClassRecipes } from './class-recipes.tsx'
import { classTitle } from './class-title.ts'
import { RolePicker } from './role-picker.tsx'
import type { ClassStore } from './use-classes.ts'
import { dayText } from '#web/format/day.ts'

const T = teach.class

function OpenClass({ store: { all, now, change } }: { store: ClassStore }) {
  if (now === null) return <p role="status">{T.none}</p>
  return (
    <label className="field">
      <span>{T.open}</span>
      <select value={now.id} onChange={({ target }) => change((before) => ({ ...before, open: target.value }))}>
        {all.classes.map((one) => (
          <option key={one.id} value={one.id}>
            {T.option(classTitle(one), dayText(one.date))}
          </option>
        ))}
      </select>
    </label>
  )
}

function NameAndDate({ of, changeNow }: { of: TeachClass; changeNow: ClassStore['changeNow'] }) {
  return (
    <div className="row">
      <label className="field">
        <span>{T.name}</span>
        <input
          className="class-name"
          value={of.name}
          maxLength={200}
          onChange={({ target }) => changeNow((now) => ({ ...now, name: target.value }))}
        />
      </label>
      <label className="field">
        <span>{T.date}</span>
        <input
          type="date"
          value={of.date}
          onChange={({ target }) => changeNow((now) => ({ ...now, date: target.value }))}
        />
      </label>
    </div>
  )
}

/** A removed class can be put back for as long as the page is open. */
function useRemoved({ now, change }: ClassStore) {
  const [removed, setRemoved] = useState<TeachClass | null>(null)
  const remove = () => {
    if (now === null) return
    change((all) => withoutClass(all, now.id))
    setRemoved(now)
    focusSoon('.teach-removed button')
  }
  const putBack = () => {
    if (removed === null) return
    change(({ classes }) => ({ open: removed.id, classes: [...classes, removed] }))
    announce(T.isBack(classTitle(removed)))
    setRemoved(null)
    focusSoon('.class-name')
  }
  return { removed, remove, putBack, forget: () => setRemoved(null) }
}

/** Which class is worked on, what it is about, and the way in and out for it. */
export function ClassPart({ store }: { store: ClassStore }) {
  const { now, change, changeNow } = store
  const { removed, remove, putBack, forget } = useRemoved(store)
  const add = () => {
    change((all) => {
      const made = newClass(all.classes, '', today())
      return { open: made.id, classes: [...all.classes, made] }
    })
    forget() // its id may be given anew
    focusSoon('.class-name')
  }
  return (
    <>
      <section className="card" aria-label={T.open}>
        <div className="row">
          <OpenClass store={store} />
          <button type="button" onClick={add}>
            {T.add}
          </button>
          {now && (
            <button type="button" className="quiet" onClick={remove}>
              {T.remove}
            </button>
          )}
        </div>
        {removed && (
          <p className="teach-removed" role="status">
            {T.removed(classTitle(removed))}{' '}
            <button type="button" onClick={putBack}>
              {T.putBack}
            </button>
          </p>
        )}
        {now && <NameAndDate of={now} changeNow={changeNow} />}
      </section>
      {now && <ClassRecipes key={now.id} of={now} change={changeNow} />}
      {now && <RolePicker roles={now.roles} onRoles={(roles) => changeNow((one) => ({ ...one, roles }))} />}
      <ClassFiles store={store} />
    </>
  )
}
