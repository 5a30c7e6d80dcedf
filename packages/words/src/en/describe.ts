/** What a skeleton says beside its fields; each line of it becomes a line of comment. */
export const SKELETON_EN = {
  head: [
    'A control box, to be described from its wiring label. It is valid as it stands: every name in it',
    'is real and every value is made up. Go from the top down, replace each value by what your label',
    'says, take lines out and put lines in, and run lint after each part of it.',
    'What stands behind # explains. Quantities have their unit: 20 A, 240 V, 14 AWG, 120 mm.',
  ],
  each: 'One on a line:',
  more: 'All that may stand here: tubwright describe --schema control-box',
  label: 'My box',
  maker: 'Its maker',
  note: 'Whatever a fitter should know of it.',
  limitEntered: 'small switches 2 and 3',
  afterReset: 'Profile and current limit stay.',
  jumpers: [
    'Where your label shows a jumper, write it in place of [], each word as here:',
    '- id: J1',
    '  label: volt jumper of pump A',
    '  positions:',
    '    - { id: v120, label: 120 V, joins: [[RETURN-A, N]] }',
    '    - { id: v240, label: 240 V, joins: [[RETURN-A, L2]] }',
    '  factory: v240',
    '  rated: 20 A',
  ],
} as const satisfies Readonly<Record<string, string | readonly string[]>>

/** What the command `describe` says. */
export const DESCRIBE_EN = {
  written: 'A box to begin with: {file}',
  next: 'Next:',
  'next-edit': 'edit it, with your label beside you, while this draws and checks each save:',
  'next-lint': 'check it once more:',
  'next-plan': 'plan a tub with it:',
  exists: '{file} is there already and was not written over: give another name with --id.',
  'no-folder': 'the folder {folder} cannot be made: {why}.',
  'wrong-word': '{option} {word}: it may be {may}.',
  'wrong-id': '--id {word}: a letter, then letters, digits or hyphens, 40 at most.',
  'two-families': '--feeds {feeds}: a box is for 120 V legs or for 230 V, not for both.',
  twice: '{option}: “{word}” stands there twice.',
  'too-many-pumps': '--outputs names more than {most:number} pumps: write the others by hand.',
  'profile-needs': '--profiles {profile} needs {output} among --outputs.',
} as const
