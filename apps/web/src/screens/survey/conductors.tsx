import type { Act } from '@tubwright/records'
import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useState } from 'react'
import { useWeb } from '../../app/context.ts'
import type { DeviceChoice } from '../../ask/protocol.ts'
import { Chips } from '../../parts/chips.tsx'
import { useWireName } from './option-name.ts'
import type { Piece } from './run.ts'
import { setsOf } from './supply-group.tsx'
import { inRecord, useSurvey } from './use-survey.ts'

/** Which wires a cable brings, and whether each sits where the device marks it. */
export function Conductors({
  piece,
  device,
  question,
}: {
  readonly piece: Piece
  /** Where the cable begins, once that is known. */
  readonly device: DeviceChoice | undefined
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
    <>
      <Chips
        legend={question}
        options={sets.map(set => ({ value: set.join(), label: set.map(nameOf).join(' · ') }))}
        chosen={sets
          .find(set => set.length === has.length && set.every(each => has.includes(each)))
          ?.join()}
        choose={chosen => take(chosen.split(','))}
        isDisabled={!survey.canWrite}
      />
      {piece.conductors.length > 0 && device && <Landed piece={piece} device={device} />}
    </>
  )
}

/** Where each wire sits on the device that it comes from. */
function Landed({
  piece,
  device: { lands, terminals },
}: {
  readonly piece: Piece
  readonly device: DeviceChoice
}): ReactNode {
  const web = useWeb()
  const survey = useSurvey()
  const wireName = useWireName()
  const [saysEach, setSaysEach] = useState(false)
  const { conductors } = piece
  const list = ['supply', 'cables', piece.id, 'conductors']
  const fromOf = (id: string) => inRecord([...list, id, 'from'])
  const markedFor = (wire: (typeof conductors)[number]) => lands[String(wire.function)]
  const nameOf = (wire: (typeof conductors)[number]) => wireName(String(wire.function))
  const isAsMarked = conductors.every(
    each => each.from !== undefined && each.from === markedFor(each),
  )
  const asMarked = (): void => {
    setSaysEach(false)
    survey.act(
      ...conductors.flatMap((each): readonly Act[] => {
        const terminal = markedFor(each)
        return terminal === undefined ? [] : [{ do: 'set', path: fromOf(each.id), value: terminal }]
      }),
    )
  }
  /** What was said of all of them is taken back: each is open until it is said. */
  const sayEach = (): void => {
    setSaysEach(true)
    survey.act(
      ...conductors
        .filter(each => each.from !== undefined)
        .map((each): Act => ({ do: 'clear', path: fromOf(each.id) })),
    )
  }
  const landed = conductors.map(each => `${nameOf(each)} ${markedFor(each) ?? '–'}`).join(', ')
  const isSaid = conductors.some(each => each.from !== undefined)
  return (
    <>
      <Chips
        legend={web['survey.as-marked']}
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
            options={terminals.map(({ id, label }) => ({ value: id, label: `${id} · ${label}` }))}
            chosen={each.from === undefined ? undefined : String(each.from)}
            choose={terminal => survey.set([...list, each.id, 'from'], terminal)}
            isDisabled={!survey.canWrite}
          />
        ))}
    </>
  )
}
