import { COLOURS } from '@tubwright/core'
import { useApp } from '../../app/context.ts'
import { fieldName } from './field-name.ts'
import type { SurveyPath } from './use-survey.ts'

/** Which words name the options of a field; fields that are not here say them otherwise. */
const NAMED: Readonly<Record<string, string>> = {
  'survey.supply.earthing': 'earthing',
  'survey.supply.cables.where': 'where',
  'survey.supply.cables.method': 'method',
  'survey.supply.cables.material': 'material',
  'survey.supply.cables.conduit.kind': 'conduit',
  'survey.supply.cables.alongside': 'alongside',
  'load.kind': 'load-kind',
  'load.current': 'current',
  'load.place': 'probe-place',
  'load.startSwitch': 'start-switch',
  'load.capacitors.use': 'capacitor',
  'load.capacitors.place': 'capacitor-place',
  'survey.yard.setting': 'where',
  'survey.yard.dwelling': 'dwelling',
  'survey.yard.bond.strands': 'strands',
  'survey.service.loads.kind': 'service',
  'survey.readings.situation': 'situation',
  'survey.touch.readings.from': 'touch',
  'survey.touch.readings.to': 'touch',
}

const isColour = (option: string): option is (typeof COLOURS)[number] =>
  (COLOURS as readonly string[]).includes(option)

/** What a person calls an option of a field; as the files write it where there is no other word. */
export function useOptionName(): (path: SurveyPath, option: string) => string {
  const { words } = useApp()
  const web: Readonly<Record<string, string>> = words.web
  return (path, option) => {
    const last = path.at(-1)
    if (option === 'yes' || option === 'no') return words.web[`survey.${option}`]
    if ((last === 'colour' || last === 'taped') && isColour(option))
      return words.values[`colour.${option}`]
    const isOfLead = last === 'function' && path[0] === 'loads'
    if (isOfLead) return web[`survey.lead-${option}`] ?? option
    if (last === 'function' || path.at(-2) === 'fedBy')
      return web[`survey.wire-${option}`] ?? option
    const named = NAMED[fieldName(path)]
    return (named && web[`option.${named}-${option}`]) ?? option
  }
}

/** What a person calls a wire of the supply, by what it carries. */
export function useWireName(): (carries: string) => string {
  const web: Readonly<Record<string, string>> = useApp().words.web
  return carries => web[`survey.wire-${carries}`] ?? carries
}
