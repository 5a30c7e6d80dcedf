import type { Catalogue, ControlBox, Job, Landing, SupplyDevice, Survey } from '@tubwright/core'
import {
  checkBox,
  checkDevice,
  checkLanding,
  checkSurvey,
  controlBox,
  landing,
  supplyDevice,
  survey,
} from '@tubwright/core'
import * as z from 'zod'
import type { Read } from './located.ts'
import { readYaml } from './read-yaml.ts'

/** Reads what was found at a tub; the supply devices it may name come from the catalogue. */
export const readSurvey = (file: string, text: string, catalogue: Catalogue): Read<Survey> =>
  readYaml(file, text, survey, value => checkSurvey(value, catalogue))

export const readControlBox = (file: string, text: string): Read<ControlBox> =>
  readYaml(file, text, controlBox, checkBox)

export const readSupplyDevice = (file: string, text: string): Read<SupplyDevice> =>
  readYaml(file, text, supplyDevice, checkDevice)

/** Reads a landing by its shape, and where its job is given, against every end of that. */
export const readLanding = (file: string, text: string, job?: Job): Read<Landing> =>
  readYaml(file, text, landing, value => (job ? checkLanding(job, value) : []))

/** Reads a text as it is written, without asking what it is: what a draft may begin from. */
export const readWritten = (file: string, text: string): Read<unknown> =>
  readYaml(file, text, z.unknown())
