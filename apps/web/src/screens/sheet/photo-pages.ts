import type { PhotoPage } from '@tubwright/documents'
import { useEffect, useState } from 'react'
import { useApp, useJobView } from '../../app/context.ts'
import { toBase64 } from '../jobs/job-files.ts'
import type { MappedPhoto } from '../photos/photo-record.ts'
import { photoMap } from '../photos/photo-record.ts'
import type { Photos } from '../photos/use-photos.ts'
import { usePhotos } from '../photos/use-photos.ts'

/** A photo as the sheet takes it; a picture that is not on this device is left blank. */
const pageOf = (
  { of, hash: _, width, height, note, pins }: MappedPhoto,
  src: string,
  { nameOf, leadName }: Photos,
): PhotoPage => ({
  title: nameOf(of),
  src,
  width,
  height,
  note,
  pins: pins.map(pin => ({
    number: pin.number,
    x: pin.x,
    y: pin.y,
    lead: pin.end === undefined ? '' : leadName(pin.end),
    terminal: pin.terminal ?? '',
    note: pin.note ?? '',
  })),
})

/** The photos with pins of the open job, for the end of its sheet; undefined until they are read. */
export function usePhotoPages(): readonly PhotoPage[] | undefined {
  const { space } = useApp()
  const { state } = useJobView()
  const photos = usePhotos()
  const mapped = photoMap(state)
  const hashes = mapped.map(each => each.hash).join()
  const [pictures, setPictures] = useState<ReadonlyMap<string, string>>()
  useEffect(() => {
    let isWanted = true
    const read = async (hash: string): Promise<readonly [string, string]> => {
      const stored = await space.photo(hash)
      if (!stored) return [hash, '']
      const bytes = new Uint8Array(await stored.bytes.arrayBuffer())
      return [hash, `data:${stored.type};base64,${toBase64(bytes)}`]
    }
    const wanted = hashes === '' ? [] : hashes.split(',')
    void Promise.all(wanted.map(read)).then(all => isWanted && setPictures(new Map(all)))
    return () => {
      isWanted = false
    }
  }, [space, hashes])
  return pictures && mapped.map(each => pageOf(each, pictures.get(each.hash) ?? '', photos))
}
