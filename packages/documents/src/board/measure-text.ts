/** Widths as a share of the size: on the wide side, since the reader's font is not known. */
const NARROW = /[iljtfI.,:;'’|!()[\] ·-]/u
const WIDE = /[mwMW%@]/u
const CAPITAL = /[A-Z&]/u

function share(character: string): number {
  if (NARROW.test(character)) return 0.34
  if (WIDE.test(character)) return 0.9
  if (CAPITAL.test(character)) return 0.72
  return (character.codePointAt(0) ?? 0) > 0x24f ? 1 : 0.57
}

/** Estimated width of a line of text, in the unit of its size. */
export const textWidth = (text: string, size: number): number =>
  [...text].reduce((sum, each) => sum + share(each), 0) * size

/** One line, cut where the room ends. */
export function clipText(text: string, size: number, room: number): string {
  if (textWidth(text, size) <= room) return text
  const kept = [...text]
  while (kept.length > 0 && textWidth(`${kept.join('')}…`, size) > room) kept.pop()
  return `${kept.join('').trimEnd()}…`
}

function breakWord(word: string, size: number, room: number): readonly string[] {
  const pieces: string[] = []
  let piece = ''
  for (const each of word) {
    if (piece !== '' && textWidth(piece + each, size) > room) {
      pieces.push(piece)
      piece = ''
    }
    piece += each
  }
  return [...pieces, piece]
}

/** Lines that fit the room; the last one is cut where the text has more. */
export function wrapText(
  text: string,
  { size, room, lines: most }: { size: number; room: number; lines: number },
): readonly string[] {
  const lines: string[] = []
  for (const word of text.split(/[ \t\n\r]+/u).flatMap(each => breakWord(each, size, room))) {
    const last = lines.at(-1)
    if (last !== undefined && textWidth(`${last} ${word}`, size) <= room)
      lines[lines.length - 1] = `${last} ${word}`
    else lines.push(word)
  }
  if (lines.length <= most) return lines
  return [
    ...lines.slice(0, most - 1),
    clipText(`${lines[most - 1] ?? ''}…………`, size, room).replace(/…+$/u, '…'),
  ]
}
