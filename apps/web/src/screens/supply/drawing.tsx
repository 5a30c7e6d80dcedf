import type { ReactNode } from 'react'
import { useEffect, useRef } from 'react'
import { ownMarkup } from '../../offline/index.ts'

/** A drawing in a window that scrolls; what it shows stands below it in words too. */
export function Drawing({ name, svg }: { readonly name: string; readonly svg: string }): ReactNode {
  const at = useRef<HTMLDivElement>(null)
  useEffect(() => {
    if (!at.current) return
    try {
      at.current.innerHTML = ownMarkup(svg)
    } catch {
      // Its words look like markup that acts: the list below says the same.
      at.current.replaceChildren()
    }
  }, [svg])
  return (
    <section
      className="drawing-window"
      aria-label={name}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so the keyboard has to reach it
      tabIndex={0}
    >
      <div ref={at} />
    </section>
  )
}
