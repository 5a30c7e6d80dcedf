import type { ReactNode, RefObject } from 'react'
import { useEffect, useRef } from 'react'
import type { EditorHandle, EditorOptions } from './editor-view.ts'
import { openEditor } from './editor-view.ts'

interface EditorProps extends EditorOptions {
  readonly handle: RefObject<EditorHandle | undefined>
  readonly opened: () => void
}

/** The editor, opened once: what changes in it afterwards goes through its handle. */
export function Editor({ handle, opened, ...options }: EditorProps): ReactNode {
  const host = useRef<HTMLDivElement>(null)
  const first = useRef({ options, opened })
  useEffect(() => {
    if (!host.current) return
    const own = openEditor(host.current, first.current.options)
    handle.current = own
    first.current.opened()
    return () => {
      handle.current = undefined
      own.close()
    }
  }, [handle])
  return <div className="editor" ref={host} />
}
