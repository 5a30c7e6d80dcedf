import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { memo } from 'react'
import { useWeb } from '../../app/context.ts'
import { ColourName, Figures } from './details.tsx'
import type { Chosen, Net } from './net.ts'
import type { EndRow, WireRow } from './rows.ts'
import { isOff, shortName } from './rows.ts'
import { showDetails } from './show-details.ts'
import type { WiringActs } from './use-acts.ts'
import { useSheetText, useTellPlace } from './wiring-context.ts'

/** What the table shows, all of one moment. */
export interface Shown {
  readonly rows: readonly WireRow[]
  readonly chosen: Chosen | undefined
  readonly net: Net
  /** What runs, in words. */
  readonly mode: string
}

/**
 * Everything that the drawing says, a row a wire: who uses nothing but this can do it all.
 *
 * What it shows may lag behind by a blink, so that the drawing comes first.
 */
export const WireTable = memo(function WireTable({
  shown: { rows, chosen, net, mode },
  onlyOpen,
  labels,
  choose,
  tick,
  canWrite,
}: {
  readonly shown: Shown
  readonly onlyOpen: boolean
} & Pick<RowProps, 'labels' | 'choose' | 'tick' | 'canWrite'>): ReactNode {
  const web = useWeb()
  const listed = onlyOpen ? rows.filter(each => !each.isDone) : rows
  const traced = new Set(net.rows.map(each => each.wire.id))
  const columns = ['number', 'what', 'letters', 'size', 'from', 'to', 'ticks', 'on-it'] as const
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls is reached by keyboard
    <section className="scroll" aria-label={web['wiring.table']} tabIndex={0}>
      <table className="wires">
        <caption>
          {web['wiring.table']}. {say(web['wiring.mode-of-table'], { mode })}
        </caption>
        <thead>
          <tr>
            {columns.map(each => (
              <th key={each} scope="col">
                {web[`wiring.${each}`]}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {listed.map(each => (
            <Row
              key={each.wire.id}
              row={each}
              labels={labels}
              isChosen={chosen?.kind === 'wire' && chosen.id === each.wire.id}
              isTraced={traced.has(each.wire.id)}
              choose={choose}
              tick={tick}
              canWrite={canWrite}
            />
          ))}
        </tbody>
      </table>
      {listed.length === 0 && <p>{web['wiring.none-open']}</p>}
    </section>
  )
})

interface RowProps {
  readonly row: WireRow
  readonly labels: Readonly<Record<string, string>>
  readonly isChosen: boolean
  readonly isTraced: boolean
  readonly choose: (chosen: Chosen | undefined) => void
  readonly tick: WiringActs['tick']
  readonly canWrite: boolean
}

const Row = memo(function Row(props: RowProps): ReactNode {
  const { row, labels, isChosen, isTraced, choose, tick, canWrite } = props
  const web = useWeb()
  const tell = useSheetText(labels)
  const { wire, ends } = row
  const [first, second] = ends
  const name = tell(wire.functionText)
  return (
    <tr
      id={`wire-${wire.number}`}
      data-chosen={isChosen}
      data-traced={isTraced}
      data-done={row.isDone}
    >
      <th scope="row">
        <button
          type="button"
          aria-pressed={isChosen}
          aria-label={say(web['wiring.wire-named'], { number: wire.number, function: name })}
          onClick={() => {
            choose({ kind: 'wire', id: wire.id })
            showDetails()
          }}
        >
          {wire.number}
        </button>
      </th>
      <td>{name}</td>
      <td>
        <ColourName row={row} />
      </td>
      <td>{wire.size || '–'}</td>
      <td data-label={web['wiring.from']}>
        {second ? first && <EndPlace end={first} withPanel /> : tell(row.title)}
      </td>
      <td data-label={web['wiring.to']}>
        {second ? (
          <EndPlace end={second} withPanel />
        ) : (
          first && <EndPlace end={first} withPanel={first.panel !== 'box'} />
        )}
      </td>
      <td>
        <div className="ticks">
          {ends.map(each => (
            <Tick key={each.end} row={row} end={each} tick={tick} canWrite={canWrite} />
          ))}
        </div>
      </td>
      <td>
        <OnIt ends={ends} />
      </td>
    </tr>
  )
})

function EndPlace({
  end,
  withPanel,
}: {
  readonly end: EndRow
  readonly withPanel: boolean
}): ReactNode {
  const web = useWeb()
  const tellPlace = useTellPlace()
  const place = isOff(end.at) ? tellPlace(end.at) : shortName(end.at)
  return (
    <>
      {withPanel && `${end.panelLabel}: `}
      <strong>{place}</strong>
      {end.isMoved && (
        <span className="look">
          {say(web['wiring.planned-at'], { at: tellPlace(end.planned) })}
        </span>
      )}
    </>
  )
}

function Tick({
  row,
  end,
  tick,
  canWrite,
}: {
  readonly row: WireRow
  readonly end: EndRow
  readonly tick: WiringActs['tick']
  readonly canWrite: boolean
}): ReactNode {
  const web = useWeb()
  const tellPlace = useTellPlace()
  return (
    <label className="chip">
      <input
        type="checkbox"
        checked={end.isTicked}
        disabled={!canWrite}
        aria-label={say(web['wiring.tick-end'], {
          number: row.wire.number,
          at: `${end.panelLabel} ${tellPlace(end.at)}`,
        })}
        onChange={event => tick(end.end, event.target.checked)}
      />
      <span>{isOff(end.at) ? '–' : shortName(end.at)}</span>
    </label>
  )
}

/** What is on a wire: at the end where it is most. */
function OnIt({ ends }: { readonly ends: readonly EndRow[] }): ReactNode {
  const web = useWeb()
  const points = ends.flatMap(each => each.now ?? [])
  const [first] = points
  if (!first) return '–'
  const most = points.reduce((a, b) => (b.volts > a.volts ? b : a), first)
  return (
    <>
      <Figures point={most} />
      {ends.some(each => each.isLiveWhenOff) && (
        <span className="stays">{web['wiring.live-when-off']}</span>
      )}
    </>
  )
}
