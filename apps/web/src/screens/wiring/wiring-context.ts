import type { LiveState, SheetText } from '@tubwright/core'
import { sheetWords, textOf } from '@tubwright/documents'
import { say } from '@tubwright/words'
import { createContext, useContext, useMemo } from 'react'
import { useApp, useWeb } from '../../app/context.ts'
import type { Wired } from '../../ask/protocol.ts'
import type { Chosen, Net } from './net.ts'
import type { Tell, WireRow } from './rows.ts'
import { isOff, shortName } from './rows.ts'
import type { WiringActs } from './use-acts.ts'
import type { Taken } from './use-landing.ts'

/** What every part of the screen has at hand. */
export interface Wiring {
  readonly wired: Wired
  readonly taken: Taken
  readonly rows: readonly WireRow[]
  readonly panel: string
  /** In the mode that is looked at. */
  readonly live: LiveState | undefined
  readonly chosen: Chosen | undefined
  readonly net: Net
  readonly choose: (chosen: Chosen | undefined) => void
  readonly acts: WiringActs
}

const WiringContext = createContext<Wiring | undefined>(undefined)
export const WiringProvider = WiringContext.Provider

export function useWiring(): Wiring {
  const wiring = useContext(WiringContext)
  if (!wiring) throw new Error('outside of the wiring screen')
  return wiring
}

/** Makes a text of the sheet readable, with the names that the box gives its commands. */
export function useSheetText(labels: Wired['commandLabels']): (text: SheetText) => string {
  const { words } = useApp()
  return useMemo(() => {
    const spoken = sheetWords(words, id => labels[id] ?? id)
    return text => textOf(text, spoken)
  }, [words, labels])
}

/** Figures and the words that stand with them. */
export function useTell(): Tell {
  const web = useWeb()
  return useMemo(
    () => ({
      amps: amps => say(web['wiring.amps'], { amps }),
      // What insulation and a neutral's own resistance leave is nothing that anybody needs to read.
      volts: volts => say(web['wiring.volts'], { volts: volts < 1 ? 0 : volts }),
      liveWhenOff: web['wiring.live-when-off'],
    }),
    [web],
  )
}

/** How a place is called: a terminal by its name on the board, or that it is none. */
export function useTellPlace(): (at: string) => string {
  const web = useWeb()
  return at => {
    if (!isOff(at)) return shortName(at)
    return at === 'insulated' ? web['wiring.insulated'] : web['wiring.loose']
  }
}
