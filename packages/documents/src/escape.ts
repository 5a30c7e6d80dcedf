const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
}

/** What an XML document may hold, escaped or not: no control characters, no half of a pair. */
function isAllowed(code: number): boolean {
  if (code < 0x20) return code === 0x9 || code === 0xa || code === 0xd
  return (code < 0xd800 || code > 0xdfff) && code !== 0xfffe && code !== 0xffff
}

const allowed = (text: string): string =>
  [...text].map(each => (isAllowed(each.codePointAt(0) ?? 0) ? each : '\uFFFD')).join('')

/** Text for HTML and SVG, in content and in quoted attributes alike. */
export const escapeText = (text: string): string =>
  allowed(text).replace(/[&<>"']/gu, each => ENTITIES[each] ?? '')

/** Text for a quoted string in a style sheet: everything but plain letters and digits is coded. */
export const escapeStyle = (text: string): string =>
  [...allowed(text)]
    .map(each =>
      /[A-Za-z0-9 ]/u.test(each) ? each : `\\${(each.codePointAt(0) ?? 0xfffd).toString(16)} `,
    )
    .join('')
