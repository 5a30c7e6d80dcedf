import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useWeb } from '../../app/context.ts'
import { Chips } from '../../parts/chips.tsx'
import { useWiring } from './wiring-context.ts'

/** A jumper: where it really sits, one press a position, judged at once. */
export function JumperDetails({ id }: { readonly id: string }): ReactNode {
  const web = useWeb()
  const { wired, taken, acts } = useWiring()
  const jumper = wired.sheet.jumpers.find(each => each.id === id)
  if (!jumper) return undefined
  const at = taken.landing.jumpers[id] ?? jumper.from
  const planned = taken.planned.jumpers[id] ?? jumper.from
  const labelOf = (position: string): string =>
    jumper.positions.find(each => each.id === position)?.label ?? position
  return (
    <>
      <Chips
        legend={say(web['wiring.jumper-where'], { jumper: id })}
        options={jumper.positions.map(each => ({ value: each.id, label: each.label }))}
        chosen={at}
        choose={to => acts.setJumper(id, to)}
        isDisabled={!acts.canWrite}
      />
      {at !== planned && (
        <>
          <p className="look">{say(web['wiring.planned-at'], { at: labelOf(planned) })}</p>
          <button
            type="button"
            disabled={!acts.canWrite}
            onClick={() => acts.setJumper(id, planned)}
          >
            {say(web['wiring.back-to-plan'], { at: labelOf(planned) })}
          </button>
        </>
      )}
    </>
  )
}
