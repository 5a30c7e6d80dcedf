/** The name a photo is kept under: SHA-256 of its bytes, in hexadecimal. */
export async function sha256(bytes: BufferSource): Promise<string> {
  const digest = await crypto.subtle.digest('SHA-256', bytes)
  return [...new Uint8Array(digest)].map(each => each.toString(16).padStart(2, '0')).join('')
}
