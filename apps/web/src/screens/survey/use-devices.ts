import { useEffect, useState } from 'react'
import { useApp, useWeb } from '../../app/context.ts'
import type { DeviceChoice } from '../../ask/protocol.ts'
import { runOf } from './joints.ts'
import { useSurvey } from './use-survey.ts'

/** Every supply device on the shelf. */
export function useDevices(): readonly DeviceChoice[] {
  const { shelf } = useApp()
  const [devices, setDevices] = useState<readonly DeviceChoice[]>([])
  useEffect(() => void shelf().then(found => setDevices(found.devices)), [shelf])
  return devices
}

/** What a person calls a device of the run: by its own label, or by that of its kind. */
export function useDeviceLabel(): (id: string) => string {
  const web = useWeb()
  const known = useDevices()
  const { devices } = runOf(useSurvey().document)
  return id => {
    const found = devices.find(each => each.id === id)
    if (typeof found?.label === 'string') return found.label
    return known.find(each => each.id === found?.device)?.label ?? web['survey.device-unsaid']
  }
}
