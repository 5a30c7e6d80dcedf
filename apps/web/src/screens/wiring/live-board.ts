import { ownMarkup } from '../../offline/trusted.ts'
import { drawMarks, isReadable, letterSize } from './draw-marks.ts'
import { Gestures } from './gestures.ts'
import type { Hit } from './nearest.ts'
import { nearestHit } from './nearest.ts'
import type { Charge } from './place-marks.ts'
import { around } from './place-marks.ts'
import type { Shapes } from './shapes.ts'
import { shapesOf } from './shapes.ts'
import type { Box, Point, Size, View } from './view.ts'
import {
  fitted,
  isSameView,
  keptIn,
  panned,
  scaledAbout,
  scaleWithin,
  shiftToShow,
  toPaper,
} from './view.ts'

/** What is emphasised: a whole net, and in it what was chosen. */
export interface Trace {
  readonly numbers: ReadonlySet<number>
  readonly terminals: ReadonlySet<string>
  readonly chosen?: Hit
}

const NOTHING: Trace = { numbers: new Set(), terminals: new Set() }
const MM = 96 / 25.4 // [px] a millimetre of the drawing before it is scaled
const REACH = 22 // [px] a finger may be off: every target is 44 px wide
const SETTLED = 160 // [ms] after the last movement the drawing is made sharp again

/**
 * A board drawing in its window: moved, scaled, tapped and written on without a component per wire.
 *
 * One transform moves it. While a gesture lasts it is a layer of its own that is only moved and
 * stretched; once it rests, it is drawn afresh, sharp.
 */
export class LiveBoard {
  readonly #window: HTMLElement
  readonly #paper: HTMLElement
  readonly #gestures: Gestures
  readonly #watch: ResizeObserver
  readonly #tapped: (hit: Hit) => void
  #drawn = ''
  #shapes: Shapes | undefined
  #view: View = { scale: 1, x: 0, y: 0 }
  #isFitted = true
  #trace: Trace = NOTHING
  #charges: readonly Charge[] = []
  #frame = 0
  #rest = 0
  /** Of the letters that were last written [mm], and the part of the paper they were written on. */
  #letters = 0
  #written: Box | undefined

  constructor(window: HTMLElement, paper: HTMLElement, tapped: (hit: Hit) => void) {
    this.#window = window
    this.#paper = paper
    this.#tapped = tapped
    this.#gestures = new Gestures(window, {
      view: () => this.#view,
      allowed: scale => this.#allowed(scale),
      begin: () => this.#lift(),
      show: view => this.#show(view),
      tap: at => this.#tap(at),
    })
    this.#watch = new ResizeObserver(() => this.#resized())
    this.#watch.observe(window)
  }

  /** Puts a drawing into the window; one that is the same stays, and so does the view of it. */
  draw(svg: string): void {
    if (svg === this.#drawn) return
    const before = this.#shapes
    this.#drawn = svg
    this.#paper.innerHTML = ownMarkup(svg)
    const root = this.#paper.querySelector('svg')
    this.#shapes = root ? shapesOf(root) : undefined
    const isAsLarge =
      before?.width === this.#shapes?.width && before?.height === this.#shapes?.height
    if (this.#isFitted || !isAsLarge) this.fit()
    this.#emphasise()
    this.#mark()
  }

  trace(trace: Trace): void {
    this.#trace = trace
    this.#emphasise()
    this.#mark()
  }

  charge(charges: readonly Charge[]): void {
    this.#charges = charges
    this.#mark()
  }

  fit(): void {
    if (!this.#shapes) return
    this.#show(fitted(this.#shapes, this.#room()), true)
  }

  /** Scales about the middle of the window. */
  scaleBy(factor: number): void {
    const { width, height } = this.#room()
    const scale = this.#allowed(this.#view.scale * factor)
    this.#show(scaledAbout(this.#view, { x: width / 2, y: height / 2 }, scale))
  }

  /** Moves by shares of the window. */
  panBy(across: number, down: number): void {
    const { width, height } = this.#room()
    this.#show(panned(this.#view, { x: across * width, y: down * height }))
  }

  /** Brings what was chosen into the window, where it is not. */
  reveal(hit: Hit): void {
    const box = this.#shapes && boxOfHit(this.#shapes, hit)
    if (!box) return
    const by = shiftToShow(this.#view, box, this.#room())
    if (by.x !== 0 || by.y !== 0) this.#show(panned(this.#view, by))
  }

  close(): void {
    this.#gestures.close()
    this.#watch.disconnect()
    cancelAnimationFrame(this.#frame)
    clearTimeout(this.#rest)
  }

  #room(): Size {
    return { width: this.#window.clientWidth, height: this.#window.clientHeight }
  }

  #allowed(scale: number): number {
    return this.#shapes ? scaleWithin(scale, this.#shapes, this.#room()) : scale
  }

  #resized(): void {
    if (this.#isFitted) this.fit()
    else this.#show(this.#view)
  }

  #tap(at: Point): void {
    if (!this.#shapes) return
    const hit = nearestHit(this.#shapes, toPaper(this.#view, at), REACH / this.#view.scale)
    if (hit) this.#tapped(hit)
  }

  /** Makes a layer of the drawing before it moves. */
  #lift(): void {
    clearTimeout(this.#rest)
    this.#paper.classList.add('moving')
  }

  #show(view: View, isFitted = false): void {
    if (!this.#shapes) return
    this.#view = keptIn(view, this.#shapes, this.#room())
    this.#isFitted = isFitted || isSameView(this.#view, fitted(this.#shapes, this.#room()))
    this.#lift()
    if (this.#frame === 0) this.#frame = requestAnimationFrame(() => this.#move())
    this.#rest = window.setTimeout(() => this.#settle(), SETTLED)
  }

  #move(): void {
    this.#frame = 0
    const { scale, x, y } = this.#view
    this.#paper.style.transform = `translate(${x}px, ${y}px) scale(${scale / MM})`
    this.#window.toggleAttribute('data-fitted', this.#isFitted)
    this.#window.dataset['scale'] = scale.toFixed(3)
  }

  #settle(): void {
    if (this.#gestures.isHeld) {
      this.#rest = window.setTimeout(() => this.#settle(), SETTLED)
      return
    }
    this.#paper.classList.remove('moving')
    const isSameSize = Math.abs(letterSize(this.#view.scale) - this.#letters) < 0.05
    if (!isSameSize || !isWithin(this.#seen(0), this.#written)) this.#mark()
  }

  /** What is seen of the paper, and so many windows more on every side. */
  #seen(more: number): Box {
    const { width, height } = this.#room()
    const { scale } = this.#view
    const { x, y } = toPaper(this.#view, { x: -more * width, y: -more * height })
    const windows = 1 + 2 * more
    return { x, y, width: (windows * width) / scale, height: (windows * height) / scale }
  }

  #emphasise(): void {
    const { numbers, terminals, chosen } = this.#trace
    const svg = this.#paper.querySelector('svg')
    if (!svg || !this.#shapes) return
    svg.classList.toggle('tracing', numbers.size > 0 || terminals.size > 0)
    const wire = chosen?.kind === 'wire' ? chosen.number : undefined
    for (const { number, element } of this.#shapes.wires) {
      element.classList.toggle('traced', numbers.has(number))
      element.classList.toggle('chosen', number === wire)
    }
    for (const { name, element } of this.#shapes.terminals) {
      element.classList.toggle('traced', terminals.has(name))
      element.classList.toggle('chosen', chosen?.kind === 'terminal' && chosen.name === name)
    }
    for (const { id, element } of this.#shapes.jumpers)
      element.classList.toggle('chosen', chosen?.kind === 'jumper' && chosen.id === id)
    for (const text of svg.querySelectorAll('text[data-of]'))
      text.classList.toggle('traced', numbers.has(Number(text.getAttribute('data-of'))))
  }

  #mark(): void {
    const svg = this.#paper.querySelector('svg')
    if (!svg || !this.#shapes) return
    this.#letters = letterSize(this.#view.scale)
    this.#written = this.#seen(1)
    drawMarks(svg, this.#shapes, {
      charges: this.#charges,
      traced: this.#trace.numbers,
      size: this.#letters,
      within: isReadable(this.#view.scale) ? this.#written : undefined,
    })
  }
}

function boxOfHit(shapes: Shapes, hit: Hit): Box | undefined {
  switch (hit.kind) {
    case 'wire':
      return boxOfWire(shapes, hit.number)
    case 'terminal': {
      const found = shapes.terminals.find(each => each.name === hit.name)
      return found && around([found])
    }
    case 'jumper':
      return shapes.jumpers.find(each => each.id === hit.id)
  }
}

function boxOfWire(shapes: Shapes, number: number): Box | undefined {
  const wire = shapes.wires.find(each => each.number === number)
  return wire && around(wire.points)
}

const isWithin = (inner: Box, outer: Box | undefined): boolean =>
  outer !== undefined &&
  inner.x >= outer.x &&
  inner.y >= outer.y &&
  inner.x + inner.width <= outer.x + outer.width &&
  inner.y + inner.height <= outer.y + outer.height
