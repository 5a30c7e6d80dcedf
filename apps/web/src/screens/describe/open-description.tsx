import type { LocatedDiagnostic } from '@tubwright/formats'
import type { Words } from '@tubwright/words'
import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useRef, useState } from 'react'
import { useLocation } from 'wouter'
import { useApp, useRole, useWeb } from '../../app/context.ts'
import { kindOf, putBeside } from './description.ts'

const SIZE_MAX = 1_000_000 // [bytes] a longer text is no description

const whyOf = (words: Words, [first]: readonly LocatedDiagnostic[]): string =>
  first ? `${first.line}:${first.column}: ${words.tellDiagnostic(first)}` : ''

/** Puts a description from a file on the shelf, beside one of its name if there is one. */
export function OpenDescription(): ReactNode {
  const { space, core, words } = useApp()
  const web = useWeb()
  const canWrite = useRole() === 'writes'
  const [, go] = useLocation()
  const input = useRef<HTMLInputElement>(null)
  const [refused, setRefused] = useState<string>()
  const refuse = (why: string): void => setRefused(say(web['describe.refused'], { why }))
  const open = async (file: File): Promise<void> => {
    setRefused(undefined)
    if (file.size > SIZE_MAX) return refuse(web['describe.too-large'])
    const text = await file.text()
    const { document, diagnostics } = await core.ask('readYaml', { text })
    const kind = kindOf(document?.['schema'])
    const id = document?.['id']
    if (!kind || typeof id !== 'string')
      return refuse(whyOf(words, diagnostics) || web['describe.no-description'])
    const at = await putBeside(space, { kind, id }, text)
    if (at === undefined) return refuse(say(web['describe.taken'], { id }))
    go(`/describe/${kind}/${at}`)
  }
  return (
    <>
      <button type="button" disabled={!canWrite} onClick={() => input.current?.click()}>
        {web['describe.open-file']}
      </button>
      <input
        ref={input}
        type="file"
        hidden
        aria-label={web['describe.open-file']}
        accept=".yaml,.yml,text/yaml"
        onChange={event => {
          const [file] = event.target.files ?? []
          event.target.value = ''
          if (file) void open(file)
        }}
      />
      {refused && (
        <p className="wrong" role="alert">
          {refused}
        </p>
      )}
    </>
  )
}
