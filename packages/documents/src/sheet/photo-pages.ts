import { n } from '../board/ink.ts'
import { escapeText } from '../escape.ts'
import type { SheetWords } from '../sheet-words.ts'
import type { Html } from './markup.ts'
import { html, raw, row, table } from './markup.ts'

/** A photo with numbered pins, as the sheet shows it: what the old wiring was. */
export interface PhotoPage {
  readonly title: string
  /** A `data:` address, so that the printed file stands alone. */
  readonly src: string
  /** [pixels] */
  readonly width: number
  readonly height: number
  readonly note: string
  readonly pins: readonly {
    readonly number: number
    /** Share of the width and of the height, from the upper left corner. */
    readonly x: number
    readonly y: number
    readonly lead: string
    readonly terminal: string
    readonly note: string
  }[]
}

const isPicture = (src: string): boolean =>
  /^data:image\/(?:jpeg|png|webp);base64,[\w+/=]*$/u.test(src)

/** One drawing: the picture with its pins, so that no print can part them. */
function pinned({ title, src, width, height, pins }: PhotoPage): Html {
  const radius = Math.max(width, height) / 45
  const marks = pins.map(({ number, x, y }) => {
    const [cx, cy] = [x * width, y * height]
    return `<circle cx="${n(cx)}" cy="${n(cy)}" r="${n(radius)}" fill="#fff" stroke="#000" stroke-width="${n(radius / 6)}"/><text x="${n(cx)}" y="${n(cy + radius * 0.38)}" font-size="${n(radius * 1.1)}" font-weight="bold" text-anchor="middle">${number}</text>`
  })
  const picture = isPicture(src)
    ? `<image href="${escapeText(src)}" width="${n(width)}" height="${n(height)}"/>`
    : ''
  return raw(
    `<svg xmlns="http://www.w3.org/2000/svg" class="photo" role="img" aria-label="${escapeText(title)}" viewBox="0 0 ${n(width)} ${n(height)}">${picture}${marks.join('')}</svg>`,
  )
}

/** Each photo with its pins, and what each number is. */
export function photoPages(photos: readonly PhotoPage[], { page }: SheetWords): Html | undefined {
  if (photos.length === 0) return undefined
  const heads = ['#', page.lead, page.terminal, page.note]
  return html`<section class="page"><h2>${page.photos}</h2>${photos.map(
    photo =>
      html`<figure class="whole"><h3>${photo.title}</h3>${photo.note === '' ? undefined : html`<p>${photo.note}</p>`}${pinned(photo)}<figcaption>${table(
        'pins',
        heads,
        [
          html`<tbody>${photo.pins.map(each => row([each.number, each.lead, each.terminal, each.note]))}</tbody>`,
        ],
      )}</figcaption></figure>`,
  )}</section>`
}
