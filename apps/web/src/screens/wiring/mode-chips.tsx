import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useWeb } from '../../app/context.ts'
import type { Mode } from './modes.ts'
import { ALL_OFF, commandsIn, switched } from './modes.ts'
import { useWiring } from './wiring-context.ts'

/** What runs: everything off first, then each command of the box, as far as the box lets them be together. */
export function ModeChips({
  mode,
  setMode,
}: {
  readonly mode: Mode
  readonly setMode: (mode: Mode) => void
}): ReactNode {
  const web = useWeb()
  const { wired, live } = useWiring()
  const { states, commandLabels } = wired
  const labelOf = (command: string): string => commandLabels[command] ?? command
  const trips = live?.trip ? [web['wiring.tripped']] : []
  return (
    <fieldset className="modes">
      <legend>{web['wiring.mode']}</legend>
      <div className="chips">
        <label className="chip">
          <input type="checkbox" checked={mode.length === 0} onChange={() => setMode(ALL_OFF)} />
          <span>{web['wiring.all-off']}</span>
        </label>
        {commandsIn(states, Object.keys(commandLabels)).map(command => (
          <label key={command} className="chip">
            <input
              type="checkbox"
              checked={mode.includes(command)}
              onChange={() => setMode(switched(states, mode, command))}
            />
            <span>{labelOf(command)}</span>
          </label>
        ))}
      </div>
      <p className="hint" role="status">
        {[
          mode.length === 0
            ? web['wiring.all-off']
            : say(web['wiring.running'], { commands: mode.map(labelOf).join(', ') }),
          ...trips,
        ].join('. ')}
      </p>
      <p className="hint">{web['wiring.mode-hint']}</p>
    </fieldset>
  )
}
