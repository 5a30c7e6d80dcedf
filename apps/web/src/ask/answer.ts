import type {
  ControlBox,
  Job,
  JobSheet,
  Landing,
  Plant,
  ProvenPlan,
  Survey,
  Verification,
  VerifyFailure,
} from '@tubwright/core'
import {
  boardOf,
  changesLoads,
  checkSupply,
  commandLabel,
  findTerminal,
  isToHeed,
  jobOf,
  landing as landingSchema,
  layOutSheet,
  liveState,
  matchEquipment,
  OFF,
  planAsLanded,
  planRefit,
  plantOf,
  statesOf,
  surveyedCondition,
  verifyPlan,
} from '@tubwright/core'
import type { SheetPart } from '@tubwright/documents'
import {
  drawBoard,
  drawDescribed,
  drawRun,
  drawYard,
  electricianPage,
  printSheet,
  SHEET_PARTS,
  supplyNotice,
  tellRun,
} from '@tubwright/documents'
import type { WireLanding } from '@tubwright/formats'
import { lintText, readDraft, readWritten, wireLanding, writeSurvey } from '@tubwright/formats'
import { loadWords } from './load-words.ts'
import type {
  Document,
  Judged,
  OfLanding,
  OfSupply,
  PlanLine,
  Question,
  Questions,
  Refusal,
} from './protocol.ts'
import type { Shelf } from './shelf.ts'
import { readShelf } from './shelf.ts'
import { sheetWordsFor } from './words-for.ts'

/** A question that has no answer, thrown to whoever sends the reply. */
export class Refused extends Error {
  readonly refusal: Refusal
  constructor(reason: Refusal['reason'], detail: string) {
    super(detail)
    this.refusal = { reason, detail }
  }
}

/** What one thread keeps between questions: the shelf, and the last survey and landing read. */
export interface Desk {
  shelf: Shelf
  surveys: Map<string, Survey>
  proven: Map<string, { readonly job: Job; readonly survey: Survey; readonly proven: ProvenPlan }>
  plants: Map<string, Plant>
  sheets: Map<string, JobSheet>
}

const KEPT = 8 // what is kept of each: the last few landings that somebody looks at

export const newDesk = (): Desk => ({
  shelf: readShelf({ boxes: [], devices: [] }),
  surveys: new Map(),
  proven: new Map(),
  plants: new Map(),
  sheets: new Map(),
})

function keep<Value>(kept: Map<string, Value>, key: string, make: () => Value): Value {
  const found = kept.get(key)
  if (found !== undefined) return found
  const made = make()
  if (kept.size >= KEPT)
    for (const first of kept.keys()) {
      kept.delete(first)
      break
    }
  kept.set(key, made)
  return made
}

function surveyOf(desk: Desk, document: Document): Survey {
  return keep(desk.surveys, JSON.stringify(document), () => {
    const { survey, open, diagnostics } = readDraft(document, desk.shelf.devices)
    if (survey) return survey
    const where = [...open, ...diagnostics].map(each => each.path.join('.'))
    throw new Refused('not-a-survey', where.join(', '))
  })
}

function boxOf({ shelf }: Desk, id: string): ControlBox {
  const box = shelf.boxes.get(id)
  if (!box) throw new Refused('no-such-box', id)
  return box
}

const jobFor = (desk: Desk, document: Document, box: string): Job =>
  jobOf(surveyOf(desk, document), boxOf(desk, box), desk.shelf.devices)

/** A landing from the record; ends that came to the survey since are loose, and what left is dropped. */
function landingFor(job: Job, written: unknown): Landing {
  const read = landingSchema.safeParse(written)
  if (!read.success) throw new Refused('no-network', read.error.message)
  const given = read.data
  const ends = Object.fromEntries(
    job.ends.map(({ id }) => {
      const at = given.ends[id] ?? 'loose'
      const isKnown = (OFF as readonly string[]).includes(at) || findTerminal(job, at)
      return [id, isKnown ? at : 'loose'] as const
    }),
  )
  return { ...given, survey: job.tub.id, box: job.box.id, ends }
}

const unjudged = (failure: VerifyFailure): Refused =>
  new Refused('no-network', failure.reason === 'no-network' ? failure.details.join(', ') : 'limit')

function provenOf(desk: Desk, { document, box, landing }: OfLanding) {
  return keep(desk.proven, JSON.stringify([document, box, landing]), () => {
    const survey = surveyOf(desk, document)
    const job = jobFor(desk, document, box)
    const proven = planAsLanded(job, landingFor(job, landing))
    if (!proven.ok) throw unjudged(proven.failure)
    return { job, survey, proven: proven.value }
  })
}

const labelsOf = (job: Job): Readonly<Record<string, string>> =>
  Object.fromEntries(job.box.commands.map(({ id }) => [id, commandLabel(job.box, id)]))

function judgedOf(job: Job, { plan, verification }: ProvenPlan): Judged {
  const { holds, findings, proof } = verification
  return {
    holds,
    findings,
    proof,
    landing: wireLanding(plan.landing),
    commandLabels: labelsOf(job),
    boxLabel: job.box.label,
  }
}

function sheetOf(
  { job, survey, proven }: { job: Job; survey: Survey; proven: ProvenPlan },
  isGiven: boolean,
  planned: WireLanding | undefined,
): JobSheet {
  const [verdict] = matchEquipment(survey, [job.box]).boxes
  return layOutSheet({
    survey,
    job,
    proven,
    isGiven,
    ...(verdict ? { verdict } : {}),
    ...(planned ? { numberedBy: landingFor(job, planned) } : {}),
  })
}

/** Every terminal of the board that an end belongs to. */
const placesOf = (job: Job) =>
  Object.fromEntries(
    job.ends.map(({ id, board }) => [
      id,
      (boardOf(job, board)?.terminals ?? []).map(each => ({
        id: `${board}.${each.id}`,
        label: each.label ?? each.id,
      })),
    ]),
  )

const planLine = (job: ControlBox, { plan, verification }: ProvenPlan): PlanLine => ({
  box: plan.box,
  label: job.label,
  holds: verification.holds,
  isProvided: verification.findings.some(isToHeed),
  dangers: plan.score.dangers,
  warnings: plan.score.warnings,
  adapters: plan.score.adapters,
  changed: plan.changes.filter(changesLoads).length,
  margin: verification.smallestMargin,
  landing: wireLanding(plan.landing),
})

type Progress = (detail: string) => void

type Answers = {
  readonly [Asked in Question]: (
    desk: Desk,
    asks: Questions[Asked]['asks'],
    progress: Progress,
  ) => Questions[Asked]['answers'] | Promise<Questions[Asked]['answers']>
}

function plantFor(desk: Desk, of: OfLanding): { job: Job; landing: Landing; plant: Plant } {
  const job = jobFor(desk, of.document, of.box)
  const landing = landingFor(job, of.landing)
  const plant = keep(desk.plants, JSON.stringify([of.document, of.box, of.landing]), () => {
    const made = plantOf(job, landing)
    if (!made.ok) throw new Refused('no-network', 'structure')
    return made.value
  })
  return { job, landing, plant }
}

/** The judgement alone: the bounds of what holds provided take many times as long. */
function verificationFor(desk: Desk, of: OfLanding): Pick<Verification, 'holds' | 'findings'> {
  const { document, box, landing } = of
  const known = desk.proven.get(JSON.stringify([document, box, landing]))
  if (known) return known.proven.verification
  const job = jobFor(desk, document, box)
  const judged = verifyPlan(job, landingFor(job, landing))
  if (!judged.ok) throw unjudged(judged.failure)
  return judged.value
}

/** The sheet of a landing, with the numbers that its wires have in the plan it came from. */
const sheetAs = (desk: Desk, of: OfLanding, planned: WireLanding | undefined): JobSheet =>
  keep(desk.sheets, JSON.stringify([of.document, of.box, of.landing, planned]), () =>
    sheetOf(provenOf(desk, of), true, planned),
  )

/** What feeds a tub, with the box of the plan that was taken; as it is alone where that box is gone. */
function supplyFor(desk: Desk, { document, taken }: Omit<OfSupply, 'language'>) {
  const survey = surveyOf(desk, document)
  const { devices } = desk.shelf
  const box = taken && desk.shelf.boxes.get(taken.box)
  const set = taken && landingSchema.safeParse(taken.landing).data?.settings.currentLimit.si
  const fitted = box && { box, ...(set === undefined ? {} : { currentLimit: set }) }
  return {
    survey,
    report: checkSupply(survey, devices, fitted),
    condition: surveyedCondition(survey, devices),
  }
}

const isPart = (part: string): part is SheetPart =>
  (SHEET_PARTS as readonly string[]).includes(part)

/** Every question that the screens ask of the core, answered. */
export const ANSWERS: Answers = {
  shelf: (desk, texts) => {
    desk.shelf = readShelf(texts)
    for (const kept of [desk.surveys, desk.proven, desk.plants, desk.sheets]) kept.clear()
    return desk.shelf.view
  },
  draft: ({ shelf }, { document }) => {
    const { survey, open, diagnostics } = readDraft(document, shelf.devices)
    return { isSurvey: survey !== undefined, open, diagnostics }
  },
  supply: async (desk, { language, ...of }) => {
    const { survey, report, condition } = supplyFor(desk, of)
    const words = await loadWords(language)
    const yard = drawYard(survey, report, words)
    const run = drawRun(report, survey, words)
    return {
      report,
      told: tellRun(report, survey, words),
      drawings: { run, ...(yard === '' ? {} : { yard }) },
      ...(condition ? { condition } : {}),
    }
  },
  notice: async (desk, { language, ...of }) => {
    const { report, condition } = supplyFor(desk, of)
    return supplyNotice(report, condition, await loadWords(language))
  },
  electrician: async (desk, { language, on, ...of }) => {
    const { survey, report, condition } = supplyFor(desk, of)
    const options = { on, ...(condition ? { condition } : {}) }
    return { html: electricianPage(report, survey, await loadWords(language), options) }
  },
  match: async (desk, { document, withChanges, box }, progress) => {
    const survey = surveyOf(desk, document)
    const all = box === undefined ? [...desk.shelf.boxes.values()] : [boxOf(desk, box)]
    const languages = await Promise.all((['en', 'es'] as const).map(loadWords))
    const isMadeUp = ({ label, maker }: ControlBox): boolean =>
      languages.some(({ skeleton }) => skeleton.label === label && skeleton.maker === maker)
    const boxes = all.filter(each => !isMadeUp(each))
    const { match, plans, failures } = planRefit(
      survey,
      boxes,
      desk.shelf.devices,
      undefined,
      each => progress(each.label),
      { withChanges },
    )
    return {
      match,
      plans: plans.map(each => planLine(boxOf(desk, each.plan.box), each)),
      failures,
      madeUp: all.filter(isMadeUp).map(each => each.id),
    }
  },
  judge: (desk, of) => {
    const { job, proven } = provenOf(desk, of)
    return judgedOf(job, proven)
  },
  verdict: (desk, of) => {
    const { plant } = plantFor(desk, of)
    const { holds, findings } = verificationFor(desk, of)
    const { trip, blown, opened } = liveState(plant, { kind: 'mode', commands: new Set() })
    return { holds, findings, blown, opened, ...(trip ? { trip } : {}) }
  },
  wired: async (desk, { language, planned, ...of }) => {
    const found = provenOf(desk, of)
    const { job, proven } = found
    const sheet = sheetAs(desk, of, planned)
    const words = await sheetWordsFor(language, job.box)
    const states = statesOf(job, proven.plan.landing)
    return {
      ...judgedOf(job, proven),
      sheet,
      drawings: Object.fromEntries(sheet.panels.map(({ id }) => [id, drawBoard(sheet, words, id)])),
      states: states.ok
        ? states.value.filter(each => each.kind === 'mode').map(each => [...each.commands])
        : [],
      places: placesOf(job),
    }
  },
  live: (desk, { on, ...of }) => {
    const { plant } = plantFor(desk, of)
    return liveState(plant, { kind: 'mode', commands: new Set(on) })
  },
  print: async (desk, { language, part, isAsBuilt, planned, photos, ...of }) => {
    const found = provenOf(desk, of)
    const words = await sheetWordsFor(language, found.job.box)
    const sheet = sheetOf(found, isAsBuilt === true, planned)
    const only = part !== undefined && isPart(part) ? part : undefined
    const { document, ...taken } = of
    const { report, condition } = supplyFor(desk, { document, taken })
    const supply = supplyNotice(report, condition, await loadWords(language))
    return { html: printSheet(sheet, words, { only, supply, ...(photos ? { photos } : {}) }) }
  },
  lint: async ({ shelf }, { text, language }) => {
    const linted = lintText('description.yaml', text, shelf.devices)
    const { kind, diagnostics, findings, box, device, survey } = linted
    const id = (box ?? device ?? survey)?.id
    const described = box ?? device
    const marks = findings.map(({ path }, index) => ({ number: index + 1, path }))
    const drawing = described
      ? drawDescribed(described, marks, await sheetWordsFor(language, box))
      : undefined
    return {
      ...(kind === undefined ? {} : { kind }),
      ...(id === undefined ? {} : { id }),
      diagnostics,
      findings,
      ...(drawing === undefined ? {} : { drawing }),
    }
  },
  yaml: (_, { document }) => ({ text: writeSurvey(document) }),
  readYaml: (_, { text }) => {
    const { value, diagnostics } = readWritten('survey.yaml', text)
    const isDocument = typeof value === 'object' && value !== null && !Array.isArray(value)
    return { ...(isDocument ? { document: value as Document } : {}), diagnostics }
  },
}
