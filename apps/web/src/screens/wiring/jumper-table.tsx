import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useWeb } from '../../app/context.ts'
import { showDetails } from './show-details.ts'
import { useWiring } from './wiring-context.ts'

/** Every jumper of the box: where it sits, where the plan has it. */
export function JumperTable(): ReactNode {
  const web = useWeb()
  const { wired, taken, chosen, choose } = useWiring()
  const { jumpers } = wired.sheet
  if (jumpers.length === 0) return undefined
  return (
    <>
      <h2>{web['wiring.jumpers']}</h2>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls is reached by keyboard */}
      <section className="scroll" aria-label={web['wiring.jumpers-table']} tabIndex={0}>
        <table className="jumpers">
          <caption>{web['wiring.jumpers-table']}</caption>
          <thead>
            <tr>
              <th scope="col">{web['wiring.jumper']}</th>
              <th scope="col">{web['wiring.position']}</th>
              <th scope="col">{web['wiring.jumper-plan']}</th>
            </tr>
          </thead>
          <tbody>
            {jumpers.map(jumper => {
              const at = taken.landing.jumpers[jumper.id] ?? jumper.from
              const planned = taken.planned.jumpers[jumper.id] ?? jumper.from
              const labelOf = (id: string) =>
                jumper.positions.find(each => each.id === id)?.label ?? id
              return (
                <tr key={jumper.id} id={`jumper-${jumper.id}`}>
                  <th scope="row">
                    <button
                      type="button"
                      aria-pressed={chosen?.kind === 'jumper' && chosen.id === jumper.id}
                      aria-label={say(web['wiring.jumper-named'], {
                        jumper: jumper.id,
                        label: jumper.label,
                      })}
                      onClick={() => {
                        choose({ kind: 'jumper', id: jumper.id })
                        showDetails()
                      }}
                    >
                      {jumper.id}
                    </button>
                  </th>
                  <td>
                    <strong>{labelOf(at)}</strong>
                    {at !== planned && (
                      <span className="look">
                        {say(web['wiring.planned-at'], { at: labelOf(planned) })}
                      </span>
                    )}
                  </td>
                  <td>{labelOf(planned)}</td>
                </tr>
              )
            })}
          </tbody>
        </table>
      </section>
    </>
  )
}
