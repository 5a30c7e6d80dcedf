import type { ReactNode } from 'react'
import { useEffect, useRef, useState } from 'react'
import { useJob, useRole, useWeb } from '../../app/context.ts'
import type { Stop } from './stops.ts'
import { RAISED, STOPS, stopPath } from './stops.ts'

/** Always at hand: what stops all work, in two taps. */
export function StopButton(): ReactNode {
  const web = useWeb()
  const [asks, setAsks] = useState(false)
  return (
    <>
      <button
        type="button"
        className="stop"
        title={web['shell.stop-help']}
        onClick={() => setAsks(true)}
      >
        {web['shell.stop']}
      </button>
      {asks && <Which close={() => setAsks(false)} />}
    </>
  )
}

function Which({ close }: { readonly close: () => void }): ReactNode {
  const web = useWeb()
  const job = useJob()
  const role = useRole()
  const dialog = useRef<HTMLDialogElement>(null)
  useEffect(() => dialog.current?.showModal(), [])
  const raise = (stop: Stop): void => {
    void job.append({ do: 'set', path: stopPath(stop), value: RAISED })
    close()
  }
  return (
    <dialog ref={dialog} onClose={close} aria-labelledby="stop-title">
      <h2 id="stop-title">{web['stop.title']}</h2>
      <p>{web['stop.which']}</p>
      <ul className="plain">
        {STOPS.map(stop => (
          <li key={stop}>
            <button
              type="button"
              className="stop wide"
              disabled={role !== 'writes'}
              onClick={() => raise(stop)}
            >
              {web[`stop.${stop}`]}
            </button>
          </li>
        ))}
      </ul>
      <button type="button" onClick={close}>
        {web.cancel}
      </button>
    </dialog>
  )
}
