import type { Point, View } from './view.ts'
import { panned, pinched, scaledAbout } from './view.ts'

/** What a gesture works on. */
export interface Moved {
  readonly view: () => View
  /** What a scale may be. */
  readonly allowed: (scale: number) => number
  /** Something takes hold of the drawing. */
  readonly begin: () => void
  readonly show: (view: View) => void
  readonly tap: (at: Point) => void
}

const STILL = 8 // [px] a finger that moves less means a tap
const WHEEL = 0.0016 // of the scale, to the pixel of the wheel
const LINE = 16 // [px] a line of a wheel that counts in lines

interface Finger {
  readonly began: Point
  at: Point
}

/** Fingers, mouse and wheel over the drawing: one drags, two pinch, one that keeps still taps. */
export class Gestures {
  readonly #window: HTMLElement
  readonly #moved: Moved
  readonly #fingers = new Map<number, Finger>()
  readonly #stop = new AbortController()
  /** Whether what is held has moved so far that it is no tap any more. */
  #isDrag = false

  constructor(window: HTMLElement, moved: Moved) {
    this.#window = window
    this.#moved = moved
    const { signal } = this.#stop
    window.addEventListener('pointerdown', each => this.#down(each), { signal })
    window.addEventListener('pointermove', each => this.#move(each), { signal })
    window.addEventListener('pointerup', each => this.#up(each), { signal })
    window.addEventListener('pointercancel', each => this.#drop(each), { signal })
    window.addEventListener('wheel', each => this.#wheel(each), { signal, passive: false })
  }

  get isHeld(): boolean {
    return this.#fingers.size > 0
  }

  close(): void {
    this.#stop.abort()
  }

  #at({ clientX, clientY }: MouseEvent): Point {
    const { left, top } = this.#window.getBoundingClientRect()
    return { x: clientX - left, y: clientY - top }
  }

  #down(event: PointerEvent): void {
    if (event.button !== 0) return
    const at = this.#at(event)
    if (this.#fingers.size === 0) this.#isDrag = false
    else this.#isDrag = true
    this.#fingers.set(event.pointerId, { began: at, at })
    this.#window.setPointerCapture(event.pointerId)
    this.#moved.begin()
  }

  #move(event: PointerEvent): void {
    const finger = this.#fingers.get(event.pointerId)
    if (!finger) return
    const at = this.#at(event)
    const [a, b] = [...this.#fingers.values()]
    if (a && b && (finger === a || finger === b)) {
      const before = [a.at, b.at] as const
      finger.at = at
      this.#moved.show(pinched(this.#moved.view(), before, [a.at, b.at], this.#moved.allowed))
      return
    }
    if (!this.#isDrag && Math.hypot(at.x - finger.began.x, at.y - finger.began.y) < STILL) return
    this.#isDrag = true
    const by = { x: at.x - finger.at.x, y: at.y - finger.at.y }
    finger.at = at
    this.#moved.show(panned(this.#moved.view(), by))
  }

  #up(event: PointerEvent): void {
    const finger = this.#fingers.get(event.pointerId)
    this.#drop(event)
    if (finger && !this.#isDrag) this.#moved.tap(finger.at)
  }

  #drop(event: PointerEvent): void {
    this.#fingers.delete(event.pointerId)
    if (this.#fingers.size === 0) this.#moved.show(this.#moved.view())
  }

  #wheel(event: WheelEvent): void {
    event.preventDefault()
    const pixels =
      event.deltaMode === WheelEvent.DOM_DELTA_LINE ? event.deltaY * LINE : event.deltaY
    const view = this.#moved.view()
    const scale = this.#moved.allowed(view.scale * Math.exp(-pixels * WHEEL))
    this.#moved.show(scaledAbout(view, this.#at(event), scale))
  }
}
