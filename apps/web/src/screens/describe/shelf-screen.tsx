import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { lazy, Suspense, useState } from 'react'
import { useApp, useRole, useWeb } from '../../app/context.ts'
import { Frame, Screen, Working } from '../../app/frame.tsx'
import type { ShelfText } from '../../store/database.ts'
import '../../style/describe.css'
import { isSame } from './description.ts'
import { OpenDescription } from './open-description.tsx'
import { ShelfList } from './shelf-list.tsx'
import type { ShelfEntry } from './use-shelf.ts'
import { useShelfEntries } from './use-shelf.ts'

const NewBox = lazy(async () => ({ default: (await import('./new-box.tsx')).NewBox }))

const ENOUGH_TO_SEARCH = 4

const fits = ({ label, id, maker }: ShelfEntry, wanted: string): boolean => {
  const all = `${label} ${id} ${maker}`.toLocaleLowerCase()
  return wanted
    .toLocaleLowerCase()
    .split(/\s+/u)
    .every(word => all.includes(word))
}

/** Everything that a tub can be matched with: boxes and supply devices, one's own and given ones. */
export function ShelfScreen(): ReactNode {
  const web = useWeb()
  const entries = useShelfEntries()
  return (
    <Frame>
      <Screen heading={web['shell.shelf']}>
        <p>{web['describe.shelf-help']}</p>
        {entries ? <Shelf entries={entries} /> : <Working />}
      </Screen>
    </Frame>
  )
}

function Shelf({ entries }: { readonly entries: readonly ShelfEntry[] }): ReactNode {
  const web = useWeb()
  const canWrite = useRole() === 'writes'
  const [isNew, setIsNew] = useState(false)
  const [wanted, setWanted] = useState('')
  const [off, setOff] = useState<Off>()
  const takeOff = useTakeOff(setOff)
  const shown = entries.filter(each => fits(each, wanted))
  const boxes = shown.filter(each => each.kind === 'control-box')
  const devices = shown.filter(each => each.kind === 'supply-device')
  const taken = entries.filter(each => each.kind === 'control-box').map(each => each.id)
  return (
    <>
      {isNew ? (
        <Suspense fallback={<Working />}>
          <NewBox taken={taken} close={() => setIsNew(false)} />
        </Suspense>
      ) : (
        <div className="row">
          <button
            type="button"
            className="main"
            disabled={!canWrite}
            onClick={() => setIsNew(true)}
          >
            {web['describe.new']}
          </button>
          <OpenDescription />
        </div>
      )}
      {off && <TakenOff off={off} forget={() => setOff(undefined)} />}
      {entries.length >= ENOUGH_TO_SEARCH && <Search wanted={wanted} set={setWanted} />}
      {entries.length > 0 && shown.length === 0 && <p>{web['describe.none-found']}</p>}
      <List heading={web['describe.boxes']} entries={boxes} takeOff={takeOff}>
        {wanted === '' && <p>{web['describe.no-boxes']}</p>}
      </List>
      <List heading={web['describe.devices']} entries={devices} takeOff={takeOff} />
    </>
  )
}

/** Entries under their heading; what else there is to say where there are none. */
function List({
  heading,
  entries,
  takeOff,
  children,
}: {
  readonly heading: string
  readonly entries: readonly ShelfEntry[]
  readonly takeOff: (entry: ShelfEntry) => Promise<void>
  readonly children?: ReactNode
}): ReactNode {
  if (entries.length === 0 && !children) return undefined
  return (
    <>
      <h2>{heading}</h2>
      {entries.length === 0 && children}
      <ShelfList entries={entries} takeOff={takeOff} />
    </>
  )
}

function Search({
  wanted,
  set,
}: {
  readonly wanted: string
  readonly set: (wanted: string) => void
}): ReactNode {
  const web = useWeb()
  return (
    <div className="field shelf-search">
      <label className="label" htmlFor="shelf-search">
        {web['describe.search']}
      </label>
      <input
        id="shelf-search"
        type="search"
        value={wanted}
        onChange={event => set(event.target.value)}
      />
    </div>
  )
}

/** What was taken off last: it comes back with one tap. */
interface Off {
  readonly label: string
  readonly stored: ShelfText
}

function useTakeOff(tell: (off: Off) => void): (entry: ShelfEntry) => Promise<void> {
  const { space } = useApp()
  return async ({ kind, id, label }) => {
    const stored = (await space.shelf()).find(each => isSame(each, { kind, id }))
    if (!stored) return
    await space.takeOffShelf(kind, id)
    tell({ label, stored })
  }
}

function TakenOff({
  off: { label, stored },
  forget,
}: {
  readonly off: Off
  readonly forget: () => void
}): ReactNode {
  const { space } = useApp()
  const web = useWeb()
  const back = async (): Promise<void> => {
    await space.putOnShelf(stored)
    forget()
  }
  return (
    <div className="card row" role="status">
      <span>{say(web['describe.taken-off'], { label })}</span>
      <button type="button" onClick={() => void back()}>
        {web.undo}
      </button>
    </div>
  )
}
