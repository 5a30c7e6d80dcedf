import type { ReactNode } from 'react'
import { useEffect, useRef, useState } from 'react'
import { useApp, useJob, useWeb } from '../../app/context.ts'
import type { Stop } from '../../store/stops.ts'
import { RAISED, STOPS, stopActs } from '../../store/stops.ts'

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
  const { writer } = useApp().space
  const [raised, setRaised] = useState<Stop>()
  const dialog = useRef<HTMLDialogElement>(null)
  useEffect(() => dialog.current?.showModal(), [])
  /** What to do is shown at once; the entry follows as soon as this tab may write. */
  const raise = async (stop: Stop): Promise<void> => {
    setRaised(stop)
    await writer.toWrite()
    await job.append(...stopActs(job.view.state, stop, RAISED)).catch(() => undefined)
    close()
  }
  return (
    <dialog ref={dialog} onClose={close} aria-labelledby="stop-title">
      <h2 id="stop-title">{web['stop.title']}</h2>
      {raised && <p className="lead">{web[`stop.do-${raised}`]}</p>}
      <p>{web['stop.which']}</p>
      <ul className="plain">
        {STOPS.map(stop => (
          <li key={stop}>
            <button type="button" className="stop wide" onClick={() => void raise(stop)}>
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
