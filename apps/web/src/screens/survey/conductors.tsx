import type { Act } from '@tubwright/records'
import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useState } from 'react'
import { useWeb } from '../../app/context.ts'
import type { DeviceChoice } from '../../ask/protocol.ts'
import { Chips } from '../../parts/chips.tsx'
import type { Piece, Wire } from './joints.ts'
import { carriedBy } from './joints.ts'
import { useWireName } from './option-name.ts'
import { setsOf } from './supply-group.tsx'
import { inRecord, useSurvey } from './use-survey.ts'

/** Which wires a cable brings. */
export function Conductors({
  piece,
  question,
}: {
  readonly piece: Piece
  readonly question: string
}): ReactNode {
  const survey = useSurvey()
  const nameOf = useWireName()
  const has = piece.conductors.map(each => String(each.function ?? each.id))
  const sets = setsOf(survey.value(['supply', 'system']))
  const list = ['supply', 'cables', piece.id, 'conductors']
  const take = (set: readonly string[]): void => {
    const gone = piece.conductors.filter(each => !set.includes(String(each.function)))
    const come = set.filter(each => !has.includes(each))
    survey.act(
      ...gone.map((each): Act => ({ do: 'withdraw', path: inRecord([...list, each.id]) })),
      ...come.flatMap((each): readonly Act[] => [
        survey.bring([...list, each]),
        { do: 'set', path: inRecord([...list, each, 'function']), value: each },
      ]),
    )
  }
  return (
    <Chips
      legend={question}
      options={sets.map(set => ({ value: set.join(), label: set.map(nameOf).join(' · ') }))}
      chosen={sets
        .find(set => set.length === has.length && set.every(each => has.includes(each)))
        ?.join()}
      choose={chosen => take(chosen.split(','))}
      isDisabled={!survey.canWrite}
    />
  )
}

/** Where each wire sits on the device at one end of its cable: as it is marked there, or each said. */
export function Landed({
  piece,
  end,
  device,
  question,
}: {
  readonly piece: Piece
  readonly end: 'from' | 'to'
  readonly device: DeviceChoice
  readonly question: string
}): ReactNode {
  const web = useWeb()
  const survey = useSurvey()
  const wireName = useWireName()
  const [saysEach, setSaysEach] = useState(false)
  const { conductors } = piece
  const list = ['supply', 'cables', piece.id, 'conductors']
  const marked = end === 'from' ? device.lands : device.arrives
  const pathOf = (id: string) => inRecord([...list, id, end])
  const markedFor = (wire: Wire) => marked[carriedBy(wire)]
  const nameOf = (wire: Wire) => wireName(String(wire.function))
  const isAsMarked = conductors.every(
    each => each[end] !== undefined && each[end] === markedFor(each),
  )
  const asMarked = (): void => {
    setSaysEach(false)
    survey.act(
      ...conductors.flatMap((each): readonly Act[] => {
        const terminal = markedFor(each)
        return terminal === undefined ? [] : [{ do: 'set', path: pathOf(each.id), value: terminal }]
      }),
    )
  }
  /** What was said of all of them is taken back: each is open until it is said. */
  const sayEach = (): void => {
    setSaysEach(true)
    survey.act(
      ...conductors
        .filter(each => each[end] !== undefined)
        .map((each): Act => ({ do: 'clear', path: pathOf(each.id) })),
    )
  }
  const landed = conductors.map(each => `${nameOf(each)} ${markedFor(each) ?? '–'}`).join(', ')
  const isSaid = conductors.some(each => each[end] !== undefined)
  return (
    <div data-field={[...list, '*', end].join('/')}>
      <Chips
        legend={question}
        options={[
          { value: 'yes', label: say(web['survey.as-marked-yes'], { landed }) },
          { value: 'no', label: web['survey.as-marked-no'] },
        ]}
        chosen={isAsMarked && !saysEach ? 'yes' : saysEach ? 'no' : undefined}
        choose={chosen => (chosen === 'yes' ? asMarked() : sayEach())}
        isDisabled={!survey.canWrite}
      />
      {(saysEach || (!isAsMarked && isSaid)) &&
        conductors.map(each => (
          <Chips
            key={each.id}
            legend={say(web['survey.lands-at'], { wire: nameOf(each) })}
            options={device.terminals.map(({ id, label }) => ({
              value: id,
              label: `${id} · ${label}`,
            }))}
            chosen={each[end] === undefined ? undefined : String(each[end])}
            choose={terminal => survey.set([...list, each.id, end], terminal)}
            isDisabled={!survey.canWrite}
          />
        ))}
    </div>
  )
}
