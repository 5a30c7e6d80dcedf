import { figure, say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useWeb } from '../../app/context.ts'
import type { NotTaken } from './shrink.ts'
import type { Taking } from './use-take.ts'

type Web = ReturnType<typeof useWeb>

const SENTENCES = {
  bytes: 'photos.refused-bytes',
  pixels: 'photos.refused-pixels',
  drawing: 'photos.refused-drawing',
  kind: 'photos.refused-kind',
  broken: 'photos.refused-broken',
  lies: 'photos.refused-lies',
  undecoded: 'photos.refused-undecoded',
  heic: 'photos.refused-heic',
  fault: 'photos.refused-fault',
} as const satisfies Readonly<Record<NotTaken['why'], keyof Web>>

const refusal = (web: Web, { why, size = '' }: NotTaken): string =>
  say(web[SENTENCES[why]], { size, why: size })

function told(web: Web, taking: Exclude<Taking, { kind: 'refused' }>): string {
  if (taking.kind === 'kept') {
    const { size, width, height } = taking
    return say(web['photos.kept'], {
      size: figure(Math.round(size / 1000)),
      width: String(width),
      height: String(height),
    })
  }
  const { number, count } = taking
  return count === 1
    ? web['photos.working']
    : say(web['photos.working-of'], { number: String(number), count: String(count) })
}

/** What goes on with the photo of a slot, or why it was not taken. */
export function TakingLine({ taking }: { readonly taking: Taking | undefined }): ReactNode {
  const web = useWeb()
  if (taking?.kind === 'refused')
    return (
      <p className="wrong" role="alert">
        {refusal(web, taking.refused)}
      </p>
    )
  // Always there: what is put into it is then read out.
  return (
    <p className="quiet taking" role="status">
      {taking && told(web, taking)}
    </p>
  )
}
