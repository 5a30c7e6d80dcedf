/** The survey: how the run is joined, and how far each group is. */
export const SURVEY_RUN_EN = {
  'survey.not-begun': 'not begun',
  'survey.supply-asks': 'Questions that a verdict on the supply asks besides: {count}.',
  'survey.supply-asks-none': 'A verdict on the supply asks nothing more.',
  'survey.to-supply': 'See what it asks',
  'survey.withdrawn-count': 'Taken out: {count}',
  'survey.run-first': 'What stands between panel and tub is asked first.',
  'survey.wires-on': 'Which wires go on from it?',
  'survey.as-marked-from': 'Where it begins: does each wire sit where its marking says?',
  'survey.as-marked-to': 'Where it ends: does each wire sit where its marking says?',
  'survey.piece-towards': 'To: {device}',
  'survey.device-unsaid': 'A device, not said which',
  'survey.between': '{from} → {to}',
  'survey.between-which': 'Between which?',
  'survey.put-between':
    '{device} was put in here: {piece}. How long both pieces are, and where each wire sits on it, is asked with the wires to the tub.',
  'survey.undo': 'Undo',
  'survey.go-on-to-tub': 'A piece from it to the tub',
  'survey.loose-nothing-in': '{what} is joined to nothing: which wire goes in?',
  'survey.loose-nothing-on': 'No wire goes on from {what}.',
  'survey.loose-no-beginning': '{what} hangs on nothing: where does it begin?',
  'survey.loose-no-end': '{what} leads to nothing: where does it end?',
  'survey.loose-in-a-ring': '{what} leads back to where it begins: where does it end?',
  'survey.loose-own-circuit':
    'Where it begins a second circuit, that is said under “More about this”.',
} as const
