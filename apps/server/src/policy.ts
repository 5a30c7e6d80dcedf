/**
 * What the page may do. The server sends it; the build also writes it into index.html, so that it
 * holds wherever the bundle is put.
 */
const DIRECTIVES: readonly (readonly [name: string, ...sources: string[]])[] = [
  ['default-src', "'none'"],
  ['script-src', "'self'"],
  ['style-src', "'self'"],
  ['img-src', "'self'", 'blob:', 'data:'],
  ['font-src', "'self'"],
  ['connect-src', "'self'"],
  ['worker-src', "'self'"],
  ['manifest-src', "'self'"],
  ['frame-src', "'self'", 'blob:'],
  ['base-uri', "'none'"],
  ['form-action', "'none'"],
  ['frame-ancestors', "'none'"],
  ['require-trusted-types-for', "'script'"],
  ['trusted-types', 'tubwright'],
]

/** A <meta> cannot say who may frame the page: browsers ignore that there and complain. */
const HEADER_ONLY = new Set(['frame-ancestors'])

const written = (directives: typeof DIRECTIVES): string =>
  directives.map(each => each.join(' ')).join('; ')

/** With the hashes of what is styled inside a page that is shown in a frame. */
function withStyles(hashes: readonly string[]): typeof DIRECTIVES {
  return DIRECTIVES.map(each => (each[0] === 'style-src' ? [...each, ...hashes] : each))
}

/** The policy as the header says it. */
export const policyHeader = (styleHashes: readonly string[] = []): string =>
  written(withStyles(styleHashes))

/** The policy as a <meta http-equiv> says it. */
export const policyMeta = (styleHashes: readonly string[] = []): string =>
  written(withStyles(styleHashes).filter(([name]) => !HEADER_ONLY.has(name)))

/** For what is refused: nothing of it may do anything. */
const REFUSED_POLICY = "default-src 'none'; frame-ancestors 'none'"

const OFF = [
  'accelerometer',
  'autoplay',
  'bluetooth',
  'browsing-topics',
  'display-capture',
  'encrypted-media',
  'fullscreen',
  'geolocation',
  'gyroscope',
  'hid',
  'idle-detection',
  'keyboard-map',
  'local-fonts',
  'magnetometer',
  'microphone',
  'midi',
  'payment',
  'picture-in-picture',
  'publickey-credentials-get',
  'screen-wake-lock',
  'serial',
  'storage-access',
  'usb',
  'window-management',
  'xr-spatial-tracking',
]

const PERMISSIONS = ['camera=(self)', ...OFF.map(each => `${each}=()`)].join(', ')

const COMMON = {
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Permissions-Policy': PERMISSIONS,
} as const

type Headers = Readonly<Record<string, string>>

/** The headers of every file that is served. */
export const servedHeaders: Headers = { ...COMMON, 'Content-Security-Policy': policyHeader() }

/** The headers of every refusal. */
export const refusedHeaders: Headers = {
  ...COMMON,
  'Content-Security-Policy': REFUSED_POLICY,
  'Cache-Control': 'no-store',
  'Content-Type': 'text/plain;charset=utf-8',
}
