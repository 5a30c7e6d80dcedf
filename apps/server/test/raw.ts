import { connect } from 'node:net'

export interface Answer {
  /** 0 where the server hung up without a word. */
  readonly status: number
  readonly headers: Readonly<Record<string, string>>
  readonly body: string
}

function read(text: string): Answer {
  const [head = '', ...rest] = text.split('\r\n\r\n')
  const [first = '', ...lines] = head.split('\r\n')
  const headers = lines.map(line => {
    const colon = line.indexOf(':')
    return [line.slice(0, colon).toLowerCase(), line.slice(colon + 1).trim()]
  })
  return {
    status: Number(/^HTTP\/1\.1 (\d{3})/u.exec(first)?.[1] ?? 0),
    headers: Object.fromEntries(headers),
    body: rest.join('\r\n\r\n'),
  }
}

/** Sends exactly these bytes, as no client library would, and gives all that comes back. */
export function sendRaw(port: number, bytes: string, host = '127.0.0.1'): Promise<Answer> {
  return new Promise(resolve => {
    const socket = connect({ port, host })
    let text = ''
    const done = () => {
      socket.destroy()
      resolve(read(text))
    }
    socket.setTimeout(1500, done)
    socket.on('data', data => {
      text += data.toString('latin1')
    })
    socket.on('error', done)
    socket.on('close', done)
    socket.write(Buffer.from(bytes, 'latin1'))
  })
}

/** One plain request, closed after it. */
export const requestOf = (
  target: string,
  lines: readonly string[],
  method = 'GET',
  version = '1.1',
): string =>
  [`${method} ${target} HTTP/${version}`, ...lines, 'Connection: close', '', ''].join('\r\n')
