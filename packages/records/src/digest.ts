const FIRST = 0x9e3779b1
const SECOND = 0x85ebca6b

const hex = (word: number): string => (word >>> 0).toString(16).padStart(8, '0')

const settle = (own: number, other: number): number =>
  Math.imul(own ^ (own >>> 16), FIRST) ^ Math.imul(other ^ (other >>> 13), SECOND)

/**
 * A 64-bit digest of a text, 16 hex digits: tells accidents and slips, not malice.
 *
 * Two lanes of multiply and exclusive-or over the UTF-16 code units, then mixed.
 */
export function digestOf(text: string): string {
  let a = 0xdeadbeef ^ text.length
  let b = 0x41c6ce57
  for (let index = 0; index < text.length; index++) {
    const unit = text.charCodeAt(index)
    a = Math.imul(a ^ unit, FIRST)
    b = Math.imul(b ^ unit, SECOND)
    b ^= b >>> 15
  }
  return `${hex(settle(a, b))}${hex(settle(b, a))}`
}
