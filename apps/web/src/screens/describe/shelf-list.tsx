import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useId, useState } from 'react'
import { Link } from 'wouter'
import { useApp, useRole, useWeb } from '../../app/context.ts'
import type { ShelfEntry } from './use-shelf.ts'

type TakeOff = (entry: ShelfEntry) => Promise<void>

/** Descriptions, each with what can be done with it. */
export function ShelfList({
  entries,
  takeOff,
}: {
  readonly entries: readonly ShelfEntry[]
  readonly takeOff: TakeOff
}): ReactNode {
  return (
    <ul className="plain">
      {entries.map(each => (
        <li key={`${each.kind}/${each.id}`} className="card shelf-entry">
          <ShelfCard entry={each} takeOff={takeOff} />
        </li>
      ))}
    </ul>
  )
}

async function saveText({ id, text }: ShelfEntry): Promise<void> {
  const { saveAs } = await import('../jobs/job-files.ts')
  saveAs(`${id}.yaml`, text, 'text/yaml')
}

function ShelfCard({
  entry,
  takeOff,
}: {
  readonly entry: ShelfEntry
  readonly takeOff: TakeOff
}): ReactNode {
  const web = useWeb()
  const canWrite = useRole() === 'writes'
  const { kind, id, label, maker, isGiven, problems } = entry
  const about = (does: string) => say(web['describe.does-with'], { does, label })
  return (
    <>
      <p className="shelf-name">
        <Link className="title" href={`/describe/${kind}/${id}`}>
          {label}
        </Link>{' '}
        <span className="quiet">{[id, maker].filter(each => each !== '').join(' · ')}</span>{' '}
        <span className="given">{web[isGiven ? 'describe.given' : 'describe.own']}</span>
      </p>
      {problems > 0 && (
        <p className="wrong">{say(web['describe.not-usable'], { count: String(problems) })}</p>
      )}
      <div className="row">
        {kind === 'control-box' && <Stock entry={entry} />}
        <button
          type="button"
          aria-label={about(web['describe.save-file'])}
          onClick={() => void saveText(entry)}
        >
          {web['describe.save-file']}
        </button>
        {!isGiven && (
          <button
            type="button"
            aria-label={about(web['describe.take-off'])}
            disabled={!canWrite}
            onClick={() => void takeOff(entry)}
          >
            {web['describe.take-off']}
          </button>
        )}
      </div>
    </>
  )
}

const COUNT_MAX = 9999

const countIn = (typed: string): number | undefined =>
  /^\d{1,4}$/u.test(typed.trim()) ? Math.min(COUNT_MAX, Number(typed)) : undefined

/** How many lie in stock. Beside a given box it is kept apart: its text stays as it came. */
function Stock({ entry }: { readonly entry: ShelfEntry }): ReactNode {
  const { space } = useApp()
  const web = useWeb()
  const canWrite = useRole() === 'writes'
  const field = useId()
  const [typed, setTyped] = useState<string>()
  const { kind, id, text, isGiven, inStock } = entry
  const leave = async (): Promise<void> => {
    const count = countIn(typed ?? '')
    setTyped(undefined)
    const isCleared = typed?.trim() === ''
    if (typed === undefined || (count === undefined && !isCleared) || count === inStock) return
    await space.putOnShelf({
      kind,
      id,
      text,
      at: space.now(),
      ...(isGiven ? { isGiven } : {}),
      ...(count === undefined ? {} : { inStock: count }),
    })
  }
  return (
    <span className="stock">
      <label htmlFor={field}>{web['describe.in-stock']}</label>
      <input
        id={field}
        type="text"
        inputMode="numeric"
        autoComplete="off"
        maxLength={4}
        disabled={!canWrite}
        aria-label={say(web['describe.in-stock-of'], { label: entry.label })}
        value={typed ?? (inStock === undefined ? '' : String(inStock))}
        onChange={event => setTyped(event.target.value)}
        onBlur={() => void leave()}
        onKeyDown={event => event.key === 'Enter' && void leave()}
      />
    </span>
  )
}
