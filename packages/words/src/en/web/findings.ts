/** What was found of the wiring, and what stops all work. */
export const FINDINGS_EN = {
  'findings.title': 'Findings',
  'findings.no-plan': 'No plan is taken yet. Findings are of a landing.',
  'findings.to-match': 'Choose a box',
  'findings.holds': 'It holds.',
  'findings.holds-provided': 'It holds, provided what is said below.',
  'findings.breaks': 'It breaks. Do not power it.',
  'findings.as-planned': 'Judged as planned on {box}.',
  'findings.as-built':
    'Judged as it was found: {count} ends or jumpers are not where the plan has them.',
  'findings.none': 'Nothing was found.',
  'findings.proof':
    '{modes} modes and {transitions} passings between them, {solves} circuits solved. The current law holds to {kcl} of the largest current.',
  'findings.rule': 'Rule {rule}',
  'findings.survey-changed':
    'The survey was changed after this plan was taken. What stands here is judged by the survey as it is now; leads that came since are loose, and those that went are left out. Take a plan again:',
  'stop.title': 'Stop all work',
  'stop.which': 'What is it?',
  'stop.shock': 'Any shock or tingle',
  'stop.burning': 'Smell, smoke or melting',
  'stop.hot-water':
    'Water hotter than set while the heater draws: more than 2 °F (1 °C) over for minutes, or above 106 °F (41 °C)',
  'stop.bypass': 'A bypassed protection: limit, flow proof, thermostat or ground-fault device',
  'stop.stands': 'STOP: {what}',
  'stop.do-shock':
    'Nobody in or at the water. Do not touch tub, pipes or box. Switch off at the breaker in the panel, not at the tub, and lock it. Prove dead before anybody goes near. A doctor sees whoever had a shock.',
  'stop.do-burning':
    'Switch off at the breaker in the panel and keep away. Fire: out, and call the fire service; no water on it. Leave the panels closed until it is cold and proved dead.',
  'stop.do-hot-water':
    'Everybody out, cover open, power off at the breaker. Do not go in to test. Heat stays off until the limit, the contacts and the probes have been proved.',
  'stop.do-bypass':
    'Power off and lock it. Take the bypass out. Nothing is run, not for a test either, until the protection works again and has been proved.',
  'stop.clear': 'This stop is cleared only by saying what was found.',
  'stop.found': 'What was found, and what was done about it',
  'stop.found-hint': 'In a sentence: at least {least} letters.',
  'stop.clear-button': 'It is found and mended: clear the stop',
  'stop.disagree': 'Somebody cleared this stop while somebody else raised it. It stands.',
  'stop.history': 'Stops so far',
  'stop.cleared': '{what}: cleared by {by}, {at}. Found: {found}',
  'stop.raised': '{what}: raised by {by}, {at}',
} as const
