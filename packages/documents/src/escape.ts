const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
}

// Characters that no XML document may hold, escaped or not.
const FORBIDDEN = /[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]|[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/gu

/** Text for HTML and SVG, in content and in quoted attributes alike. */
export const escapeText = (text: string): string =>
  text.replace(FORBIDDEN, '\uFFFD').replace(/[&<>"']/gu, each => ENTITIES[each] ?? '')

/** Text for a quoted string in a style sheet: everything but plain letters and digits is coded. */
export const escapeStyle = (text: string): string =>
  [...text.replace(FORBIDDEN, '\uFFFD')]
    .map(each =>
      /[A-Za-z0-9 ]/u.test(each) ? each : `\\${(each.codePointAt(0) ?? 0xfffd).toString(16)} `,
    )
    .join('')
