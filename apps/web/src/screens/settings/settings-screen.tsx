import { figure, say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useEffect, useState } from 'react'
import { useApp, useWeb } from '../../app/context.ts'
import { Frame, Screen } from '../../app/frame.tsx'
import { Chips } from '../../parts/chips.tsx'
import type { Room } from '../../store/room.ts'
import { askToPersist, readRoom } from '../../store/room.ts'
import { saveTime95 } from '../../store/save-times.ts'

/** How the page looks and speaks, who writes, and how much room is left. */
export function SettingsScreen(): ReactNode {
  const { language, setLanguage, scheme, setScheme, words } = useApp()
  const web = useWeb()
  return (
    <Frame>
      <Screen heading={web['shell.settings']}>
        <Chips
          legend={web.language}
          options={[
            { value: 'en', label: web.english },
            { value: 'es', label: web.spanish },
          ]}
          chosen={language}
          choose={chosen => setLanguage(chosen === 'es' ? 'es' : 'en')}
        />
        {words.hasUnreviewed && <p className="card">{words.unreviewedNotice}</p>}
        <Chips
          legend={web['shell.scheme']}
          options={[
            { value: 'sun', label: web['shell.scheme-sun'] },
            { value: 'shade', label: web['shell.scheme-shade'] },
          ]}
          chosen={scheme}
          choose={chosen => setScheme(chosen === 'shade' ? 'shade' : 'sun')}
        />
        <AuthorField />
        <RoomLeft />
        <p className="quiet">{web['shell.authority']}</p>
      </Screen>
    </Frame>
  )
}

function AuthorField(): ReactNode {
  const { space } = useApp()
  const web = useWeb()
  const [name, setName] = useState(space.author.name)
  return (
    <p>
      <label className="label" htmlFor="author">
        {web['shell.author']}
      </label>
      <input
        id="author"
        type="text"
        maxLength={60}
        value={name}
        onChange={event => setName(event.target.value)}
        onBlur={() => void space.setAuthor(name.trim())}
      />
    </p>
  )
}

const readable = (bytes: number): string =>
  bytes >= 1e9 ? `${figure(bytes / 1e9)} GB` : `${figure(bytes / 1e6)} MB`

function RoomLeft(): ReactNode {
  const web = useWeb()
  const [room, setRoom] = useState<Room>()
  useEffect(() => void readRoom().then(setRoom), [])
  const time = saveTime95()
  const ask = async (): Promise<void> => {
    await askToPersist()
    setRoom(await readRoom())
  }
  if (!room) return undefined
  return (
    <section className="card">
      <p>
        {room.left === undefined
          ? web['shell.room-unknown']
          : say(web['shell.room'], { left: readable(room.left) })}
      </p>
      <p>{room.isPersistent ? web['shell.persistent'] : web['shell.not-persistent']}</p>
      {!room.isPersistent && (
        <button type="button" onClick={() => void ask()}>
          {web['shell.persist']}
        </button>
      )}
      {time !== undefined && (
        <p className="quiet">{say(web['shell.save-time'], { time: `${figure(time)} ms` })}</p>
      )}
    </section>
  )
}
