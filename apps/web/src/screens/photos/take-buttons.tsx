import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useEffect, useRef } from 'react'
import { useWeb } from '../../app/context.ts'
import type { Source, Take } from './use-take.ts'

/** The choosers of camera and files, which buttons open once everything is on the disk. */
export function Inputs({ take }: { readonly take: Take }): ReactNode {
  const web = useWeb()
  const { cameraInput, fileInput, cancelled, chosen } = take
  const latest = useRef(cancelled)
  latest.current = cancelled
  // React listens for this event at dialogs only.
  useEffect(() => {
    const inputs = [cameraInput.current, fileInput.current]
    const cancel = (): void => latest.current()
    for (const each of inputs) each?.addEventListener('cancel', cancel)
    return () => {
      for (const each of inputs) each?.removeEventListener('cancel', cancel)
    }
  }, [cameraInput, fileInput])
  const common = {
    type: 'file',
    hidden: true,
    accept: 'image/*',
    onChange: (event: { readonly target: HTMLInputElement }) => {
      const files = [...(event.target.files ?? [])]
      event.target.value = ''
      if (files.length > 0) void chosen(files)
    },
  } as const
  return (
    <>
      <input
        {...common}
        ref={cameraInput}
        capture="environment"
        aria-label={web['photos.camera']}
      />
      <input {...common} ref={fileInput} multiple aria-label={web['photos.file']} />
    </>
  )
}

/** The two ways to a photo: the camera, or a file. */
export function TakeButtons({
  of,
  name,
  waiting,
  take,
  isOff,
}: {
  readonly of: string
  readonly name: string
  readonly waiting?: string | undefined
  readonly take: Take
  readonly isOff: boolean
}): ReactNode {
  const web = useWeb()
  const sources: readonly Source[] = ['camera', 'file']
  return sources.map(source => (
    <button
      key={source}
      type="button"
      disabled={isOff}
      aria-label={say(web[`photos.${source}-of`], { name })}
      onClick={() => void take.begin(source, of, waiting).catch(() => undefined)}
    >
      {web[`photos.${source}`]}
    </button>
  ))
}
